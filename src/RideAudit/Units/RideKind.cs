using RideAudit.Formatting;

namespace RideAudit.Units;

/// <summary>What a ride was, from its own samples; ordered from easiest to hardest as days compare them.</summary>
public enum RideKind
{
    /// <summary>Under ten minutes: counts in hours and stress, has no kind.</summary>
    [Word(null)]
    None,

    /// <summary>Short and very easy.</summary>
    Recovery,

    /// <summary>Everything else that is easy.</summary>
    Endurance,

    /// <summary>Neither power nor heart rate could say.</summary>
    Unrated,

    /// <summary>At least the plan's long-ride length, mostly low.</summary>
    Long,

    /// <summary>Sustained work around threshold power.</summary>
    Threshold,

    /// <summary>Sustained work at or above 91 % of threshold power, or repeated work above it.</summary>
    High,
}
