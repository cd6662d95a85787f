using System.Collections.Immutable;
using NodaTime;
using RideAudit.Figures;
using RideAudit.Rules;
using RideAudit.Rules.Changes;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Tests.Rules;

/// <summary>The smallest change once more, written straight down from the method without a thought for speed.</summary>
internal static class PlainChangeSearch
{
    private static readonly string[] Watched = ["hard-day-spacing", "hard-day-count", "rest-days", "rest-after-load", "long-ride", "long-ride-first"];

    private static readonly Verdict[] BestToWorst = [Verdict.Kept, Verdict.NotJudged, Verdict.Watch, Verdict.Broken];

    public static (ImmutableArray<RideChange> Changes, ImmutableArray<string> Keeps)? Find(WeekUnderReview week, ImmutableArray<Finding> findings)
    {
        if (!findings.Any(f => Watched.Contains(f.Rule) && f.Verdict == Verdict.Broken))
            return null;
        var rides = week.Week.Rides.ToList();
        foreach (var candidates in new[] { Moves(week, rides), Swaps(week, rides), TwoMoves(week, rides), Eased(week, rides), Lengthened(week, rides) })
        {
            var winner = candidates
                .Where(c => IsSensible(c, rides))
                .Select(c => (Candidate: c, Keeps: KeepsOf(week, findings, c, rides)))
                .Where(c => c.Keeps.Any(Watched.Contains))
                .OrderByDescending(c => c.Keeps.Count)
                .ThenBy(c => Math.Round(c.Candidate.Sum(e => Cost(e)), 6))
                .ThenBy(c => string.Join(' ', c.Candidate.Select(e => $"{e.Now.Date:uuuu-MM-dd} {e.Was.Date:uuuu-MM-dd} {e.Was.File}")), StringComparer.Ordinal)
                .FirstOrDefault();
            if (winner.Candidate is not null)
                return ([.. winner.Candidate.Select(e => new RideChange(e.Kind, e.Was.File, e.Was.Date, e.Now.Date, e.Kind == ChangeKind.Lengthen ? e.Now.DurationSeconds / 60 : null))], [.. winner.Keeps]);
        }
        return ([], []);
    }

    private sealed record Edit(ChangeKind Kind, RideFigures Was, RideFigures Now);

    private static bool CanRide(WeekUnderReview week, LocalDate date)
    {
        var days = week.Plan.Rider.Plan.Days;
        return days.IsEmpty || days.Contains(date.DayOfWeek);
    }

    private static IEnumerable<Edit[]> Moves(WeekUnderReview week, List<RideFigures> rides) =>
        from ride in rides
        from day in week.Week.Days
        where day.Date != ride.Date && CanRide(week, day.Date)
        select new[] { Moved(ChangeKind.Move, ride, day.Date) };

    private static IEnumerable<Edit[]> Swaps(WeekUnderReview week, List<RideFigures> rides) =>
        from a in rides
        from b in rides
        where rides.IndexOf(a) < rides.IndexOf(b) && a.Date != b.Date && CanRide(week, a.Date) && CanRide(week, b.Date)
        select new[] { Moved(ChangeKind.Swap, a, b.Date), Moved(ChangeKind.Swap, b, a.Date) };

    private static IEnumerable<Edit[]> TwoMoves(WeekUnderReview week, List<RideFigures> rides) =>
        from a in Moves(week, rides)
        from b in Moves(week, rides)
        where rides.IndexOf(a[0].Was) < rides.IndexOf(b[0].Was)
        select new[] { a[0], b[0] };

    private static IEnumerable<Edit[]> Eased(WeekUnderReview week, List<RideFigures> rides)
    {
        foreach (var ride in rides.Where(r => r.Kind is RideKind.High or RideKind.Threshold))
        {
            var kind = ride.DurationSeconds >= week.Plan.Limits.LongRideHours * 3600 ? RideKind.Long : RideKind.Endurance;
            yield return
            [
                new Edit(ChangeKind.Ease, ride, ride with
                {
                    Kind = kind, Stress = ride.DurationSeconds / 36 * 0.65 * 0.65, Bands = new BandSeconds(ride.DurationSeconds, 0, 0), IntensityRatio = 0.65,
                }),
            ];
        }
    }

    private static IEnumerable<Edit[]> Lengthened(WeekUnderReview week, List<RideFigures> rides)
    {
        var seconds = week.Plan.Limits.LongRideHours * 3600;
        foreach (var ride in rides.Where(r => r.Kind is RideKind.Recovery or RideKind.Endurance && r.DurationSeconds < seconds))
        {
            var added = seconds - ride.DurationSeconds;
            yield return
            [
                new Edit(ChangeKind.Lengthen, ride, ride with
                {
                    Kind = RideKind.Long, DurationSeconds = seconds, ElapsedSeconds = ride.ElapsedSeconds + added,
                    Stress = ride.Stress / ride.DurationSeconds * seconds, Bands = ride.Bands with { Low = ride.Bands.Low + added },
                }),
            ];
        }
    }

    private static Edit Moved(ChangeKind kind, RideFigures ride, LocalDate date) =>
        new(kind, ride, ride with { StartsAt = date.At(ride.StartsAt.TimeOfDay).WithOffset(ride.StartsAt.Offset) });

    private static bool IsSensible(Edit[] edits, List<RideFigures> rides)
    {
        var then = rides.Select(r => edits.FirstOrDefault(e => e.Was.File == r.File)?.Now ?? r).ToList();
        foreach (var edit in edits.Where(e => e.Kind != ChangeKind.Ease))
        {
            foreach (var other in then.Where(r => r.File != edit.Was.File && r.Date == edit.Now.Date))
            {
                var apart = Duration.Max(other.StartsAt.ToInstant() - edit.Now.EndsAt.ToInstant(), edit.Now.StartsAt.ToInstant() - other.EndsAt.ToInstant());
                if (apart <= Duration.FromHours(1) || (other.IsHard && edit.Now.IsHard))
                    return false;
            }
        }
        return true;
    }

    private static List<string> KeepsOf(WeekUnderReview week, ImmutableArray<Finding> before, Edit[] edits, List<RideFigures> rides)
    {
        var then = rides.Select(r => edits.FirstOrDefault(e => e.Was.File == r.File)?.Now ?? r);
        var days = week.Week.Days.Select(d => DayFacts.Build(d.Date, then.Where(r => r.Date == d.Date), d.OtherSeconds, week.Plan.Limits)).ToImmutableArray();
        var changed = WeekFacts.Build(days, week.Week.LoadBefore, week.Week.FirstRideOn, week.Week.Exception);
        var after = RuleBook.Standard.Judge(new WeekUnderReview(changed, week.Past, week.Plan));
        var pairs = before.Zip(after).ToList();
        return pairs.Exists(p => Array.IndexOf(BestToWorst, p.Second.Verdict) > Array.IndexOf(BestToWorst, p.First.Verdict))
            ? []
            : [.. pairs.Where(p => p.First.Verdict == Verdict.Broken && p.Second.Verdict == Verdict.Kept).Select(p => p.First.Rule)];
    }

    private static double Cost(Edit edit) => edit.Kind is ChangeKind.Ease or ChangeKind.Lengthen
        ? Math.Abs(StressOf(edit.Now) - StressOf(edit.Was))
        : StressOf(edit.Was);

    private static double StressOf(RideFigures ride) => ride.Stress ?? ride.DurationSeconds / 36 * 0.65 * 0.65;
}
