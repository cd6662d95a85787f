using System.CommandLine;
using RideAudit.Cli.Options;
using RideAudit.Cli.Terminal;
using RideAudit.Cli.Work;

namespace RideAudit.Cli.Commands;

/// <summary>One row a ride.</summary>
internal sealed class RidesCommand : ICommandSource
{
    /// <inheritdoc/>
    public IReadOnlyList<Example> Examples { get; } =
    [
        new("rideaudit rides my-rides/ --since 2026-05-04", "every ride from 4 May on"),
        new("rideaudit rides my-rides/ --format csv > rides.csv", "for a spreadsheet"),
    ];

    /// <inheritdoc/>
    public Command Create(Shell shell)
    {
        var options = new TableOptions();
        var command = new Command("rides", "One row a ride: kind, time, stress, power, bands.");
        options.AddTo(command);
        command.SetAction(parsed => (int)TableWork.Rides(shell, options.Read(parsed)));
        return command;
    }
}
