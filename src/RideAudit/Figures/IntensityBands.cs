using RideAudit.Units;

namespace RideAudit.Figures;

/// <summary>Time in the low, middle and high band.</summary>
/// <remarks>
/// Power: high on the trailing 30 s mean, middle on the trailing 120 s mean, because a hard minute is felt at once and a steady state takes minutes;
/// default cuts 76 and 106 % of threshold power. Heart rate: 90 and 100 % of threshold heart rate, second by second. Common practice, no source.
/// </remarks>
internal static class IntensityBands
{
    /// <summary>The window of the mean that tells middle from low, s.</summary>
    public const int MiddleWindowSeconds = 120;

    /// <summary>Bands from power.</summary>
    /// <param name="forHigh">Trailing 30 s power.</param>
    /// <param name="forMiddle">Trailing 120 s power of the same ride.</param>
    /// <param name="threshold">Threshold power, W, above 0.</param>
    /// <param name="cuts">In % of threshold power.</param>
    public static BandSeconds OfPower(TrailingPower forHigh, TrailingPower forMiddle, Watts threshold, BandCuts cuts)
    {
        using var phase = Phase.Begin("bands");
        int low = 0, middle = 0, high = 0;
        var isHigh = forHigh.At(cuts.UpperPercent, threshold.Value);
        var isAboveLow = forMiddle.At(cuts.LowerPercent, threshold.Value);
        for (var i = 0; i < forHigh.Length; i++)
        {
            if (isHigh[i])
                high++;
            else if (isAboveLow[i])
                middle++;
            else if (forHigh.CountAt(i) > 0)
                low++;
        }
        return new BandSeconds(low, middle, high);
    }

    /// <summary>Bands from heart rate, second by second.</summary>
    /// <param name="heartRateBpm">Heart rate on the grid, bpm, NaN where missing.</param>
    /// <param name="thresholdBpm">Threshold heart rate, bpm, above 0.</param>
    /// <param name="cuts">In % of threshold heart rate.</param>
    public static BandSeconds OfHeartRate(ReadOnlySpan<float> heartRateBpm, double thresholdBpm, BandCuts cuts)
    {
        int all = 0, aboveLow = 0, high = 0;
        var (toLower, toUpper) = (cuts.LowerPercent * thresholdBpm, cuts.UpperPercent * thresholdBpm);
        foreach (var bpm in heartRateBpm)
        {
            var hundredfold = 100.0 * bpm;
            all += hundredfold >= 0 ? 1 : 0;
            aboveLow += hundredfold >= toLower ? 1 : 0;
            high += hundredfold >= toUpper ? 1 : 0;
        }
        return new BandSeconds(all - aboveLow, aboveLow - high, high);
    }

    /// <summary>Seconds at or above a share of threshold heart rate.</summary>
    /// <param name="heartRateBpm">Heart rate on the grid, bpm, NaN where missing.</param>
    /// <param name="thresholdBpm">Threshold heart rate, bpm, above 0.</param>
    /// <param name="percent">The share, %.</param>
    public static int SecondsAtLeast(ReadOnlySpan<float> heartRateBpm, double thresholdBpm, double percent)
    {
        var seconds = 0;
        var limit = percent * thresholdBpm;
        foreach (var bpm in heartRateBpm)
            seconds += 100.0 * bpm >= limit ? 1 : 0;
        return seconds;
    }
}
