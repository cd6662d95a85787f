namespace RideAudit.Plan;

/// <summary>How much riding a week holds: the plan's limits follow from it.</summary>
public enum Tier
{
    /// <summary>Up to 5 h.</summary>
    Low,

    /// <summary>Above 5 to 8 h.</summary>
    Middle,

    /// <summary>Above 8 to 15 h.</summary>
    High,

    /// <summary>Above 15 h.</summary>
    VeryHigh,
}
