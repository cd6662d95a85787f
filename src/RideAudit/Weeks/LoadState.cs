namespace RideAudit.Weeks;

/// <summary>Acute and chronic load at the end of a day, points a day.</summary>
/// <remarks>Exponentially weighted with 1 − e^(−1/N), N = 7 and 42 days: the time-constant form of Banister, Calvert, Savage and Bach 1975 (from memory).</remarks>
/// <param name="Acute">Acute load, 7 d.</param>
/// <param name="Chronic">Chronic load, 42 d.</param>
public readonly record struct LoadState(double Acute, double Chronic)
{
    private static readonly double AcuteWeight = 1 - Math.Exp(-1.0 / 7);
    private static readonly double ChronicWeight = 1 - Math.Exp(-1.0 / 42);

    /// <summary>The state after one more day.</summary>
    /// <param name="stress">The day's training stress, points; 0 for a rest day.</param>
    public LoadState After(double stress) => new(
        Acute + AcuteWeight * (stress - Acute),
        Chronic + ChronicWeight * (stress - Chronic));

    /// <summary>Acute over chronic load; null while chronic load is 0.</summary>
    public double? Ratio => Chronic > 0 ? Acute / Chronic : null;
}
