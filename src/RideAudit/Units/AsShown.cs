namespace RideAudit.Units;

/// <summary>Figures as a page shows them, halves away from zero: a verdict never turns on what the reader cannot see.</summary>
/// <remarks>8,999 s is shown as 2 h 30 min, so it is a ride of 2 h 30 min.</remarks>
internal static class AsShown
{
    /// <summary>A time in whole minutes.</summary>
    /// <param name="seconds">The time, s.</param>
    public static double Minutes(double seconds) => Whole(seconds / 60);

    /// <summary>A share in whole per cent.</summary>
    /// <param name="share">The share, 1 being the whole.</param>
    public static double Percent(double share) => Whole(100 * share);

    /// <summary>A power in whole watts.</summary>
    public static double Watts(Watts power) => Whole(power.Value);

    /// <summary>A half that binary fractions put a hair too low is still a half.</summary>
    private static double Whole(double value) => Math.Round(value + Close.Hair, MidpointRounding.AwayFromZero);
}
