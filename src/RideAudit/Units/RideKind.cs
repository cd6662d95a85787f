namespace RideAudit.Units;

/// <summary>What a ride was; ordered from easiest to hardest as days compare them.</summary>
public enum RideKind
{
    /// <summary>Under ten minutes: counts in hours and stress, has no kind.</summary>
    None,

    /// <summary>Short and very easy.</summary>
    Recovery,

    /// <summary>Everything else that is easy.</summary>
    Endurance,

    /// <summary>Neither power, heart rate, a rating nor anyone's word could say.</summary>
    Unrated,

    /// <summary>The plan's long-ride length, mostly low.</summary>
    Long,

    /// <summary>Sustained work around threshold power.</summary>
    Threshold,

    /// <summary>Sustained work above threshold power, or repeated short efforts well above it.</summary>
    High,
}
