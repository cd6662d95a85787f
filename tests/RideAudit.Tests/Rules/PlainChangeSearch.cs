using System.Collections.Immutable;
using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Rules;
using RideAudit.Rules.Changes;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Tests.Rules;

/// <summary>The smallest change once more, written straight down from the method without a thought for speed.</summary>
internal sealed class PlainChangeSearch
{
    private static readonly string[] Watched =
        ["hard-day-spacing", "hard-day-count", "rest-days", "rest-after-load", "long-ride", "long-ride-first", "return-to-riding"];

    private static readonly Verdict[] BestToWorst = [Verdict.Kept, Verdict.NotJudged, Verdict.Watch, Verdict.Broken];

    private readonly WeekUnderReview _week;
    private readonly ImmutableArray<Finding> _before;
    private readonly List<RideFigures> _rides;
    private readonly string _lead;

    private PlainChangeSearch(WeekUnderReview week, ImmutableArray<Finding> before)
    {
        _week = week;
        _before = before;
        _rides = [.. week.Week.Rides.Where(r => !IsEvent(r.Date))];
        _lead = before.Where(f => f.Verdict == Verdict.Broken).OrderBy(f => f.Standing.Rank).First().Rule;
    }

    private double LongSeconds => Math.Ceiling(_week.Plan.Limits.LongRideHours * 60 - 1e-9) * 60;

    public static (ImmutableArray<RideChange> Changes, ImmutableArray<string> Keeps)? Find(WeekUnderReview week, ImmutableArray<Finding> findings) =>
        findings.Any(f => Watched.Contains(f.Rule) && f.Verdict == Verdict.Broken) ? new PlainChangeSearch(week, findings).Find() : null;

    private (ImmutableArray<RideChange> Changes, ImmutableArray<string> Keeps)? Find()
    {
        Func<RideFigures, IEnumerable<Edit>>[] single = [Moves, Eased, LeftOut, Lengthened, RiddenLong];
        IEnumerable<Edit[]> Class(Func<RideFigures, IEnumerable<Edit>> of) => _rides.SelectMany(of).Select(e => new[] { e });
        var two =
            from a in _rides
            from b in _rides
            where _rides.IndexOf(a) < _rides.IndexOf(b)
            from first in single.SelectMany(of => of(a))
            from second in single.SelectMany(of => of(b))
            select new[] { first, second };
        var classes = new[] { Class(Moves), Swaps(), Class(Eased), Class(LeftOut), Class(Lengthened), Class(RiddenLong), two };
        // The long ride that the rule asks for first, and only where no change gives it one hard day fewer.
        foreach (var (candidates, inFull) in classes.Select(c => (c, true)).Concat(classes.Select(c => (c, false))))
        {
            var winner = candidates
                .Where(IsSensible)
                .Select(c => (Candidate: c, Keeps: KeepsOf(c)))
                .Where(c => c.Keeps.Contains(_lead) && (!inFull || _lead != "long-ride-first" || HasLongRide(c.Candidate)))
                .OrderByDescending(c => c.Keeps.Count)
                .ThenBy(c => KeySessions([]) - KeySessions(c.Candidate))
                .ThenBy(c => Math.Round(c.Candidate.Sum(Cost), 6))
                .ThenBy(c => string.Join(' ', c.Candidate.Select(e => $"{e.To:uuuu-MM-dd} {e.Was.Date:uuuu-MM-dd} {e.Was.File} {(int)e.Kind}")), StringComparer.Ordinal)
                .FirstOrDefault();
            if (winner.Candidate is not null)
                return ([.. winner.Candidate.Select(AsChange)], [.. winner.Keeps]);
        }
        return Watched.Contains(_lead) ? new([], []) : null;
    }

    private static RideChange AsChange(Edit edit) =>
        new(edit.Kind, edit.Was.File, edit.Was.Date, edit.To, edit.Kind is ChangeKind.Lengthen or ChangeKind.RideLong ? Math.Round(edit.Now!.DurationSeconds / 60) : null);

    private static bool IsEasy(RideFigures ride) => ride.Kind is RideKind.Recovery or RideKind.Endurance;

    /// <summary>No more riding on, or the day before, a day that is out or an event.</summary>
    private bool MayAsk(LocalDate date)
    {
        bool Closed(LocalDate day) => _week.Plan.Rider.Exceptions.Any(e => e.Kind != ExceptionKind.Lighter && e.From <= day && day <= e.To);
        return !Closed(date) && !Closed(date.PlusDays(1)) && Period.DaysBetween(_week.Week.StartsOn, date) < _week.Week.DaysThatCount;
    }

    /// <summary>Of several kinds on one day ill counts before an event.</summary>
    private bool IsEvent(LocalDate date)
    {
        var kinds = _week.Plan.Rider.Exceptions.Where(e => e.From <= date && date <= e.To).Select(e => e.Kind).ToList();
        return kinds.Contains(ExceptionKind.Event) && !kinds.Contains(ExceptionKind.Ill);
    }

