namespace RideAudit.Units;

/// <summary>Where the three intensity bands are parted, as shares of the threshold they are measured by.</summary>
/// <param name="LowerPercent">From here on a second is at least middle, %.</param>
/// <param name="UpperPercent">From here on a second is high, %.</param>
public readonly record struct BandCuts(double LowerPercent, double UpperPercent);
