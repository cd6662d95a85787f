using System.CommandLine;
using RideAudit.Cli.Options;
using RideAudit.Cli.Terminal;
using RideAudit.Cli.Work;

namespace RideAudit.Cli.Commands;

/// <summary>A layout for the week after the reviewed one.</summary>
internal sealed class NextCommand : ICommandSource
{
    /// <inheritdoc/>
    public IReadOnlyList<Example> Examples { get; } =
    [
        new("rideaudit next my-rides/", "a layout for the week that follows the last finished one"),
        new("rideaudit next my-rides/ --ics next-week.ics", "the same as a calendar file"),
    ];

    /// <inheritdoc/>
    public Command Create(Shell shell)
    {
        var folder = FolderArgument.Create();
        var rider = CommonOptions.Rider();
        var asOf = CommonOptions.AsOf();
        var week = DateOption.Create("--week", "Lay out the week after the one that holds this date. Default: after the last week that has ended.");
        var ics = new Option<string?>("--ics") { Description = "Write the layout as a calendar (RFC 5545) here.", HelpName = "FILE" };
        var format = ChoiceOption.Create("--format", "A table to read, or JSON. Default: table.", ("table", TableFormat.Table), ("json", TableFormat.Json));
        var command = new Command("next", "Lay out the week after the reviewed one: hard days apart, rest after loaded days, a long ride, judged by the same rules.");
        command.Arguments.Add(folder);
        foreach (var option in new Option[] { rider, asOf, week, ics, format })
            command.Options.Add(option);
        command.SetAction(parsed => (int)NextWork.Run(shell, new NextArguments(
            parsed.GetRequiredValue(folder),
            parsed.GetValue(rider),
            parsed.GetValue(asOf),
            parsed.GetValue(week),
            parsed.GetValue(ics),
            parsed.GetValue(format))));
        return command;
    }
}
