using System.CommandLine;
using RideAudit.Cli.Options;
using RideAudit.Cli.Terminal;
using RideAudit.Cli.Work;

namespace RideAudit.Cli.Commands;

/// <summary>Reviews again when files arrive.</summary>
internal sealed class WatchCommand : ICommandSource
{
    /// <inheritdoc/>
    public IReadOnlyList<Example> Examples { get; } =
    [
        new("rideaudit watch my-rides/", "review now, and again whenever files arrive; Ctrl-C stops"),
        new("rideaudit watch my-rides/ --pdf latest.pdf --quiet", "keep one PDF up to date and say nothing"),
    ];

    /// <inheritdoc/>
    public Command Create(Shell shell)
    {
        var options = new ReviewOptions();
        var command = new Command("watch", "Review FOLDER now and again whenever files arrive, until Ctrl-C. Takes the options of review.");
        options.AddTo(command);
        command.SetAction(parsed => (int)WatchWork.Run(shell, options.Read(parsed)));
        return command;
    }
}
