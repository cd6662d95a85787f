using RideAudit.Units;

namespace RideAudit.Figures;

/// <summary>Time in the low, middle and high band.</summary>
/// <remarks>Power: on the trailing 30 s mean, because the body follows the mean; default cuts 76 and 91 % of threshold power (common practice). Heart rate: 90 and 95 % of threshold heart rate (common practice).</remarks>
public static class IntensityBands
{
    /// <summary>Bands from power.</summary>
    /// <param name="trailing">Trailing 30 s power.</param>
    /// <param name="threshold">Threshold power, W, above 0.</param>
    /// <param name="lowerPercent">Lower cut, %.</param>
    /// <param name="upperPercent">Upper cut, %.</param>
    public static BandSeconds OfPower(TrailingPower trailing, Watts threshold, double lowerPercent, double upperPercent)
    {
        int low = 0, middle = 0, high = 0;
        for (var i = 0; i < trailing.Length; i++)
        {
            if (trailing.CountAt(i) == 0)
                continue;
            if (trailing.IsAtLeast(i, upperPercent, threshold.Value))
                high++;
            else if (trailing.IsAtLeast(i, lowerPercent, threshold.Value))
                middle++;
            else
                low++;
        }
        return new BandSeconds(low, middle, high);
    }

    /// <summary>Bands from heart rate, second by second.</summary>
    /// <param name="heartRateBpm">Heart rate on the grid, bpm, NaN where missing.</param>
    /// <param name="thresholdBpm">Threshold heart rate, bpm, above 0.</param>
    /// <param name="lowerPercent">Lower cut, %.</param>
    /// <param name="upperPercent">Upper cut, %.</param>
    public static BandSeconds OfHeartRate(float[] heartRateBpm, double thresholdBpm, double lowerPercent, double upperPercent)
    {
        int low = 0, middle = 0, high = 0;
        foreach (var bpm in heartRateBpm)
        {
            if (float.IsNaN(bpm))
                continue;
            if (100.0 * bpm >= upperPercent * thresholdBpm)
                high++;
            else if (100.0 * bpm >= lowerPercent * thresholdBpm)
                middle++;
            else
                low++;
        }
        return new BandSeconds(low, middle, high);
    }
}
