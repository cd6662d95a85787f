namespace RideAudit.Rules;

/// <summary>What is drawn over the weeks: a rule may have the sentence that a drawing is headed by.</summary>
public enum Trend
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>Hours a week.</summary>
    Hours,

    /// <summary>Chronic and acute load.</summary>
    Load,

    /// <summary>The longest ride.</summary>
    LongestRide,
}
