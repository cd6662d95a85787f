namespace RideAudit.Units;

/// <summary>Mechanical power, W. Never negative; kept apart from shares of threshold power, which are pure numbers.</summary>
/// <param name="Value">Power, W.</param>
public readonly record struct Watts(double Value)
{
    /// <summary>The power as a share of a threshold power: 1 is at threshold.</summary>
    /// <param name="threshold">Threshold power, W, above 0.</param>
    public double ShareOf(Watts threshold) => Value / threshold.Value;
}