    private bool MayLengthen(LocalDate date) =>
        MayAsk(date) && !_week.Plan.Rider.Exceptions.Any(e => e.Kind == ExceptionKind.Ill && e.From <= _week.Week.EndsOn && e.To >= _week.Week.StartsOn);

    private IEnumerable<DayFacts> SameWeekday(LocalDate date) =>
        _week.Past.Weeks.TakeLast(6).Append(_week.Week).SelectMany(w => w.Days).Where(d => d.Date.DayOfWeek == date.DayOfWeek);

    private bool CanRide(LocalDate date)
    {
        var rider = _week.Plan.Rider;
        if (!MayAsk(date))
            return false;
        if (rider.MinutesFree is { } free)
            return free.ContainsKey(date.DayOfWeek) && free[date.DayOfWeek] > 0;
        if (!rider.Plan.Days.IsEmpty)
            return rider.Plan.Days.Contains(date.DayOfWeek);
        return _week.Past.Weeks.IsEmpty || SameWeekday(date).Any(d => d.Rides.Length > 0);
    }

    private IEnumerable<Edit> Moves(RideFigures ride) =>
        _week.Week.Days.Where(d => d.Date != ride.Date && CanRide(d.Date)).Select(d => Moved(ChangeKind.Move, ride, d.Date));

    private IEnumerable<Edit[]> Swaps() =>
        from a in _rides
        from b in _rides
        where _rides.IndexOf(a) < _rides.IndexOf(b) && a.Date != b.Date && CanRide(a.Date) && CanRide(b.Date)
        select new[] { Moved(ChangeKind.Swap, a, b.Date), Moved(ChangeKind.Swap, b, a.Date) };

    private IEnumerable<Edit> Eased(RideFigures ride) => ride.IsHard ? [new Edit(ChangeKind.Ease, ride, Easy(ride, ride.DurationSeconds), ride.Date)] : [];

    /// <summary>Less was ridden than was planned, or more, and a finding says so.</summary>
    private bool HoursAre(string what) => _before.Single(f => f.Rule == "weekly-hours") is { WouldHaveKept: { } kept } && kept.EndsWith($" {what}.", StringComparison.Ordinal);

    private bool IsTooMuch => HoursAre("less") || new Background(_week).JustBack
        || _before.Any(f => f is { Rule: "return-to-riding", WouldHaveKept: { } easier } && easier.Contains("t most", StringComparison.Ordinal)) || _before.Any(f => f.Rule is "weekly-growth" or "longest-ride-jump" && f.Verdict == Verdict.Watch);

    private IEnumerable<Edit> LeftOut(RideFigures ride) => IsEasy(ride) && !HoursAre("more") ? [new Edit(ChangeKind.LeaveOut, ride, null, ride.Date)] : [];

    private IEnumerable<Edit> RiddenLong(RideFigures ride) => ride.IsHard && MayLengthen(ride.Date) && !IsTooMuch
        ? [new Edit(ChangeKind.RideLong, ride, Easy(ride, Math.Max(ride.DurationSeconds, LongSeconds)), ride.Date)]
        : [];

    private IEnumerable<Edit> Lengthened(RideFigures ride)
    {
        var added = LongSeconds - ride.DurationSeconds;
        if (!IsEasy(ride) || added <= 0 || added > ride.DurationSeconds / 2 || IsTooMuch || !MayLengthen(ride.Date))
            yield break;
        yield return new Edit(ChangeKind.Lengthen, ride, ride with
        {
            Kind = RideKind.Long,
            LongEnough = true,
            DurationSeconds = LongSeconds,
            ElapsedSeconds = ride.ElapsedSeconds + added,
            Stress = ride.Stress / ride.DurationSeconds * LongSeconds,
            Bands = ride.Bands with { Low = ride.Bands.Low + added },
        }, ride.Date);
    }

    private RideFigures Easy(RideFigures ride, double seconds)
    {
        var isLong = Math.Round(seconds / 60) >= 0.95 * _week.Plan.Limits.LongRideHours * 60;
        return ride with
        {
            Kind = isLong ? RideKind.Long : RideKind.Endurance,
            LongEnough = isLong,
            DurationSeconds = seconds,
            ElapsedSeconds = ride.ElapsedSeconds + seconds - ride.DurationSeconds,
            Stress = seconds / 36 * 0.65 * 0.65,
            Bands = new BandSeconds(seconds, 0, 0),
            IntensityRatio = 0.65,
            AtThresholdShare = null,
            AtHighShare = null,
            NearThreshold = null,
            BoutCount = 0,
            BoutSeconds = 0,
        };
    }

