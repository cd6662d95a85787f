using System.Collections.Immutable;
using RideAudit.Plan;
using RideAudit.Units;

namespace RideAudit.Rules;

/// <summary>The hours that were planned, neither far fewer nor far more.</summary>
internal sealed class WeeklyHours : Rule
{
    public override string Id => "weekly-hours";

    public override Evidence Evidence => Evidence.CommonPractice;

    public override string Source => NoSource;

    public override ImmutableArray<string> LimitNames =>
        ["hours_watch_margin", "hours_broken_margin", "lighter_week_factor", "planned_hours_weeks"];

    protected override Needs Needs => Needs.Tier | Needs.NoAway;

    public override string Ask(PlanInForce plan) => plan.PlannedHours is { } hours
        ? $"Within {Say.Percent(plan.Limits.HoursWatchMargin)} of {Planned(hours, plan, lighter: false)}."
        : "Hours near those planned.";

    protected override Call Look(JudgedWeek week)
    {
        if (week.PlannedHours is not { } planned)
            return Call.NotJudged("there are no planned hours");
        var off = week.Week.Hours / planned - 1;
        var verdict = VerdictOf(Math.Abs(off), week.Limits);
        if (off > 0 && verdict != Verdict.Kept)
            return week.Exceptions.Event ? Call.NotJudged("the week holds an event, and hours above plan are part of it") : new Call(verdict);
        if (!week.Week.Finished)
            return Call.NotJudged("the week is not over, and its hours are not above plan so far");
        return week.Week.RideCount == 0 ? Call.Watch : new Call(verdict);
    }

    protected override Account Tell(JudgedWeek week, Verdict verdict)
    {
        var planned = week.PlannedHours ?? 0;
        var hours = week.Week.Hours;
        var plan = Planned(planned, week.Plan, week.Exceptions.Lighter);
        var sentence = week.Week.RideCount == 0
            ? $"No ride this week, against {plan}."
            : $"{Say.Hours(hours)} ridden, {Say.Percent(hours / planned)} of {plan}.";
        if (verdict == Verdict.Kept)
            return Account.Of(sentence);
        var margin = week.Limits.HoursWatchMargin;
        var kept = hours < planned
            ? $"{Say.Hours(planned * (1 - margin) - hours)} more."
            : $"{Say.Hours(hours - planned * (1 + margin))} less.";
        return Account.Of(sentence, kept, new Occurrence
        {
            Verdict = verdict,
            Numbers = [Numbered.Of("hours", hours, 2), Numbered.Of("planned_hours", planned, 2), Numbered.Of("share_of_plan", hours / planned, 3)],
        });
    }

    private static Verdict VerdictOf(double off, Limits limits) =>
        Close.Above(off, limits.HoursBrokenMargin) ? Verdict.Broken
        : Close.Above(off, limits.HoursWatchMargin) ? Verdict.Watch
        : Verdict.Kept;

    private static string Planned(double hours, PlanInForce plan, bool lighter)
    {
        var factor = lighter ? $", {Say.Percent(plan.Limits.LighterWeekFactor)} of" : ",";
        return !plan.PlannedHoursFromHistory
            ? $"the {Say.Hours(hours)} planned{(lighter ? " for a lighter week" : "")}"
            : plan.HistoryWeeks == 1
                ? $"{Say.Hours(hours)}{factor} the hours of the week before"
                : $"{Say.Hours(hours)}{factor} the mean of {Say.Number(plan.HistoryWeeks)} weeks before";
    }
}
