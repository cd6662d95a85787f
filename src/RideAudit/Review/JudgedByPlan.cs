using System.Collections.Immutable;
using NodaTime;
using RideAudit.Figures;
using RideAudit.Held;
using RideAudit.Plan.Table;
using RideAudit.Rules;
using RideAudit.Sessions;
using RideAudit.Weeks;

namespace RideAudit.Review;

/// <summary>Says whose a broken rule is: the plan’s, or a change’s that the rider made to it.</summary>
/// <remarks>
/// The plan is ridden on paper and judged by the same rules. What it keeps and the ridden week does not is laid to each change
/// that alone would have kept it, had it not been made.
/// </remarks>
internal sealed class JudgedByPlan
{
    private readonly WeekUnderReview _review;
    private readonly Background _background;
    private readonly Rule[] _rules;
    private readonly List<(Rule Rule, Verdict Ridden)> _lost = [];

    /// <summary>Holds a week’s findings against its plan.</summary>
    /// <param name="review">The week as ridden.</param>
    /// <param name="book">The rules.</param>
    /// <param name="sessions">The week’s rows of the plan tables.</param>
    /// <param name="names">The sessions that rows may name.</param>
    public JudgedByPlan(WeekUnderReview review, RuleBook book, ImmutableArray<PlannedSession> sessions, SessionBook names)
    {
        _review = review;
        _background = new Background(review);
        // What rides have shown of the rider's threshold no plan has shown.
        _rules = [.. book.Rules.Where(r => r is not ThresholdFresh)];
        var ridden = new JudgedWeek(review.Week, _background);
        var planned = new JudgedWeek(OnPaper(sessions, names), _background);
        foreach (var rule in _rules)
        {
            var (was, meant) = (rule.Decide(ridden).Verdict, rule.Decide(planned).Verdict);
            if (was is Verdict.Broken or Verdict.Watch && Rank(meant) < Rank(was))
                _lost.Add((rule, was));
        }
        Breaks = [.. _rules.Where(r => r.Decide(planned).Verdict == Verdict.Broken).Select(r => r.Judge(planned))];
    }

    /// <summary>What the rules find broken in the week ridden exactly as planned.</summary>
    public ImmutableArray<Finding> Breaks { get; }

    /// <summary>What a change did to the rules that it alone put at risk, in the order of the method; empty where it is as good as the plan.</summary>
    /// <param name="line">What became of a session.</param>
    /// <param name="names">The sessions that rows may name.</param>
    public ImmutableArray<Loss> Against(HeldLine line, SessionBook names)
    {
        if (_lost.Count == 0 || Undone(line, names) is not { } undone)
            return [];
        var without = new JudgedWeek(undone, _background);
        var ridden = new JudgedWeek(_review.Week, _background);
        return [.. _lost.Where(l => Rank(l.Rule.Decide(without).Verdict) < Rank(l.Ridden)).Select(l => new Loss(l.Rule.Id, l.Rule.Effect(l.Rule.Judge(ridden), line.RiddenOn)))];
    }

    private WeekFacts OnPaper(ImmutableArray<PlannedSession> sessions, SessionBook names)
    {
        var byDay = sessions.ToLookup(s => s.Date, s => PaperRide.Of(s, names, _review.Plan.Rider, _review.Plan.Limits));
        return WeekFacts.Build(
            [.. _review.Week.Days.Select(d => DayFacts.Build(d.Date, byDay[d.Date].OfType<RideFigures>(), d.OtherSeconds, _review.Plan.Limits))],
            _review.Week.LoadBefore, _review.Week.FirstRideOn, _review.Week.Exception);
    }

    /// <summary>The ridden week without one change; null where there was none.</summary>
    private WeekFacts? Undone(HeldLine line, SessionBook names) => line switch
    {
        { Planned: null } => Week(line.Rides, []),
        { Outcomes: [HeldOutcome.Done] } or { Planned.Kind: Plan.PlannedKind.Rest } => null,
        { Outcomes: [HeldOutcome.Moved] } => Week(line.Rides, line.Rides.Select(r => On(r, line.Planned.Date))),
        _ => Week(line.Rides, Paper(line.Planned, line.Rides, names)),
    };

    private IEnumerable<RideFigures> Paper(PlannedSession planned, ImmutableArray<RideFigures> ridden, SessionBook names)
    {
        if (PaperRide.Of(planned, names, _review.Plan.Rider, _review.Plan.Limits) is not { } ride)
            return [];
        // At the clock time it was ridden at, so that spans between rides compare.
        return [ridden.IsEmpty ? ride : ride with { StartsAt = On(ridden[0], planned.Date).StartsAt }];
    }

    private WeekFacts Week(ImmutableArray<RideFigures> without, IEnumerable<RideFigures> with)
    {
        var added = with.ToLookup(r => r.Date);
        return WeekFacts.Build(
            [.. _review.Week.Days.Select(d => DayFacts.Build(d.Date, d.Rides.Where(r => !without.Contains(r)).Concat(added[d.Date]), d.OtherSeconds, _review.Plan.Limits))],
            _review.Week.LoadBefore, _review.Week.FirstRideOn, _review.Week.Exception, _review.Week.DaysThatCount);
    }

    private static RideFigures On(RideFigures ride, LocalDate date) => ride with { StartsAt = ride.StartsAt.With((LocalDate _) => date) };

    private static int Rank(Verdict verdict) => verdict switch
    {
        Verdict.Kept => 0,
        Verdict.Watch => 1,
        // What nobody could judge was not kept, and nobody lost it.
        _ => 2,
    };

    /// <summary>A rule that a change put at risk.</summary>
    /// <param name="Rule">Its id.</param>
    /// <param name="Effect">What the change did, in the rule's words.</param>
    internal readonly record struct Loss(string Rule, string Effect);
}
