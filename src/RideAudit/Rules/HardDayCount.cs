using System.Collections.Immutable;
using RideAudit.Plan;
using RideAudit.Weeks;

namespace RideAudit.Rules;

/// <summary>No more hard days than the tier and the rider's experience bear.</summary>
internal sealed class HardDayCount : Rule
{
    public override string Id => "hard-day-count";

    public override Evidence Evidence => Evidence.CommonPractice;

    public override string Source => NoSource;

    public override ImmutableArray<string> LimitNames => ["high_days_at_most", "threshold_days_on_top"];

    protected override Needs Needs => Needs.Rides | Needs.Tier | Needs.NoEvent;

    protected override Basis Basis => Basis.Kinds;

    protected override bool UnratedMatters => true;

    public override string Ask(PlanInForce plan) => Say.Capital(Allowed(plan.Limits)) + ".";

    protected override Call Look(JudgedWeek week)
    {
        var (high, threshold) = Days(week.Week);
        var limits = week.Limits;
        return high > limits.HighDaysAtMost || high + threshold > limits.HighDaysAtMost + limits.ThresholdDaysOnTop ? Call.Broken : Call.Kept;
    }

    protected override Account Tell(JudgedWeek week, Verdict verdict)
    {
        var (high, threshold) = Days(week.Week);
        var limits = week.Limits;
        var sentence = $"{Say.Capital(Say.Count(high, "high day"))} and {Say.Count(threshold, "threshold day")}; the plan has {Allowed(limits)}.";
        if (verdict == Verdict.Kept)
            return Account.Of(sentence);
        var tooMany = high + threshold - limits.HighDaysAtMost - limits.ThresholdDaysOnTop;
        var easier = tooMany > 0
            ? $"{Say.Capital(Say.Count(tooMany, "hard day"))} fewer, ridden easy or left out."
            : $"{Say.Capital(Say.Count(high - limits.HighDaysAtMost, "high day"))} fewer; around threshold would have been enough.";
        var hard = week.Week.Days.Where(d => d.IsHard).ToList();
        return Account.Of(sentence, easier, new Occurrence
        {
            Verdict = Verdict.Broken,
            Dates = [.. hard.Select(d => d.Date)],
            Rides = [.. hard.SelectMany(d => d.Rides).Where(r => r.IsHard).Select(r => r.File)],
            Numbers = [new("high_days", high), new("threshold_days", threshold)],
        });
    }

    private static (int High, int Threshold) Days(WeekFacts week)
    {
        int high = 0, threshold = 0;
        foreach (var day in week.Days)
        {
            high += day.Kind == DayKind.High ? 1 : 0;
            threshold += day.Kind == DayKind.Threshold ? 1 : 0;
        }
        return (high, threshold);
    }

    private static string Allowed(Limits limits) => limits.HighDaysAtMost == 0
        ? $"no high day and at most {Say.Count(limits.ThresholdDaysOnTop, "threshold day")}"
        : $"at most {Say.Count(limits.HighDaysAtMost, "high day")} and {Say.Count(limits.HighDaysAtMost + limits.ThresholdDaysOnTop, "hard day")} in all";
}
