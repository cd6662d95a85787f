using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Units;

namespace RideAudit.Rules.Changes;

/// <summary>A ride as it would have been: on another day, ridden easy, or longer.</summary>
internal static class ChangedRide
{
    /// <summary>The same ride at the same clock time on another local date.</summary>
    public static RideFigures On(RideFigures ride, LocalDate date) => ride with { StartsAt = ride.StartsAt.With((LocalDate _) => date) };

    /// <summary>The same time, all of it easy. What it once showed of the rider's threshold stays known.</summary>
    public static RideFigures Eased(RideFigures ride, Limits limits)
    {
        var ratio = limits.EasedRatio;
        return ride with
        {
            Kind = EasyKind(ride.DurationSeconds, ratio, limits),
            IntensityRatio = ride.IntensityRatio is null ? null : ratio,
            NormalisedPower = ride.Threshold is { } threshold && ride.NormalisedPower is not null ? new Watts(ratio * threshold.Power.Value) : null,
            Stress = ride.Stress is null ? null : ride.DurationSeconds / 3600 * ratio * ratio * 100,
            Bands = new BandSeconds(ride.DurationSeconds, 0, 0),
            AtThresholdShare = null,
            AtHighShare = null,
            NearThreshold = null,
            BoutCount = 0,
            BoutSeconds = 0,
            LongEnough = KindOfRide.MeetsLength(ride.DurationSeconds, limits),
        };
    }

    /// <summary>The same ride made longer at its own stress an hour, the added time easy.</summary>
    public static RideFigures Lengthened(RideFigures ride, Limits limits)
    {
        var seconds = LongRideSeconds(limits);
        var added = seconds - ride.DurationSeconds;
        var bands = ride.Bands + new BandSeconds(added, 0, 0);
        return ride with
        {
            DurationSeconds = seconds,
            ElapsedSeconds = ride.ElapsedSeconds + added,
            Kind = bands.LowShare >= limits.LongRideLowShare ? RideKind.Long : ride.Kind,
            LongEnough = KindOfRide.IsLongEnough(seconds, bands, limits),
            Stress = ride.Stress * seconds / ride.DurationSeconds,
            WorkKj = ride.WorkKj * seconds / ride.DurationSeconds,
            Bands = bands,
        };
    }

    /// <summary>A hard ride ridden as the long ride instead: at least its length, all of it easy.</summary>
    public static RideFigures AsLongRide(RideFigures ride, Limits limits)
    {
        var seconds = Math.Max(LongRideSeconds(limits), ride.DurationSeconds);
        return Eased(ride with { DurationSeconds = seconds, ElapsedSeconds = ride.ElapsedSeconds + seconds - ride.DurationSeconds }, limits);
    }

    /// <summary>The long ride's length in whole minutes, rounded up, so that riding what is printed is enough; s.</summary>
    public static double LongRideSeconds(Limits limits) => Math.Ceiling(limits.LongRideHours * 60 - Close.Hair) * 60;

    private static RideKind EasyKind(double seconds, double ratio, Limits limits) =>
        KindOfRide.MeetsLength(seconds, limits) ? RideKind.Long
        : seconds <= limits.RecoveryMinutes * 60 && ratio * 100 <= limits.RecoveryPowerPercent ? RideKind.Recovery
        : RideKind.Endurance;
}
