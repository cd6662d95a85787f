using RideAudit.Rides;
using RideAudit.Units;

namespace RideAudit.Figures;

/// <summary>Heart-rate drift: how much less power a heartbeat bought in the second half of a steady ride.</summary>
/// <remarks>
/// (power ÷ heart rate of the first half − of the second) ÷ first × 100, mean power; the first 10 minutes are left out
/// (Coyle and González-Alonso 2001, Exerc Sport Sci Rev 29:88–92: drift starts after about ten minutes). Negative when the second half was better.
/// </remarks>
internal static class HeartRateDrift
{
    private const int LeftOutSeconds = 600;
    private const double LeastMinutes = 60;
    private const double LeastLowPercent = 80;
    private const double LeastCoverage = 0.90;

    /// <summary>Drift, %; null where the ride is under an hour, less than 80 % low, or less than 90 % covered by either channel.</summary>
    /// <param name="powerW">Power on the grid, W, NaN where missing.</param>
    /// <param name="heartRateBpm">Heart rate on the grid, bpm, NaN where missing.</param>
    /// <param name="timerSeconds">Timer time, s.</param>
    /// <param name="bands">The ride's bands.</param>
    public static double? Of(float[] powerW, float[] heartRateBpm, double timerSeconds, BandSeconds bands)
    {
        if (AsShown.Minutes(timerSeconds) < LeastMinutes || AsShown.Percent(bands.LowShare ?? 0) < LeastLowPercent
            || SampleGrid.CountValues(powerW) < LeastCoverage * timerSeconds
            || SampleGrid.CountValues(heartRateBpm) < LeastCoverage * timerSeconds)
            return null;
        var half = LeftOutSeconds + (powerW.Length - LeftOutSeconds) / 2;
        var first = PowerPerBeat(powerW, heartRateBpm, LeftOutSeconds, half);
        var second = PowerPerBeat(powerW, heartRateBpm, half, powerW.Length);
        return first > 0 && second is not null ? (first - second) / first * 100 : null;
    }

    private static double? PowerPerBeat(float[] powerW, float[] heartRateBpm, int start, int end)
    {
        double power = 0, heart = 0;
        for (var i = start; i < end; i++)
        {
            if (float.IsNaN(powerW[i]) || float.IsNaN(heartRateBpm[i]))
                continue;
            power += powerW[i];
            heart += heartRateBpm[i];
        }
        return heart > 0 ? power / heart : null;
    }
}
