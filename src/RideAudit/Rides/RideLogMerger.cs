using System.Collections.Immutable;
using NodaTime;

namespace RideAudit.Rides;

/// <summary>Brings ride log rows and recorded rides together: a row for a recorded ride gives it its rating, any other row is a ride of its own.</summary>
public static class RideLogMerger
{
    private const int SameStartMinutes = 30;
    private const double SameLengthShare = 0.25;

    /// <summary>Merges a log into rides.</summary>
    /// <param name="rides">Recorded rides.</param>
    /// <param name="log">Rows in the order of the log.</param>
    /// <returns>All rides in order of start.</returns>
    public static ImmutableArray<Ride> Merge(ImmutableArray<Ride> rides, ImmutableArray<LoggedRide> log)
    {
        if (log.IsEmpty)
            return rides;
        var merged = rides.ToList();
        var taken = new HashSet<string>();
        foreach (var row in log)
        {
            var index = Match(merged, row, taken);
            if (index < 0)
            {
                merged.Add(Unrecorded(row));
                continue;
            }
            taken.Add(merged[index].File);
            merged[index] = merged[index] with { Rating = row.Rating ?? merged[index].Rating };
        }
        return [.. merged.OrderBy(r => r.StartsAt.ToInstant()).ThenBy(r => r.File, StringComparer.Ordinal)];
    }

    private static int Match(List<Ride> rides, LoggedRide row, HashSet<string> taken)
    {
        var best = -1;
        for (var i = 0; i < rides.Count; i++)
        {
            if (rides[i].Date != row.Date || rides[i].Logged is not null || taken.Contains(rides[i].File) || !Fits(rides[i], row))
                continue;
            if (best < 0 || Difference(rides[i], row) < Difference(rides[best], row))
                best = i;
        }
        return best;
    }

    private static bool Fits(Ride ride, LoggedRide row) => row.Start is { } start
        ? Math.Abs(Period.Between(start, ride.StartsAt.TimeOfDay, PeriodUnits.Minutes).Minutes) <= SameStartMinutes
        : Difference(ride, row) <= SameLengthShare * row.Minutes;

    private static double Difference(Ride ride, LoggedRide row) => Math.Abs(ride.TimerSeconds / 60 - row.Minutes);

    private static Ride Unrecorded(LoggedRide row) => new()
    {
        File = row.File,
        Parts = [row.File],
        StartsAt = row.Date.At(row.Start ?? LocalTime.Noon).WithOffset(row.Offset),
        Sport = RideSport.Cycling,
        Grid = SampleGrid.Empty,
        TimerSeconds = row.Minutes * 60,
        ElapsedSeconds = row.Minutes * 60,
        Rating = row.Rating,
        Logged = row.Figures,
        Remarks = row.Start is null ? ["From the ride log, no start time: noon is taken."] : ["From the ride log."],
    };
}
