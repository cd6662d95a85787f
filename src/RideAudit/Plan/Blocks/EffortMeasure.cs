namespace RideAudit.Plan.Blocks;

/// <summary>What an effort is told in.</summary>
public enum EffortMeasure
{
    /// <summary>The word "easy".</summary>
    Easy,

    /// <summary>The words "very easy".</summary>
    VeryEasy,

    /// <summary>A share of threshold power.</summary>
    PowerShare,

    /// <summary>A share of threshold heart rate.</summary>
    HeartRateShare,

    /// <summary>A feel from 0 to 10.</summary>
    Feel,

    /// <summary>The words "all out": as hard as the time allows.</summary>
    AllOut,
}
