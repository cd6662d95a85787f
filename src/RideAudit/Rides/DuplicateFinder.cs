using System.Collections.Immutable;
using NodaTime;

namespace RideAudit.Rides;

/// <summary>Finds recordings of the same riding.</summary>
internal static class DuplicateFinder
{
    /// <summary>Overlap, as a share of the shorter one, from which two recordings are the same riding.</summary>
    public const double SameRidingOverlap = 0.8;

    /// <summary>A recording of riding that another one has too.</summary>
    /// <param name="LeftOut">The recording that is not kept whole.</param>
    /// <param name="Kept">The one kept for it.</param>
    /// <param name="KeptSeconds">Timer seconds of the one kept.</param>
    /// <param name="GivenSeconds">Timer seconds that the other gave all the same, as nothing kept has them; 0 where it gave none.</param>
    public readonly record struct Duplicate(Recording LeftOut, Recording Kept, double KeptSeconds, double GivenSeconds);

    /// <summary>Keeps one recording of each piece of riding: the better power coverage, then the longer, then the first by name.</summary>
    /// <remarks>
    /// Nothing ridden is lost: where what is kept covers less than 80 % of a recording, the seconds it lacks come from that one, as a recording of their own; stretches over which that one stood are not ridden.
    /// Overlap is of riding, not of the clock: a second device may record what the first one paused for.
    /// Coverage is compared in whole percent, so that a few lost seconds do not cost a long recording its place.
    /// </remarks>
    /// <param name="recordings">In any order.</param>
    /// <returns>The kept ones in order of start, and each one left out beside the one kept for it.</returns>
    public static (ImmutableArray<Recording> Kept, ImmutableArray<Duplicate> LeftOut) Split(IEnumerable<Recording> recordings)
    {
        var best = recordings
            .OrderByDescending(r => Math.Round(r.PowerCoverage, 2))
            .ThenByDescending(r => r.TimerSeconds)
            .ThenBy(r => r.File, StringComparer.Ordinal);
        var kept = new KeptRecordings();
        var leftOut = ImmutableArray.CreateBuilder<Duplicate>();
        foreach (var candidate in best)
        {
            var near = kept.Near(candidate);
            var twin = near.FirstOrDefault(k => IsSameRiding(k, candidate));
            if (twin is null)
            {
                kept.Add(candidate);
                continue;
            }
            var rest = WhatIsLacking(candidate, near);
            if (rest is not null)
                kept.Add(rest);
            leftOut.Add(new Duplicate(candidate, twin, twin.TimerSeconds, rest?.TimerSeconds ?? 0));
        }
        return ([.. kept.All.OrderBy(r => r.Start).ThenBy(r => r.File, StringComparer.Ordinal)], leftOut.ToImmutable());
    }

    private static Recording? WhatIsLacking(Recording candidate, IEnumerable<Recording> near)
    {
        var running = RunningTime.Of(candidate);
        var lacking = near.Where(k => IsSameActivity(k, candidate))
            .Aggregate(running, (left, k) => RunningTime.Without(left, RunningTime.Of(k)))
            .Where(stretch => !Stands(candidate, stretch)).ToArray();
        var covered = RunningTime.Total(running) - RunningTime.Total(lacking);
        return covered < SameRidingOverlap * RunningTime.Total(running) ? RecordingCut.To(candidate, lacking) : null;
    }

    /// <summary>At a café one device pauses and another runs on: by its own speed nothing is ridden there. Indoors, where speed is 0 throughout, it says nothing.</summary>
    private static bool Stands(Recording recording, TimerInterval stretch)
    {
        if (recording.Grid.Standing is not { } standing)
            return false;
        var (start, end) = RecordingCut.GridRange(recording, stretch);
        return 2 * StandingTime.Within(standing, start, end) > end - start;
    }

    private static bool IsSameActivity(Recording a, Recording b) => (a.Sport == RideSport.Other) == (b.Sport == RideSport.Other);

    private static bool IsSameRiding(Recording a, Recording b)
    {
        if (!IsSameActivity(a, b))
            return false;
        var ridesOfA = RunningTime.Of(a);
        var ridesOfB = RunningTime.Of(b);
        var shorter = Math.Min(RunningTime.Total(ridesOfA), RunningTime.Total(ridesOfB));
        return shorter > 0 && RunningTime.Overlap(ridesOfA, ridesOfB) >= SameRidingOverlap * shorter;
    }

    /// <summary>The recordings kept so far, found by the days they touch.</summary>
    private sealed class KeptRecordings
    {
        private readonly Dictionary<long, List<Recording>> _byDay = [];

        public List<Recording> All { get; } = [];

        public void Add(Recording recording)
        {
            All.Add(recording);
            foreach (var day in Days(recording))
            {
                if (!_byDay.TryGetValue(day, out var list))
                    _byDay.Add(day, list = []);
                list.Add(recording);
            }
        }

        public IReadOnlyList<Recording> Near(Recording recording) =>
            [.. Days(recording).SelectMany(d => _byDay.GetValueOrDefault(d) ?? []).Distinct(ReferenceEqualityComparer.Instance).Cast<Recording>()];

        private static IEnumerable<long> Days(Recording recording)
        {
            for (var day = DayOf(recording.Start); day <= DayOf(recording.End); day++)
                yield return day;
        }

        private static long DayOf(Instant instant) => (long)Math.Floor(instant.ToUnixTimeSeconds() / 86400.0);
    }
}
