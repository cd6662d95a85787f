namespace RideAudit.Plan.Blocks;

/// <summary>How hard a stretch is meant to be.</summary>
/// <param name="Measure">What it is told in.</param>
/// <param name="From">Lower end, %, or feel 0 to 10; the value at the start of a ramp; 0 for words.</param>
/// <param name="To">Upper end, not below the lower but for a ramp that falls.</param>
/// <param name="Ramps">Goes evenly from one end to the other.</param>
public readonly record struct Effort(EffortMeasure Measure, double From = 0, double To = 0, bool Ramps = false)
{
    /// <summary>Riding that warms up, cools down, or fills the time between repeats.</summary>
    public static Effort Easy => new(EffortMeasure.Easy);

    /// <summary>The easiest riding there is.</summary>
    public static Effort VeryEasy => new(EffortMeasure.VeryEasy);

    /// <summary>As hard as the time allows.</summary>
    public static Effort AllOut => new(EffortMeasure.AllOut);

    /// <summary>A share of threshold power.</summary>
    /// <param name="from">Lower end, %.</param>
    /// <param name="to">Upper end, %.</param>
    public static Effort Power(double from, double to) => new(EffortMeasure.PowerShare, from, to);
}
