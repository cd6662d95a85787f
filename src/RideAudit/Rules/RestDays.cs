using System.Collections.Immutable;
using RideAudit.Plan;
using RideAudit.Weeks;

namespace RideAudit.Rules;

/// <summary>Enough days of rest or recovery.</summary>
internal sealed class RestDays : Rule
{
    public override string Id => "rest-days";

    public override Evidence Evidence => Evidence.CommonPractice;

    public override string Source => NoSource;

    public override ImmutableArray<string> LimitNames =>
        ["rest_days_at_least", "short_day_min", "short_day_low_share", "recovery_min", "other_activity_min"];

    protected override Needs Needs => Needs.Rides | Needs.Tier | Needs.FinishedWeek;

    protected override Basis Basis => Basis.Kinds;

    protected override bool UnratedMatters => true;

    public override string Ask(PlanInForce plan) =>
        $"At least {Say.Count(plan.Limits.RestDaysAtLeast, "day")} of rest or recovery: no ride, or a short easy one.";

    protected override Call Look(JudgedWeek week) => Count(week.Week) < week.Limits.RestDaysAtLeast ? Call.Broken : Call.Kept;

    protected override Account Tell(JudgedWeek week, Verdict verdict)
    {
        var rest = Count(week.Week);
        var asked = week.Limits.RestDaysAtLeast;
        var sentence = $"{Say.Capital(Say.Count(rest, "day"))} of rest or recovery; the plan asks for at least {Say.Number(asked)}.";
        if (verdict == Verdict.Kept)
            return Account.Of(sentence);
        return Account.Of(sentence, $"{Say.Capital(Say.Count(asked - rest, "more day"))} off, or with nothing but a short easy ride.", new Occurrence
        {
            Verdict = Verdict.Broken,
            Dates = [.. week.Week.Days.Where(d => !d.IsRestOrRecovery).Select(d => d.Date)],
            Numbers = [new("rest_or_recovery_days", rest)],
        });
    }

    private static int Count(WeekFacts week)
    {
        var count = 0;
        foreach (var day in week.Days)
            count += day.IsRestOrRecovery ? 1 : 0;
        return count;
    }
}
