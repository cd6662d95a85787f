using System.CommandLine;
using RideAudit.Cli.Options;
using RideAudit.Cli.Terminal;
using RideAudit.Cli.Work;

namespace RideAudit.Cli.Commands;

/// <summary>Writes a commented rider file.</summary>
internal sealed class NewRiderCommand : ICommandSource
{
    /// <inheritdoc/>
    public IReadOnlyList<Example> Examples { get; } =
    [
        new("rideaudit new-rider my-rides/rider.toml", "asks five questions, then writes the file"),
        new("rideaudit new-rider rider-a.toml --threshold-power 250 --weekly-hours 6.5", "asks nothing that was given"),
    ];

    /// <inheritdoc/>
    public Command Create(Shell shell)
    {
        var options = new NewRiderOptions();
        var command = new Command("new-rider", "Write a commented rider file: asks five questions on a terminal, takes options otherwise.");
        options.AddTo(command);
        command.SetAction(parsed => (int)NewRiderWork.Run(shell, options.Read(parsed)));
        return command;
    }
}
