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
        new("rideaudit rides my-rides/ --format json --power-curve", "with the best mean power over every duration"),
    ];

    /// <inheritdoc/>
    public Command Create(Shell shell)
    {
        var options = new TableOptions();
        var command = new Command("rides", "One row a ride: kind, time, stress, power, bands.");
        options.AddTo(command);
        var curve = new Option<bool>("--power-curve") { Description = "Add each ride's best mean power over every duration, with --format json." };
        command.Options.Add(curve);
        command.Validators.Add(result =>
        {
            if (result.GetValue(curve) && !options.IsJson(result))
                result.AddError("--power-curve goes with --format json.");
        });
        command.SetAction(parsed => (int)TableWork.Rides(shell, options.Read(parsed) with { PowerCurve = parsed.GetValue(curve) }));
        return command;
    }
}
