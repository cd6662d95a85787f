namespace RideAudit.Cli;

/// <summary>What the program says to its caller.</summary>
internal enum ExitCode
{
    /// <summary>Done, whatever the verdicts.</summary>
    Done = 0,

    /// <summary>Done, and a rule was broken that <c>--fail-on</c> asked about.</summary>
    RuleBroken = 1,

    /// <summary>Wrong use, a broken rider file, or an output that cannot be written.</summary>
    WrongUse = 2,

    /// <summary>No usable ride.</summary>
    NoRide = 3,

    /// <summary>Done, but some files could not be used and <c>--strict</c> was given.</summary>
    FilesNotUsed = 4,

    /// <summary>A fault of the program itself.</summary>
    Fault = 70,

    /// <summary>Interrupted.</summary>
    Interrupted = 130,
}
