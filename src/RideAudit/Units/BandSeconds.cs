namespace RideAudit.Units;

/// <summary>Seconds in the three intensity bands.</summary>
/// <param name="Low">Seconds below the lower cut.</param>
/// <param name="Middle">Seconds from the lower cut to below the upper cut.</param>
/// <param name="High">Seconds at or above the upper cut.</param>
public readonly record struct BandSeconds(double Low, double Middle, double High)
{
    /// <summary>All seconds that have a band.</summary>
    public double Total => Low + Middle + High;

    /// <summary>Seconds above the low band.</summary>
    public double AboveLow => Middle + High;

    /// <summary>Share of the banded time that is low, 0 to 1; null without banded time.</summary>
    public double? LowShare => Total > 0 ? Low / Total : null;

    /// <summary>Share of the banded time above the low band, 0 to 1; null without banded time.</summary>
    public double? AboveLowShare => Total > 0 ? AboveLow / Total : null;

    /// <summary>Adds band by band.</summary>
    public static BandSeconds operator +(BandSeconds a, BandSeconds b) =>
        new(a.Low + b.Low, a.Middle + b.Middle, a.High + b.High);
}
