namespace RideAudit.Document;

/// <summary>A week's intensity distribution in a word or two.</summary>
public enum WeekStructure
{
    /// <summary>Nothing above the low band.</summary>
    AllLow,

    /// <summary>More high than middle, and most low.</summary>
    Polarized,

    /// <summary>More high than middle, without being polarized.</summary>
    Mixed,

    /// <summary>Less of each band than of the one below.</summary>
    Pyramidal,

    /// <summary>High above the others.</summary>
    MostlyHigh,

    /// <summary>Middle above the others.</summary>
    MostlyMiddle,
}
