using RideAudit.Plan;
using RideAudit.Units;

namespace RideAudit.Figures;

/// <summary>Decides what kind of ride a ride was; the first match wins.</summary>
/// <remarks>Common practice, no source. Shares are of powered time.</remarks>
public static class KindOfRide
{
    /// <summary>Wider than any rounding of binary fractions, finer than any figure shown: a ride exactly on a limit is inside it.</summary>
    private const double Rounding = 1e-9;

    /// <summary>Kind from power.</summary>
    /// <param name="timerSeconds">Timer time, s.</param>
    /// <param name="bands">Bands from power.</param>
    /// <param name="atThresholdShare">Time at or above the threshold share.</param>
    /// <param name="atHighShare">Time at or above the high share.</param>
    /// <param name="aboveThreshold">Time at or above the share beyond threshold.</param>
    /// <param name="intensityRatio">Normalised over threshold power; null without a full window.</param>
    /// <param name="limits">The limits in force.</param>
    public static RideKind FromPower(
        double timerSeconds, BandSeconds bands, SustainedTime atThresholdShare, SustainedTime atHighShare, SustainedTime aboveThreshold,
        double? intensityRatio, Limits limits)
    {
        if (timerSeconds < limits.KindLeastMinutes * 60)
            return RideKind.None;
        var powered = bands.Total;
        if (Amounts(atHighShare.SustainedSeconds, limits.HighMinutes, limits.HighLeastShare, powered)
            || Amounts(aboveThreshold.AllSeconds, limits.AboveThresholdMinutes, limits.HighLeastShare, powered))
            return RideKind.High;
        if (Amounts(atThresholdShare.SustainedSeconds, limits.ThresholdMinutes, limits.ThresholdLeastShare, powered)
            || (timerSeconds >= limits.MixedLeastMinutes * 60 && bands.AboveLow >= limits.MixedShare * powered - Rounding))
            return RideKind.Threshold;
        if (IsLong(timerSeconds, bands, limits))
            return RideKind.Long;
        return timerSeconds <= limits.RecoveryMinutes * 60 && intensityRatio * 100 <= limits.RecoveryPowerPercent + Rounding
            ? RideKind.Recovery
            : RideKind.Endurance;
    }

    /// <summary>Kind from heart rate alone.</summary>
    /// <param name="timerSeconds">Timer time, s.</param>
    /// <param name="bands">Bands from heart rate.</param>
    /// <param name="meanBpm">Mean heart rate, bpm.</param>
    /// <param name="thresholdBpm">Threshold heart rate, bpm.</param>
    /// <param name="limits">The limits in force.</param>
    public static RideKind FromHeartRate(double timerSeconds, BandSeconds bands, double meanBpm, double thresholdBpm, Limits limits)
    {
        if (timerSeconds < limits.KindLeastMinutes * 60)
            return RideKind.None;
        if (bands.High >= limits.HighMinutes * 60)
            return RideKind.High;
        if (bands.AboveLow >= limits.ThresholdMinutes * 60)
            return RideKind.Threshold;
        if (IsLong(timerSeconds, bands, limits))
            return RideKind.Long;
        return timerSeconds <= limits.RecoveryMinutes * 60 && 100 * meanBpm <= limits.RecoveryHeartRatePercent * thresholdBpm + Rounding
            ? RideKind.Recovery
            : RideKind.Endurance;
    }

    private static bool Amounts(double seconds, double minutes, double share, double powered) =>
        seconds >= minutes * 60 - Rounding && seconds >= share * powered - Rounding;

    private static bool IsLong(double timerSeconds, BandSeconds bands, Limits limits) =>
        timerSeconds >= limits.LongRideHours * 3600 - Rounding && bands.LowShare >= limits.LongRideLowShare - Rounding;
}
