using System.Collections.Immutable;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Weeks;

namespace RideAudit.Rules;

/// <summary>No more hard days than the tier and the rider's experience bear.</summary>
internal sealed class HardDayCount : Rule<HardDayCount.Reading>
{
    public override string Id => "hard-day-count";

    public override string Name => "Hard day count";

    public override string ShortName => "hard-day";

    public override Standing Standing { get; } = new() { Rank = 30, Group = RuleGroup.HardDays, Protects = true };

    public override bool IsChangeSought => true;

    public override Evidence Evidence => Evidence.CommonPractice;

    public override string Source => NoSource;

    public override ImmutableArray<string> LimitNames => ["high_days_at_most", "threshold_days_on_top"];

    protected override Needs Needs => Needs.Rides | Needs.Tier | Needs.NoEvent;

    protected override Basis Basis => Basis.Kinds;

    protected override bool UnratedMatters => true;

    public override string Ask(PlanInForce plan) => Shown.Capital(Allowed(plan.Limits)) + ".";

    protected override Look Read(JudgedWeek week)
    {
        int high = 0, threshold = 0;
        foreach (var day in week.Week.Days)
        {
            high += day.Kind == DayKind.High ? 1 : 0;
            threshold += day.Kind == DayKind.Threshold ? 1 : 0;
        }
        var tooMany = high > week.Limits.HighDaysAtMost || high + threshold > week.Limits.HighDaysAtMost + week.Limits.ThresholdDaysOnTop;
        return As(tooMany ? Verdict.Broken : Verdict.Kept, new Reading(high, threshold));
    }

    protected override RuleWords Tell(Reading reading, JudgedWeek week, Verdict verdict)
    {
        var limits = week.Limits;
        var onTop = limits.ThresholdDaysOnTop > 0 ? $" and {Shown.Count(limits.ThresholdDaysOnTop, "threshold day")}" : "";
        return new RuleWords
        {
            Sentence = $"{Shown.Capital(Shown.Count(reading.High, "high day"))} and {Shown.Count(reading.Threshold, "threshold day")}; the plan has {Allowed(limits)}.",
            WouldHaveKept = Easier(reading, limits),
            Advice = $"Keep to {Shown.Count(limits.HighDaysAtMost, "high day")}{onTop} a week.",
            Headline = Shown.Count(reading.Hard, "hard day"),
            Held = reading.Hard > 0 ? "number of hard days" : null,
            Occurrences = verdict == Verdict.Kept ? [] : [Describe(reading, [.. week.Week.Days.Where(d => d.IsHard)])],
        };
    }

    private static string Easier(Reading reading, Limits limits)
    {
        var tooMany = reading.Hard - limits.HighDaysAtMost - limits.ThresholdDaysOnTop;
        return tooMany > 0
            ? $"{Shown.Capital(Shown.Count(tooMany, "hard day"))} fewer, ridden easy or left out."
            : $"{Shown.Capital(Shown.Count(reading.High - limits.HighDaysAtMost, "high day"))} fewer; around threshold would have been enough.";
    }

    private static Occurrence Describe(Reading reading, DayFacts[] hard) => new()
    {
        Verdict = Verdict.Broken,
        Dates = [.. hard.Select(d => d.Date)],
        Rides = [.. hard.SelectMany(d => d.Rides).Where(r => r.IsHard).Select(r => r.File)],
        Numbers =
        [
            NamedNumber.Of("high_days", reading.High, 0, v => $"{Shown.Tally((int)v, "day")} high"),
            NamedNumber.Of("threshold_days", reading.Threshold, 0, v => $"{Shown.Tally((int)v, "day")} threshold"),
        ],
    };

    private static string Allowed(Limits limits) => limits.HighDaysAtMost == 0
        ? $"no high days and at most {Shown.Count(limits.ThresholdDaysOnTop, "threshold day")}"
        : $"at most {Shown.Count(limits.HighDaysAtMost, "high day")} and {Shown.Count(limits.HighDaysAtMost + limits.ThresholdDaysOnTop, "hard day")} in all";

    /// <summary>What it reads: days.</summary>
    /// <param name="High">High days.</param>
    /// <param name="Threshold">Threshold days.</param>
    internal readonly record struct Reading(int High, int Threshold)
    {
        public int Hard => High + Threshold;
    }
}
