using System.Collections.Immutable;
using RideAudit.Plan;

namespace RideAudit.Rules;

/// <summary>What all rules share: when a rule cannot be judged, how far a verdict may go, and how a finding is put together.</summary>
internal abstract class Rule : IRule
{
    public const string NoSource = "common practice, no source";

    public abstract string Id { get; }

    public abstract Evidence Evidence { get; }

    public abstract string Source { get; }

    /// <summary>Names of the limits it uses, as in the rider file.</summary>
    public abstract ImmutableArray<string> LimitNames { get; }

    /// <summary>What a week must be to be judged at all.</summary>
    protected abstract Needs Needs { get; }

    /// <summary>What it rests on.</summary>
    protected virtual Basis Basis => Basis.Time;

    /// <summary>How many days before the week it looks at.</summary>
    protected virtual int DaysBefore => 0;

    /// <summary>A ride that nothing could rate may change it through its kind.</summary>
    protected virtual bool UnratedMatters => false;

    public abstract string Ask(PlanInForce plan);

    public ImmutableArray<NamedNumber> LimitsOf(PlanInForce plan)
    {
        var numbers = ImmutableArray.CreateBuilder<NamedNumber>(LimitNames.Length);
        foreach (var name in LimitNames)
            numbers.Add(new NamedNumber(name, LimitCatalogue.ValueOf(plan.Limits, name)));
        return numbers.MoveToImmutable();
    }

    public Finding Judge(WeekUnderReview week) => Judge(new JudgedWeek(week));

    public Finding Judge(JudgedWeek week)
    {
        var call = Decide(week);
        var account = call.Verdict == Verdict.NotJudged ? Account.Of($"Not judged: {call.Reason}.") : Tell(week, call.Verdict);
        return new Finding
        {
            Rule = Id,
            Verdict = call.Verdict,
            Sentence = call.Softened ? account.Sentence + " The threshold power is an estimate, so this is no more than worth a look." : account.Sentence,
            WouldHaveKept = call.Verdict is Verdict.Watch or Verdict.Broken ? account.WouldHaveKept : null,
            Reason = call.Reason,
            Limits = LimitsOf(week.Plan),
            Occurrences = call.Softened ? [.. account.Occurrences.Select(Soften)] : account.Occurrences,
            Evidence = Evidence,
            Source = Source,
        };
    }

    /// <summary>The verdict without the words: what a search over many weeks calls.</summary>
    public Call Decide(JudgedWeek week)
    {
        if (WhyNot(week) is { } reason)
            return Call.NotJudged(reason);
        var trust = TrustIn(week);
        if (trust == Trust.Thin)
            return Call.NotJudged("the threshold power is estimated from fewer than six rides with power over 14 days");
        if (Basis.HasFlag(Basis.Stress) && week.StressIsPatchy(DaysBefore))
            return Call.NotJudged("too many of the hours it looks at have no known stress");
        var call = Look(week);
        if (UnratedMatters && week.HasUnrated(DaysBefore > 0) && Look(week.Easiest).Verdict != Look(week.Hardest).Verdict)
            return Call.NotJudged("a ride without power or heart rate to rate it could change the verdict");
        return call.Verdict == Verdict.Broken && trust == Trust.Estimate ? Call.Watch with { Softened = true } : call;
    }

    /// <summary>Judges a week that meets the rule's needs.</summary>
    protected abstract Call Look(JudgedWeek week);

    /// <summary>Puts the verdict in words.</summary>
    /// <param name="week">The week.</param>
    /// <param name="verdict">What <see cref="Look"/> came to, softened or not.</param>
    protected abstract Account Tell(JudgedWeek week, Verdict verdict);

    protected virtual Trust TrustIn(JudgedWeek week) => week.TrustIn(Basis, DaysBefore);

    private string? WhyNot(JudgedWeek week)
    {
        if (Needs.HasFlag(Needs.FinishedWeek) && !week.Week.Finished)
            return "the week is not over";
        if (Needs.HasFlag(Needs.NoEvent) && week.Exceptions.Event)
            return "the week holds an event";
        if (Needs.HasFlag(Needs.NoAway) && week.Exceptions.Away)
            return "the rider was away";
        if (Needs.HasFlag(Needs.NoLighter) && week.Exceptions.Lighter)
            return "the week was planned lighter";
        if (Needs.HasFlag(Needs.Rides) && week.Week.RideCount == 0)
            return "there was no ride this week";
        return Needs.HasFlag(Needs.Tier) && week.Plan.Tier is null ? "there are no planned hours and no weeks before to take them from" : null;
    }

    private static Occurrence Soften(Occurrence occurrence) =>
        occurrence.Verdict == Verdict.Broken ? occurrence with { Verdict = Verdict.Watch } : occurrence;
}
