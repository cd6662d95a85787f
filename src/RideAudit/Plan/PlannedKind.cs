namespace RideAudit.Plan;

/// <summary>What a planned session is meant to be.</summary>
public enum PlannedKind
{
    /// <summary>A day without riding.</summary>
    Rest,

    /// <summary>Short and very easy.</summary>
    Recovery,

    /// <summary>Easy.</summary>
    Endurance,

    /// <summary>The long ride.</summary>
    Long,

    /// <summary>Work around threshold power.</summary>
    Threshold,

    /// <summary>Work above threshold power.</summary>
    High,

    /// <summary>A race, a 200 km day, a stage event.</summary>
    Event,
}
