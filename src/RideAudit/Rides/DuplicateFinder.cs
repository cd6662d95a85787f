using System.Collections.Immutable;

namespace RideAudit.Rides;

/// <summary>Finds recordings of the same riding.</summary>
public static class DuplicateFinder
{
    /// <summary>Overlap, as a share of the shorter one, from which two recordings are the same riding.</summary>
    public const double SameRidingOverlap = 0.8;

    /// <summary>Keeps one recording of each piece of riding: the better power coverage, then the longer, then the first by name.</summary>
    /// <param name="recordings">In any order.</param>
    /// <returns>The kept ones in order of start, and each one left out beside the one kept for it.</returns>
    public static (ImmutableArray<Recording> Kept, ImmutableArray<(Recording LeftOut, Recording Kept)> LeftOut) Split(
        IEnumerable<Recording> recordings)
    {
        var best = recordings
            .OrderByDescending(r => Math.Round(r.PowerCoverage, 3))
            .ThenByDescending(r => r.TimerSeconds)
            .ThenBy(r => r.File, StringComparer.Ordinal);
        var kept = new List<Recording>();
        var leftOut = ImmutableArray.CreateBuilder<(Recording, Recording)>();
        var byDay = new Dictionary<long, List<Recording>>();
        foreach (var candidate in best)
        {
            var days = Days(candidate);
            var twin = days.SelectMany(d => byDay.GetValueOrDefault(d) ?? []).FirstOrDefault(k => IsSameRiding(k, candidate));
            if (twin is not null)
            {
                leftOut.Add((candidate, twin));
                continue;
            }
            kept.Add(candidate);
            foreach (var day in days)
            {
                if (!byDay.TryGetValue(day, out var list))
                    byDay.Add(day, list = []);
                list.Add(candidate);
            }
        }
        return ([.. kept.OrderBy(r => r.Start).ThenBy(r => r.File, StringComparer.Ordinal)], leftOut.ToImmutable());
    }

    private static List<long> Days(Recording recording)
    {
        var days = new List<long>();
        for (var day = DayOf(recording.Start); day <= DayOf(recording.End); day++)
            days.Add(day);
        return days;
    }

    private static long DayOf(NodaTime.Instant instant) => (long)Math.Floor(instant.ToUnixTimeSeconds() / 86400.0);

    private static bool IsSameRiding(Recording a, Recording b)
    {
        var start = NodaTime.Instant.Max(a.Start, b.Start);
        var end = NodaTime.Instant.Min(a.End, b.End);
        var overlap = (end - start).TotalSeconds;
        var shorter = Math.Min(a.ElapsedSeconds, b.ElapsedSeconds);
        return (a.Sport == RideSport.Other) == (b.Sport == RideSport.Other) && shorter > 0 && overlap >= SameRidingOverlap * shorter;
    }
}
