using System.Collections.Immutable;
using RideAudit.Plan;
using RideAudit.Units;

namespace RideAudit.Rules;

/// <summary>Days differ: hard ones stand out from easy ones.</summary>
internal sealed class Monotony : Rule
{
    public override string Id => "monotony";

    public override Evidence Evidence => Evidence.PublishedStudy;

    public override string Source =>
        "Foster 1998, Med Sci Sports Exerc 30:1164 (daily mean over standard deviation; thresholds are individual there); the limits 1.5 and 2.0 from memory";

    public override ImmutableArray<string> LimitNames =>
        ["monotony_watch", "monotony_broken", "monotony_least_stress", "stress_unknown_share_at_most"];

    protected override Needs Needs => Needs.Rides | Needs.FinishedWeek;

    protected override Basis Basis => Basis.Stress;

    public override string Ask(PlanInForce plan) =>
        $"Days differ: the mean daily stress is no more than {Say.Decimal(plan.Limits.MonotonyWatch)} times the spread of the seven days.";

    protected override Call Look(JudgedWeek week)
    {
        if (Close.Below(week.Week.Stress, week.Limits.MonotonyLeastStress))
            return Call.NotJudged($"it needs {Say.Points(week.Limits.MonotonyLeastStress)} of stress in the week");
        if (week.Week.Monotony is not { } monotony)
            return Call.NotJudged("all seven days held the same stress, so the ratio has no value; days could not be more alike");
        return Close.Above(monotony, week.Limits.MonotonyBroken) ? Call.Broken
            : Close.Above(monotony, week.Limits.MonotonyWatch) ? Call.Watch
            : Call.Kept;
    }

    protected override Account Tell(JudgedWeek week, Verdict verdict)
    {
        var monotony = week.Week.Monotony ?? 0;
        var alike = verdict == Verdict.Kept ? "days differed enough" : "days were much alike";
        var sentence = $"The mean daily stress was {Say.Decimal(monotony)} times the spread of the seven days: {alike}.";
        return verdict == Verdict.Kept ? Account.Of(sentence) : Account.Of(sentence, "Easier easy days, or a day off, beside the same hard ones.", new Occurrence
        {
            Verdict = Close.Above(monotony, week.Limits.MonotonyBroken) ? Verdict.Broken : Verdict.Watch,
            Numbers = [Numbered.Of("monotony", monotony, 2), Numbered.Of("strain_points", week.Week.Strain, 0)],
        });
    }
}
