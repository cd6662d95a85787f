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
    /// <param name="power">Power on the grid, W.</param>
    /// <param name="heartRate">Heart rate on the grid, bpm.</param>
    /// <param name="timerSeconds">Timer time, s.</param>
    /// <param name="bands">The ride's bands.</param>
    public static double? Of(PackedSamples power, PackedSamples heartRate, double timerSeconds, BandSeconds bands)
    {
        if (AsShown.Minutes(timerSeconds) < LeastMinutes || AsShown.Percent(bands.LowShare ?? 0) < LeastLowPercent
            || power.Values < LeastCoverage * timerSeconds
            || heartRate.Values < LeastCoverage * timerSeconds)
            return null;
        using var phase = Phase.Begin("drift");
        using var powerW = power.Lend();
        using var heartRateBpm = heartRate.Lend();
        var half = LeftOutSeconds + (power.Count - LeftOutSeconds) / 2;
        var first = PowerPerBeat(powerW.Span[LeftOutSeconds..half], heartRateBpm.Span[LeftOutSeconds..half]);
        var second = PowerPerBeat(powerW.Span[half..], heartRateBpm.Span[half..]);
        return first > 0 && second is not null ? (first - second) / first * 100 : null;
    }

    private static double? PowerPerBeat(ReadOnlySpan<float> powerW, ReadOnlySpan<float> heartRateBpm)
    {
        double power = 0, heart = 0;
        for (var i = 0; i < powerW.Length; i++)
        {
            if (float.IsNaN(powerW[i]) || float.IsNaN(heartRateBpm[i]))
                continue;
            power += powerW[i];
            heart += heartRateBpm[i];
        }
        return heart > 0 ? power / heart : null;
    }
}