    private static Edit Moved(ChangeKind kind, RideFigures ride, LocalDate date) =>
        new(kind, ride, ride with { StartsAt = date.At(ride.StartsAt.TimeOfDay).WithOffset(ride.StartsAt.Offset) }, date);

    private List<RideFigures> Then(Edit[] edits) =>
        [.. _week.Week.Rides.Select(r => edits.FirstOrDefault(e => e.Was.File == r.File) is { } edit ? edit.Now : r).OfType<RideFigures>()];

    private bool IsSensible(Edit[] edits)
    {
        var then = Then(edits);
        foreach (var edit in edits.Where(e => e.Now is not null && (e.To != e.Was.Date || e.Now.DurationSeconds > e.Was.DurationSeconds)))
        {
            var day = then.Where(r => r.Date == edit.To).ToList();
            foreach (var other in day.Where(r => r.File != edit.Was.File))
            {
                var apart = Duration.Max(other.StartsAt.ToInstant() - edit.Now!.EndsAt.ToInstant(), edit.Now.StartsAt.ToInstant() - other.EndsAt.ToInstant());
                if (apart <= Duration.FromHours(1) || (other.IsHard && edit.Now.IsHard))
                    return false;
                var together = Math.Round((other.DurationSeconds + edit.Now.DurationSeconds) / 60) >= 0.95 * _week.Plan.Limits.LongRideHours * 60;
                if (together && !new[] { other, edit.Now }.Any(r => r.LongEnough || r.Kind == RideKind.Long))
                    return false;
            }
            if (!HasRoom(edit, day))
                return false;
        }
        return true;
    }

    private bool HasRoom(Edit edit, List<RideFigures> day)
    {
        var minutes = day.Sum(r => Math.Round(r.DurationSeconds / 60));
        var most = SameWeekday(edit.To).Max(d => Math.Round(d.Rides.Sum(r => r.DurationSeconds) / 60));
        if (edit.To != edit.Was.Date && edit.Now!.DurationSeconds >= 7200 && day.Exists(r => r.IsHard && r.File != edit.Was.File))
            return false;
        if (_week.Plan.Rider.MinutesFree is { } free)
            return free.ContainsKey(edit.To.DayOfWeek) ? minutes <= free[edit.To.DayOfWeek] : minutes <= 0;
        if (edit.Kind == ChangeKind.RideLong)
            return edit.Now!.DurationSeconds <= 1.5 * edit.Was.DurationSeconds || minutes <= most;
        return edit.Kind == ChangeKind.Lengthen || edit.Now!.DurationSeconds < 7200 || minutes <= most;
    }

    private ImmutableArray<Finding> After(Edit[] edits)
    {
        var then = Then(edits);
        var days = _week.Week.Days.Select(d => DayFacts.Build(d.Date, then.Where(r => r.Date == d.Date), d.OtherSeconds, _week.Plan.Limits)).ToImmutableArray();
        var changed = WeekFacts.Build(days, _week.Week.LoadBefore, _week.Week.FirstRideOn, _week.Week.Exception, _week.Week.DaysThatCount);
        return RuleBook.Standard.Judge(new WeekUnderReview(changed, _week.Past, _week.Plan));
    }

    private bool HasLongRide(Edit[] edits) => After(edits).Single(f => f.Rule == "long-ride").Verdict is Verdict.Kept or Verdict.Watch;

    private List<string> KeepsOf(Edit[] edits)
    {
        var after = After(edits);
        var pairs = _before.Zip(after).ToList();
        return pairs.Exists(p => Array.IndexOf(BestToWorst, p.Second.Verdict) > Array.IndexOf(BestToWorst, p.First.Verdict))
            ? []
            : [.. pairs.Where(p => p.First.Verdict == Verdict.Broken && p.Second.Verdict == Verdict.Kept).Select(p => p.First.Rule).Where(r => Watched.Contains(r) || r == _lead)];
    }

    private int KeySessions(Edit[] touched)
    {
        var left = _rides.Where(r => touched.All(e => e.Was.File != r.File)).ToList();
        return Math.Min(2, left.Where(r => r.Kind == RideKind.High).Select(r => r.Date).Distinct().Count())
            + (left.Exists(r => (r.Kind == RideKind.Long || r.LongEnough) && !touched.Any(e => e.Was.Date != r.Date && e.Now is { IsHard: true } && e.To == r.Date)) ? 1 : 0);
    }

    private static double Cost(Edit edit) =>
        edit.To != edit.Was.Date ? StressOf(edit.Was) : edit.Now is { } now ? Math.Abs(StressOf(now) - StressOf(edit.Was)) : StressOf(edit.Was);

    private static double StressOf(RideFigures ride) => ride.Stress ?? ride.DurationSeconds / 36 * 0.65 * 0.65;

    private sealed record Edit(ChangeKind Kind, RideFigures Was, RideFigures? Now, LocalDate To);
}
