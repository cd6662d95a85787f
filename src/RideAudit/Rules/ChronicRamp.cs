using System.Collections.Immutable;
using RideAudit.Plan;
using RideAudit.Units;

namespace RideAudit.Rules;

/// <summary>Chronic load rises no faster than it can be borne.</summary>
internal sealed class ChronicRamp : Rule
{
    public override string Id => "chronic-ramp";

    public override Evidence Evidence => Evidence.CommonPractice;

    public override string Source =>
        "common practice for the limits; the load is the time-constant form of Banister, Calvert, Savage and Bach 1975, Aust J Sports Med 7:57 (from memory)";

    public override ImmutableArray<string> LimitNames => ["ramp_watch", "ramp_broken", "stress_unknown_share_at_most"];

    protected override Needs Needs => Needs.Rides | Needs.FinishedWeek | Needs.NoEvent;

    protected override Basis Basis => Basis.Stress;

    protected override int DaysBefore => 42;

    public override string Ask(PlanInForce plan) =>
        $"Chronic load, the mean daily stress of about six weeks, rises by no more than {Say.Decimal(plan.Limits.RampWatch, 0)} points in a week.";

    protected override Call Look(JudgedWeek week)
    {
        if (week.Week.SettlingIn)
            return Call.NotJudged("chronic load needs 42 days of riding to settle");
        var ramp = week.Week.Ramp;
        return Close.Above(ramp, week.Limits.RampBroken) ? Call.Broken
            : Close.Above(ramp, week.Limits.RampWatch) ? Call.Watch
            : Call.Kept;
    }

    protected override Account Tell(JudgedWeek week, Verdict verdict)
    {
        var ramp = week.Week.Ramp;
        var change = ramp >= 0 ? $"rose by {Say.Decimal(ramp)}" : $"fell by {Say.Decimal(-ramp)}";
        var sentence = $"Chronic load {change} points, from {Say.Decimal(week.Week.LoadBefore.Chronic)} to {Say.Decimal(week.Week.LoadAfter.Chronic)}; "
            + $"up to {Say.Decimal(week.Limits.RampWatch, 0)} in a week is usual.";
        return verdict == Verdict.Kept ? Account.Of(sentence) : Account.Of(sentence, "Less stress in the week: fewer hours, or easier ones.", new Occurrence
        {
            Verdict = Close.Above(ramp, week.Limits.RampBroken) ? Verdict.Broken : Verdict.Watch,
            Numbers =
            [
                Numbered.Of("ramp_points", ramp, 1),
                Numbered.Of("chronic_load_before_points", week.Week.LoadBefore.Chronic, 1),
                Numbered.Of("chronic_load_after_points", week.Week.LoadAfter.Chronic, 1),
            ],
        });
    }
}
