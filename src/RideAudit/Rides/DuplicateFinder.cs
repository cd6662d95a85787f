using System.Collections.Immutable;

namespace RideAudit.Rides;

/// <summary>Finds recordings of the same riding.</summary>
public static class DuplicateFinder
{
    /// <summary>Overlap, as a share of the shorter one, from which two recordings are the same riding.</summary>
    public const double SameRidingOverlap = 0.8;

    /// <summary>Keeps one recording of each piece of riding: the better power coverage, then the longer, then the first by name.</summary>
    /// <remarks>
    /// Overlap is of riding, not of the clock: a second device may record what the first one paused for.
    /// Coverage is compared in whole percent, so that a few lost seconds do not cost a long recording its place.
    /// </remarks>
    /// <param name="recordings">In any order.</param>
    /// <returns>The kept ones in order of start, and each one left out beside the one kept for it.</returns>
    public static (ImmutableArray<Recording> Kept, ImmutableArray<(Recording LeftOut, Recording Kept)> LeftOut) Split(
        IEnumerable<Recording> recordings)
    {
        var best = recordings
            .OrderByDescending(r => Math.Round(r.PowerCoverage, 2))
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
        if ((a.Sport == RideSport.Other) != (b.Sport == RideSport.Other))
            return false;
        var ridesOfA = RunningTime.Of(a);
        var ridesOfB = RunningTime.Of(b);
        var shorter = Math.Min(RunningTime.Total(ridesOfA), RunningTime.Total(ridesOfB));
        return shorter > 0 && RunningTime.Overlap(ridesOfA, ridesOfB) >= SameRidingOverlap * shorter;
    }
}
