using System.CommandLine;
using RideAudit.Cli.Terminal;
using RideAudit.Cli.Work;

namespace RideAudit.Cli.Commands;

/// <summary>Writes the browser page.</summary>
internal sealed class PageCommand : ICommandSource
{
    private readonly Option<string?> _out = new("--out") { Description = "Write the page as this one HTML file. Default: rideaudit.html.", HelpName = "FILE" };
    private readonly Option<string?> _site = new("--site") { Description = "Write the page as a static site into this folder instead, for any file host.", HelpName = "DIR" };
    private readonly Option<bool> _noOpen = new("--no-open") { Description = "Do not open the file in the browser." };

    /// <inheritdoc/>
    public IReadOnlyList<Example> Examples { get; } =
    [
        new("rideaudit page", "write rideaudit.html and open it: drop a folder on it"),
        new("rideaudit page --site public/", "write the static site for a file host"),
    ];

    /// <inheritdoc/>
    public Command Create(Shell shell)
    {
        var command = new Command("page", "Write the page that does the same in a browser, as one HTML file or as a static site. It connects to nothing.");
        foreach (var option in new Option[] { _out, _site, _noOpen })
            command.Options.Add(option);
        command.SetAction(parsed => (int)PageWork.Run(shell, parsed.GetValue(_out), parsed.GetValue(_site), parsed.GetValue(_noOpen)));
        return command;
    }
}
