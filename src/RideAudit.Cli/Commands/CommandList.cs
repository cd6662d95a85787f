namespace RideAudit.Cli.Commands;

/// <summary>Every command, in the order the help lists them.</summary>
internal static class CommandList
{
    /// <summary>The commands.</summary>
    public static IReadOnlyList<ICommandSource> All { get; } =
    [
        new ReviewCommand(), new RidesCommand(), new WeeksCommand(), new RulesCommand(), new NewRiderCommand(),
        new WatchCommand(), new RosterCommand(), new NextCommand(), new PageCommand(), new CompletionCommand(),
    ];

    /// <summary>What to try first.</summary>
    public static IReadOnlyList<Example> RootExamples { get; } =
    [
        new("rideaudit my-rides/", "review the last finished week of the rides in my-rides/"),
        new("rideaudit new-rider my-rides/rider.toml", "write a rider file: threshold power, hours, days"),
        new("rideaudit ./rides", "a folder that has a command's name: with ./ it is a folder"),
    ];
}
