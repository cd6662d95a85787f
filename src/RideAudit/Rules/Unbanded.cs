using RideAudit.Figures;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Rules;

/// <summary>Time that has no band and might be of any: rides that nothing could rate, and rides that lack power or heart rate for more than a tenth.</summary>
internal static class Unbanded
{
    private const double GapThatCounts = 0.10;

    public static double SecondsIn(WeekFacts week)
    {
        double seconds = 0;
        foreach (var day in week.Days)
        {
            foreach (var ride in day.Rides)
                seconds += SecondsIn(ride);
        }
        return seconds;
    }

    private static double SecondsIn(RideFigures ride)
    {
        if (ride.Kind == RideKind.Unrated)
            return ride.DurationSeconds;
        var gap = ride.DurationSeconds - ride.Bands.Total;
        return gap > GapThatCounts * ride.DurationSeconds ? gap : 0;
    }
}
