using RideAudit.Plan;
using RideAudit.Units;

namespace RideAudit.Figures;

/// <summary>Decides what kind of ride a ride was; the first match wins.</summary>
/// <remarks>Common practice, no source. Shares are of time that has a band; times count in whole minutes and shares in whole per cent, as they are shown.</remarks>
internal static class KindOfRide
{
    /// <summary>Kind of a ride that nothing tells of.</summary>
    /// <param name="timerSeconds">Timer time, s.</param>
    /// <param name="limits">The limits in force.</param>
    public static RideKind OfNothing(double timerSeconds, Limits limits) => IsTooShort(timerSeconds, limits) ? RideKind.None : RideKind.Unrated;

    /// <summary>Kind from power.</summary>
    /// <param name="ride">The ride's figures from power; its kind is not read.</param>
    /// <param name="limits">The limits in force.</param>
    public static RideKind FromPower(RideFigures ride, Limits limits)
    {
        using var phase = Phase.Begin("kind");
        if (IsTooShort(ride.DurationSeconds, limits))
            return RideKind.None;
        if (IsHigh(ride, limits))
            return RideKind.High;
        if (IsThreshold(ride, limits))
            return RideKind.Threshold;
        if (IsLong(ride.DurationSeconds, ride.Bands, limits))
            return RideKind.Long;
        return IsRecovery(ride, ride.IntensityRatio, limits.RecoveryPowerPercent, limits) ? RideKind.Recovery : RideKind.Endurance;
    }

    /// <summary>Kind from heart rate alone.</summary>
    /// <param name="ride">The ride's figures from heart rate; its kind is not read.</param>
    /// <param name="thresholdSeconds">Seconds at or above the heart rate that counts as around threshold.</param>
    /// <param name="limits">The limits in force.</param>
    public static RideKind FromHeartRate(RideFigures ride, double thresholdSeconds, Limits limits)
    {
        if (IsTooShort(ride.DurationSeconds, limits))
            return RideKind.None;
        if (IsAtLeast(ride.Bands.High, limits.HeartRateHighMinutes))
            return RideKind.High;
        if (IsAtLeast(thresholdSeconds, limits.HeartRateThresholdMinutes))
            return RideKind.Threshold;
        if (IsLong(ride.DurationSeconds, ride.Bands, limits))
            return RideKind.Long;
        var mean = ride.MeanHeartRateBpm / ride.ThresholdHeartRateBpm;
        return IsRecovery(ride, mean, limits.RecoveryHeartRatePercent, limits) ? RideKind.Recovery : RideKind.Endurance;
    }

    /// <summary>Kind from a session rating alone.</summary>
    /// <param name="rating">0 to 10.</param>
    /// <param name="timerSeconds">Timer time, s.</param>
    /// <param name="limits">The limits in force.</param>
    public static RideKind FromRating(double rating, double timerSeconds, Limits limits)
    {
        if (IsTooShort(timerSeconds, limits))
            return RideKind.None;
        if (rating >= limits.RatingHigh)
            return RideKind.High;
        if (rating >= limits.RatingThreshold)
            return RideKind.Threshold;
        if (rating <= limits.RatingRecovery && IsAtMost(timerSeconds, limits.RecoveryMinutes))
            return RideKind.Recovery;
        return MeetsLength(timerSeconds, limits) ? RideKind.Long : RideKind.Endurance;
    }

    /// <summary>True for a ride of the long-ride length with enough of it low, whatever its kind: three hours with tempo in them are long enough.</summary>
    /// <param name="timerSeconds">Timer time, s.</param>
    /// <param name="bands">The ride's bands.</param>
    /// <param name="limits">The limits in force.</param>
    public static bool IsLongEnough(double timerSeconds, BandSeconds bands, Limits limits) =>
        MeetsLength(timerSeconds, limits) && IsShare(bands.LowShare, limits.LongEnoughLowShare);

    /// <summary>True for a ride as long as the plan's long ride, give or take what the limits allow.</summary>
    /// <param name="timerSeconds">Timer time, s.</param>
    /// <param name="limits">The limits in force.</param>
    public static bool MeetsLength(double timerSeconds, Limits limits) =>
        IsAtLeast(timerSeconds, limits.LongRideLengthShare * limits.LongRideHours * 60);

    private static bool IsHigh(RideFigures ride, Limits limits) =>
        IsAtLeast(ride.AtHighShare?.SustainedSeconds ?? 0, limits.HighMinutes)
        || (IsShare(ride.IntensityRatio, limits.BoutsRatio)
            && ride.BoutCount >= limits.BoutsAtLeast
            && !Close.Below(ride.BoutSeconds, limits.BoutsMinutes * 60));

    private static bool IsThreshold(RideFigures ride, Limits limits)
    {
        var sustained = ride.AtThresholdShare?.SustainedSeconds ?? 0;
        return (IsAtLeast(sustained, limits.ThresholdMinutes) && IsShare(sustained / ride.Bands.Total, limits.ThresholdLeastShare))
            || (IsAtLeast(ride.DurationSeconds, limits.ThresholdRatioMinutes) && IsShare(ride.IntensityRatio, limits.ThresholdRatio));
    }

    private static bool IsLong(double timerSeconds, BandSeconds bands, Limits limits) =>
        MeetsLength(timerSeconds, limits) && IsShare(bands.LowShare, limits.LongRideLowShare);

    private static bool IsRecovery(RideFigures ride, double? share, double mostPercent, Limits limits) =>
        IsAtMost(ride.DurationSeconds, limits.RecoveryMinutes) && share is { } value && !Close.Above(AsShown.Percent(value), mostPercent);

    private static bool IsTooShort(double timerSeconds, Limits limits) => !IsAtLeast(timerSeconds, limits.KindLeastMinutes);

    private static bool IsAtLeast(double seconds, double minutes) => !Close.Below(AsShown.Minutes(seconds), minutes);

    private static bool IsAtMost(double seconds, double minutes) => !Close.Above(AsShown.Minutes(seconds), minutes);

    private static bool IsShare(double? share, double least) => share is { } value && !Close.Below(AsShown.Percent(value), 100 * least);
}
