using RideAudit.Plan;

namespace RideAudit.Figures;

/// <summary>Heart-rate load, scaled so that one hour at threshold heart rate is 100 points.</summary>
/// <remarks>
/// Per sample: minutes × x × a·e^(b·x), x the share of heart-rate reserve; a, b = 0.64, 1.92 (men), 0.86, 1.67 (women):
/// Banister 1991, in MacDougall, Wenger and Green (eds), Physiological Testing of Elite Athletes, 403–424 (from memory).
/// Sex unset: the mean of both constants. Below resting heart rate x is 0 (our choice).
/// </remarks>
internal static class HeartRateLoad
{
    /// <summary>The unscaled load of some minutes at one heart rate, arbitrary units.</summary>
    /// <param name="reserveShare">Share of heart-rate reserve, 0 at rest, 1 at the highest heart rate.</param>
    /// <param name="sex">Which constants.</param>
    public static double Unscaled(double minutes, double reserveShare, Sex sex)
    {
        var (factor, exponent) = sex switch
        {
            Sex.Male => (0.64, 1.92),
            Sex.Female => (0.86, 1.67),
            _ => ((0.64 + 0.86) / 2, (1.92 + 1.67) / 2),
        };
        var x = Math.Max(0, reserveShare);
        return minutes * x * factor * Math.Exp(exponent * x);
    }

    /// <summary>The scaled load of a ride.</summary>
    /// <param name="heartRateBpm">Heart rate on the grid, bpm, NaN where missing.</param>
    /// <param name="timerSeconds">Timer time, s: seconds without heart rate count at the mean rate of the others.</param>
    /// <param name="rider">Resting and highest heart rate, sex.</param>
    /// <param name="thresholdBpm">Threshold heart rate, bpm.</param>
    /// <returns>Points; null when a heart rate it needs is not given or contradicts another.</returns>
    public static double? Of(ReadOnlySpan<float> heartRateBpm, double timerSeconds, Rider rider, double thresholdBpm)
    {
        if (rider is not { RestHeartRateBpm: { } rest, MaxHeartRateBpm: { } max } || max <= rest || thresholdBpm <= rest)
            return null;
        Span<int> secondsAt = stackalloc int[256];
        double sum = 0;
        var covered = 0;
        foreach (var bpm in heartRateBpm)
        {
            if (float.IsNaN(bpm))
                continue;
            covered++;
            if (bpm == (int)bpm && bpm < 256)
                secondsAt[(int)bpm]++;
            else
                sum += Unscaled(1 / 60.0, (bpm - rest) / (max - rest), rider.Sex);
        }
        for (var bpm = 0; bpm < 256; bpm++)
            if (secondsAt[bpm] > 0)
                sum += Unscaled(secondsAt[bpm] / 60.0, (bpm - rest) / (max - rest), rider.Sex);
        var oneHourAtThreshold = Unscaled(60, (thresholdBpm - rest) / (max - rest), rider.Sex);
        return covered == 0 ? null : sum * (timerSeconds / covered) / oneHourAtThreshold * 100;
    }
}
