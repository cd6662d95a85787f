using System.Collections.Immutable;
using NodaTime;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Units;

namespace RideAudit.Rules;

/// <summary>Days differ: hard ones stand out from easy ones.</summary>
internal sealed class Monotony : Rule<Monotony.Reading>
{
    public override string Id => "monotony";

    public override string Name => "Monotony";

    public override string Effect(Finding finding, LocalDate? riddenOn) => "made the days more alike";

    public override Standing Standing { get; } = new() { Rank = 150, Protects = true };

    public override Evidence Evidence => Evidence.PublishedStudy;

    public override string Source =>
        "Foster 1998, Med Sci Sports Exerc 30:1164 (daily mean over standard deviation; thresholds are individual there); the limits 1.5 and 2.0 from memory";

    public override string? SourceInShort => "Foster 1998 (from memory)";

    public override ImmutableArray<string> LimitNames =>
        ["monotony_watch", "monotony_broken", "monotony_least_stress", "stress_unknown_share_at_most"];

    protected override Needs Needs => Needs.Rides | Needs.FinishedWeek | Needs.NoEvent;

    protected override Basis Basis => Basis.Stress;

    public override string Ask(PlanInForce plan) =>
        $"Days differ: the mean daily stress is no more than {Shown.Number(plan.Limits.MonotonyWatch, 1)} times the spread of the seven days.";

    protected override Look Read(JudgedWeek week)
    {
        if (Close.Below(week.Week.Stress.To(0), week.Limits.MonotonyLeastStress))
            return NotJudged($"it needs {Shown.Points(week.Limits.MonotonyLeastStress)} of stress in the week");
        if (week.Week.Monotony is not { } monotony)
            return NotJudged("all seven days held the same stress, so the ratio has no value; days could not be more alike");
        return As(VerdictOf(monotony, week.Limits), new Reading(monotony, week.Week.Strain));
    }

    protected override RuleWords Tell(Reading reading, JudgedWeek week, Verdict verdict)
    {
        var alike = verdict == Verdict.Kept ? "days differed enough" : "days were much alike";
        return new RuleWords
        {
            Sentence = $"{Shown.Capital(alike)}: their mean stress was {Shown.Number(reading.Monotony, 1)} times its spread.",
            WouldHaveKept = Different(week),
            Advice = "Let hard days and easy days differ more.",
            Headline = "every day much like the last",
            Held = $"monotony {Shown.Number(reading.Monotony, 1)}",
            Figure = Shown.Number(reading.Monotony, 1),
            Occurrences = verdict == Verdict.Kept ? [] : [Describe(reading, VerdictOf(reading.Monotony, week.Limits))],
        };
    }

    /// <summary>As many of the easiest days off as it takes; where that leaves too little riding, their riding on the hardest day. Judged before it is said.</summary>
    private string Different(JudgedWeek week)
    {
        int[] byStress = [.. Enumerable.Range(0, 7).Where(day => week.Week.Days[day].Stress > 0).OrderBy(day => week.Week.Days[day].Stress)];
        for (var count = 1; count < byStress.Length && !week.AsksForMore; count++)
        {
            if (Keeps(week, byStress[..count], byStress[^1], moved: false))
                return $"The {(count == 1 ? "easiest day" : $"{Shown.InWords(count)} easiest days")} off, beside the same hard ones.";
        }
        for (var count = 1; count < byStress.Length; count++)
        {
            if (Keeps(week, byStress[..count], byStress[^1], moved: true))
                return $"The riding of the {(count == 1 ? "easiest day" : $"{Shown.InWords(count)} easiest days")} on the hardest one instead.";
        }
        return "Easy days and hard days that differ more.";
    }

    private bool Keeps(JudgedWeek week, int[] off, int hardest, bool moved)
    {
        var days = week.Week.Days.ToBuilder();
        foreach (var day in off)
        {
            if (moved)
                days[hardest] = days[hardest] with { Stress = days[hardest].Stress + days[day].Stress };
            days[day] = days[day] with { Stress = 0 };
        }
        return Read(week.With(days.MoveToImmutable())).Verdict == Verdict.Kept;
    }

    private static Verdict VerdictOf(double monotony, Limits limits) =>
        Close.Above(monotony.To(1), limits.MonotonyBroken) ? Verdict.Broken
        : Close.Above(monotony.To(1), limits.MonotonyWatch) ? Verdict.Watch
        : Verdict.Kept;

    private static Occurrence Describe(Reading reading, Verdict verdict) => new()
    {
        Verdict = verdict,
        Numbers =
        [
            NamedNumber.Of("monotony", reading.Monotony, 2, v => $"monotony {Shown.Number(v, 2)}"),
            NamedNumber.Of("strain_points", reading.Strain, 0, v => $"strain {Shown.Points(v)}"),
        ],
    };

    /// <summary>What it reads.</summary>
    /// <param name="Monotony">Mean daily stress over its spread.</param>
    /// <param name="Strain">The week's stress times that, points.</param>
    internal readonly record struct Reading(double Monotony, double? Strain);
}
