using System.CommandLine;
using RideAudit.Cli.Options;
using RideAudit.Cli.Terminal;
using RideAudit.Cli.Work;

namespace RideAudit.Cli.Commands;

/// <summary>One row a week.</summary>
internal sealed class WeeksCommand : ICommandSource
{
    /// <inheritdoc/>
    public IReadOnlyList<Example> Examples { get; } =
    [
        new("rideaudit weeks my-rides/", "every week from the first ride's on"),
        new("rideaudit weeks my-rides/ --since 2026-01-01 --format csv > weeks.csv", "this year, for a spreadsheet"),
    ];

    /// <inheritdoc/>
    public Command Create(Shell shell)
    {
        var options = new TableOptions();
        var command = new Command("weeks", "One row a week: hours, stress, split, loads.");
        options.AddTo(command);
        command.SetAction(parsed => (int)TableWork.Weeks(shell, options.Read(parsed)));
        return command;
    }
}
