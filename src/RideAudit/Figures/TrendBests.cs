using RideAudit.Units;

namespace RideAudit.Figures;

/// <summary>The best mean powers that the season's trend and an estimate ask of every ride, without where they lie.</summary>
/// <param name="OneMinuteW">Over 1 min, W; null where no such window fits.</param>
/// <param name="FiveMinutesW">Over 5 min.</param>
/// <param name="TwentyMinutesW">Over 20 min.</param>
internal readonly record struct TrendBests(double? OneMinuteW, double? FiveMinutesW, double? TwentyMinutesW)
{
    public static TrendBests Of(in RunningTotals totals)
    {
        using var phase = Phase.Begin("bests");
        return new TrendBests(BestPowers.MeanOf(totals, 60), BestPowers.MeanOf(totals, 300), BestPowers.MeanOf(totals, 1200));
    }

    /// <summary>The mean over one of the three durations; null also for any other.</summary>
    /// <param name="seconds">60, 300 or 1200.</param>
    public double? Of(int seconds) => seconds switch
    {
        60 => OneMinuteW,
        300 => FiveMinutesW,
        1200 => TwentyMinutesW,
        _ => null,
    };
}
