namespace RideAudit.Cli.Terminal;

/// <summary>How a piece of text is set. A tone only ever repeats what a word or a mark already says.</summary>
internal enum Tone
{
    /// <summary>Body text.</summary>
    Plain,

    /// <summary>Headlines and names.</summary>
    Strong,

    /// <summary>Supporting text.</summary>
    Quiet,

    /// <summary>A broken rule.</summary>
    Broken,

    /// <summary>A rule to watch.</summary>
    Watch,

    /// <summary>The low band.</summary>
    LowBand,

    /// <summary>The middle band.</summary>
    MiddleBand,

    /// <summary>The high band.</summary>
    HighBand,
}
