using RideAudit.Formatting;

namespace RideAudit.Rules;

/// <summary>A rule that reads typed values of a week, judges them, and puts the same values in words.</summary>
/// <remarks>Here is what all rules share: when a rule cannot be judged, how far a verdict may go, and how a finding is put together.</remarks>
/// <typeparam name="TReading">What it read, unrounded.</typeparam>
internal abstract class Rule<TReading> : Rule
    where TReading : struct
{
    private const string UnratedReason = "a ride without power or heart rate to rate it could change the verdict";

    /// <summary>What a week must be to be judged at all.</summary>
    protected abstract Needs Needs { get; }

    /// <summary>What it rests on.</summary>
    protected virtual Basis Basis => Basis.Time;

    /// <summary>How many days before the week it looks at.</summary>
    protected virtual int DaysBefore => 0;

    /// <summary>A ride that nothing could rate may change it through its kind.</summary>
    protected virtual bool UnratedMatters => false;

    public sealed override Call Decide(JudgedWeek week) => Settle(week, out _);

    public sealed override Finding Judge(JudgedWeek week)
    {
        var call = Settle(week, out var reading);
        var aside = week.SetAside(Id);
        var words = call.Verdict != Verdict.NotJudged ? Tell(reading, week, call.Verdict)
            : new RuleWords { Sentence = Shown.Sentence(aside is null ? $"Not judged: {call.Reason}" : call.Reason!) };
        return new Finding
        {
            Rule = Id,
            Name = Name,
            Verdict = call.Verdict,
            Sentence = call.Softened ? words.Sentence + " The threshold power is an estimate, so this is no more than worth a look." : words.Sentence,
            WouldHaveKept = call.IsWanting ? words.WouldHaveKept : null,
            Reason = call.Reason,
            SetAside = aside,
            Limits = LimitsOf(week.Plan),
            Occurrences = call.Softened ? [.. words.Occurrences.Select(o => o with { Verdict = Soften(o.Verdict) })] : words.Occurrences,
            Evidence = Evidence,
            Source = Source,
            SourceInShort = SourceInShort,
            Advice = call.IsWanting ? words.Advice : null,
            Headline = call.IsWanting ? words.Headline : null,
            Held = call.Verdict == Verdict.Kept ? words.Held : null,
            Figure = call.Verdict == Verdict.Kept ? words.Figure : null,
            Standing = words.Leads ? Standing with { Rank = Standing.FirstOfWhatWasMissed } : Standing,
            Spans = [.. SpansOf(reading, week, call.Verdict).Select(s => call.Softened ? s with { Verdict = Soften(s.Verdict) } : s)],
        };
    }

    /// <summary>Reads and judges a week that meets the rule's needs.</summary>
    protected abstract Look Read(JudgedWeek week);

    /// <summary>Puts what was read in words.</summary>
    /// <param name="reading">What <see cref="Read"/> read.</param>
    /// <param name="week">The week it was read of.</param>
    /// <param name="verdict">What it came to, softened or not; never <see cref="Verdict.NotJudged"/>.</param>
    protected abstract RuleWords Tell(TReading reading, JudgedWeek week, Verdict verdict);

    /// <summary>Spans between hard rides that it looks at; most rules look at none.</summary>
    /// <param name="reading">What was read; nothing when the week is not judged.</param>
    protected virtual IEnumerable<HardSpan> SpansOf(TReading reading, JudgedWeek week, Verdict verdict) => [];

    protected virtual Trust TrustIn(JudgedWeek week) => week.TrustIn(Basis, DaysBefore);

    protected static Look As(Verdict verdict, TReading reading) => new(verdict, reading, null);

    protected static Look NotJudged(string reason) => new(Verdict.NotJudged, default, reason);

    protected static Look Unrated() => NotJudged("riding without power or heart rate to rate it could change the verdict");

    private Call Settle(JudgedWeek week, out TReading reading)
    {
        reading = default;
        if (WhyNot(week) is { } reason)
            return new Call(Verdict.NotJudged, reason);
        var trust = TrustIn(week);
        if (trust == Trust.Thin)
            return new Call(Verdict.NotJudged, "the threshold power is estimated from fewer than six rides with power over 14 days");
        if (Basis.HasFlag(Basis.Stress) && week.StressIsPatchy(DaysBefore))
            return new Call(Verdict.NotJudged, "too many hours have no known stress");
        var look = Read(week);
        if (UnratedMatters && week.HasUnrated(DaysBefore > 0) && Read(week.Easiest).Verdict != Read(week.Hardest).Verdict)
            return new Call(Verdict.NotJudged, UnratedReason);
        reading = look.Reading;
        return look.Verdict == Verdict.Broken && trust == Trust.Estimate
            ? new Call(Verdict.Watch, Softened: true)
            : new Call(look.Verdict, look.Reason);
    }

    private string? WhyNot(JudgedWeek week)
    {
        if (week.SetAside(Id) is { } aside)
            return $"set aside until {Shown.Date(aside.Until)}: {aside.Why}";
        if (Needs.HasFlag(Needs.FinishedWeek) && !week.Week.Finished)
            return "the week is not over";
        if ((Needs & (Needs.NoAway | Needs.NotIll)) != 0 && week.Exceptions.Ill)
            return "the rider was ill";
        if (Needs.HasFlag(Needs.NoEvent) && week.Exceptions.Event)
            return "the week holds an event";
        if (Needs.HasFlag(Needs.NoAway) && week.Exceptions.Away)
            return "the rider was away";
        if (Needs.HasFlag(Needs.NotJustBack) && week.JustBack)
            return "the rider has just come back, and less riding is right";
        if (Needs.HasFlag(Needs.NoLighter) && week.Exceptions.Lighter)
            return "the week was planned lighter";
        if (Needs.HasFlag(Needs.Rides) && week.Week.RideCount == 0)
            return "there was no ride this week";
        return Needs.HasFlag(Needs.Tier) && week.Plan.Tier is null ? "there are no planned hours and no weeks before to take them from" : null;
    }

    private static Verdict Soften(Verdict verdict) => verdict == Verdict.Broken ? Verdict.Watch : verdict;

    /// <summary>What came of reading a week.</summary>
    /// <param name="Reading">What it rests on; nothing when it is not judged.</param>
    /// <param name="Reason">Why it is not judged; null when it is.</param>
    protected readonly record struct Look(Verdict Verdict, TReading Reading, string? Reason);
}
