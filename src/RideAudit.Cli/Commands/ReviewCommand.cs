using System.CommandLine;
using RideAudit.Cli.Options;
using RideAudit.Cli.Terminal;
using RideAudit.Cli.Work;

namespace RideAudit.Cli.Commands;

/// <summary>The main job: one judged week.</summary>
internal sealed class ReviewCommand : ICommandSource
{
    /// <inheritdoc/>
    public IReadOnlyList<Example> Examples { get; } =
    [
        new("rideaudit review my-rides/", "review the last finished week, write review-YYYY-MM-DD.pdf here"),
        new("rideaudit my-rides/2026 --rider rider-a.toml --week 2026-05-06", "the week that holds 6 May, with a rider file kept elsewhere"),
        new("rideaudit review my-rides/ --json - --no-pdf", "the review as JSON on standard output and nothing else"),
        new("rideaudit review my-rides/ --note \"Easy week next.\" --paper letter", "with the coach's note on page one, on Letter paper"),
    ];

    /// <inheritdoc/>
    public Command Create(Shell shell)
    {
        var options = new ReviewOptions();
        var command = new Command("review", "Read every ride under FOLDER, judge the last finished week, write it as a PDF and print a summary.");
        options.AddTo(command);
        command.SetAction(parsed => (int)ReviewWork.Run(shell, options.Read(parsed)));
        return command;
    }
}
