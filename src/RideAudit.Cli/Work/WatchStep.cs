namespace RideAudit.Cli.Work;

/// <summary>What a watched folder asks for.</summary>
internal enum WatchStep
{
    /// <summary>Nothing: look again later.</summary>
    Wait,

    /// <summary>Review now.</summary>
    Review,

    /// <summary>The folder has gone away: say so once.</summary>
    Gone,

    /// <summary>The folder is there again: say so once.</summary>
    Back,
}
