using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Rules;

/// <summary>What a ride that nothing could rate may have been at most and at least: a verdict that differs between the two is not given.</summary>
internal static class UnratedReading
{
    public static DayFacts Of(DayFacts day, bool hard, Limits limits) =>
        DayFacts.Build(day.Date, day.Rides.Select(r => r.Kind == RideKind.Unrated ? Of(r, hard, limits) : r), day.OtherSeconds, limits);

    private static RideFigures Of(RideFigures ride, bool hard, Limits limits) => hard
        ? ride with { Kind = RideKind.High, Bands = new BandSeconds(0, 0, ride.DurationSeconds) }
        : ride with
        {
            Kind = EasiestKind(ride.DurationSeconds, limits),
            LongEnough = KindOfRide.MeetsLength(ride.DurationSeconds, limits),
            Bands = new BandSeconds(ride.DurationSeconds, 0, 0),
        };

    private static RideKind EasiestKind(double seconds, Limits limits) =>
        KindOfRide.MeetsLength(seconds, limits) ? RideKind.Long
        : seconds <= limits.RecoveryMinutes * 60 ? RideKind.Recovery
        : RideKind.Endurance;
}
