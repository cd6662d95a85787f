using System.Collections.Immutable;
using NodaTime;

namespace RideAudit.Rides;

/// <summary>Joins recordings whose gaps are at most an hour into rides.</summary>
internal static class RideJoiner
{
    /// <summary>Longest gap inside a ride (a café stop, the way to the start line), minutes, unless another is given.</summary>
    public const double LongestGapMinutes = 60;

    /// <summary>Joins cycling recordings.</summary>
    /// <param name="recordings">Recordings without duplicates, in any order; those that are not cycling are left out.</param>
    /// <param name="longestGapMinutes">Longest gap inside a ride, min.</param>
    /// <returns>Rides in order of start.</returns>
    public static ImmutableArray<Ride> Join(IEnumerable<Recording> recordings, double longestGapMinutes = LongestGapMinutes)
    {
        var rides = ImmutableArray.CreateBuilder<Ride>();
        var group = new List<Recording>();
        var groupEnd = Instant.MinValue;
        foreach (var recording in recordings
            .Where(r => r.Sport != RideSport.Other)
            .OrderBy(r => r.Start).ThenBy(r => r.File, StringComparer.Ordinal))
        {
            if (group.Count > 0 && recording.Start - groupEnd > Duration.FromMinutes(longestGapMinutes))
            {
                rides.Add(ToRide(group));
                group.Clear();
                groupEnd = Instant.MinValue;
            }
            group.Add(recording);
            groupEnd = Instant.Max(groupEnd, recording.End);
        }
        if (group.Count > 0)
            rides.Add(ToRide(group));
        return rides.ToImmutable();
    }

    private static Ride ToRide(List<Recording> parts)
    {
        var first = parts[0];
        var (grid, leftOut) = GridJoiner.Join([.. parts.Select(p => (p.Grid, (long)(p.Start - first.Start).TotalSeconds))]);
        return new Ride
        {
            File = first.File,
            Parts = [.. parts.Select(p => p.File)],
            RecordedParts = [.. parts.Select(p => new Ride.Part(p.File, p.StartsAt.LocalDateTime, p.TimerSeconds))],
            StartsAt = first.StartsAt,
            Sport = parts.TrueForAll(p => p.Sport == first.Sport) ? first.Sport : RideSport.Cycling,
            Grid = grid,
            TimerSeconds = Math.Max(0, parts.Sum(p => p.TimerSeconds) - leftOut),
            ElapsedSeconds = (parts.Max(p => p.End) - first.Start).TotalSeconds,
            StoredThreshold = parts.Select(p => p.StoredThreshold).FirstOrDefault(t => t is not null),
            Rating = parts.Select(p => p.StoredRating).FirstOrDefault(r => r is not null),
            Remarks = [.. parts.SelectMany(p => p.Remarks).Distinct()],
        };
    }
}
