using System.CommandLine;
using RideAudit.Cli.Options;
using RideAudit.Cli.Terminal;
using RideAudit.Cli.Work;

namespace RideAudit.Cli.Commands;

/// <summary>The rules in force for a rider.</summary>
internal sealed class RulesCommand : ICommandSource
{
    /// <inheritdoc/>
    public IReadOnlyList<Example> Examples { get; } =
    [
        new("rideaudit rules", "every rule with its default limits, evidence and source"),
        new("rideaudit rules --rider my-rides/rider.toml", "with the limits of a rider file"),
    ];

    /// <inheritdoc/>
    public Command Create(Shell shell)
    {
        var rider = new Option<string?>("--rider") { Description = "Rider file. Default: the default limits.", HelpName = "FILE" };
        var format = CommonOptions.Format();
        var command = new Command("rules", "The rules in force for a rider, with limits, evidence and sources.");
        command.Options.Add(rider);
        command.Options.Add(format);
        command.SetAction(parsed => (int)TableWork.Rules(shell, parsed.GetValue(rider), parsed.GetValue(format)));
        return command;
    }
}
