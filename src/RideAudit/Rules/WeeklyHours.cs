using System.Collections.Immutable;
using RideAudit.Formatting;
using RideAudit.Plan;

namespace RideAudit.Rules;

/// <summary>The hours that were planned, neither far fewer nor far more.</summary>
internal sealed class WeeklyHours : Rule<WeeklyHours.Reading>
{
    private static readonly WeeklyHours Own = new();

    public override string Id => "weekly-hours";

    public override string Name => "Weekly hours";

    public override Standing Standing { get; } = new() { Rank = 160, Heads = Trend.Hours };

    public override Evidence Evidence => Evidence.CommonPractice;

    public override string Source => NoSource;

    public override ImmutableArray<string> LimitNames =>
        ["hours_watch_margin", "hours_broken_margin", "lighter_week_factor", "planned_hours_weeks"];

    protected override Needs Needs => Needs.Tier | Needs.NoAway;

    public override string Ask(PlanInForce plan) => plan.PlannedHours is { } hours
        ? $"Within {Shown.Share(plan.Limits.HoursWatchMargin)} of {Planned(hours, plan, lighter: false)}."
        : "Hours near those planned.";

    /// <summary>Whether the week's hours are off the plan.</summary>
    public static bool IsOff(JudgedWeek week) => Own.Decide(week).IsWanting;

    protected override Look Read(JudgedWeek week)
    {
        if (week.PlannedHours is not { } planned)
            return NotJudged("there are no planned hours");
        var reading = new Reading(week.Week.Hours, planned);
        var off = reading.ShareOfPlan - 1;
        var verdict = VerdictOf(Math.Abs(off), week.Limits);
        if (off > 0 && verdict != Verdict.Kept)
            return week.Exceptions.Event ? NotJudged("the week holds an event, and hours above plan are part of it") : As(verdict, reading);
        if (!week.Week.Finished)
            return NotJudged("the week is not over, and its hours are not above plan so far");
        return As(week.Week.RideCount == 0 ? Verdict.Watch : verdict, reading);
    }

    protected override RuleWords Tell(Reading reading, JudgedWeek week, Verdict verdict)
    {
        var plan = Planned(reading.Planned, week.Plan, week.Exceptions.Lighter);
        var fewer = reading.Hours < reading.Planned;
        return new RuleWords
        {
            Sentence = week.Week.RideCount == 0
                ? $"No ride this week, against {plan}."
                : $"{Shown.Hours(reading.Hours)} ridden, {Shown.Share(reading.ShareOfPlan)} of {plan}.",
            WouldHaveKept = fewer
                ? $"{Shown.Hours(reading.Planned * (1 - week.Limits.HoursWatchMargin) - reading.Hours)} more."
                : $"{Shown.Hours(reading.Hours - reading.Planned * (1 + week.Limits.HoursWatchMargin))} less.",
            Advice = week.Plan.PlannedHoursFromHistory ? "Ride nearer the usual hours."
                : fewer ? "Ride the hours that are planned." : "Ride no more than the planned hours.",
            Headline = week.Plan.PlannedHoursFromHistory
                ? $"{Shown.Hours(reading.Hours)} against a usual {Shown.Hours(reading.Planned)}"
                : $"{Shown.Hours(reading.Hours)} of {Shown.Hours(reading.Planned)} planned",
            Held = $"{Shown.Hours(reading.Hours)} ridden",
            Leads = verdict == Verdict.Broken && reading.ShareOfPlan < 0.5,
            Occurrences = verdict == Verdict.Kept ? [] : [Describe(reading, verdict)],
        };
    }

    private static Occurrence Describe(Reading reading, Verdict verdict) => new()
    {
        Verdict = verdict,
        Numbers =
        [
            NamedNumber.Of("hours", reading.Hours, 2, v => $"{Shown.Hours(v)} ridden"),
            NamedNumber.Of("planned_hours", reading.Planned, 2, v => $"{Shown.Hours(v)} planned"),
            NamedNumber.Of("share_of_plan", reading.ShareOfPlan, 3, v => $"{Shown.Share(v, 1)} of plan"),
        ],
    };

    private static Verdict VerdictOf(double off, Limits limits) =>
        Close.Above(off, limits.HoursBrokenMargin) ? Verdict.Broken
        : Close.Above(off, limits.HoursWatchMargin) ? Verdict.Watch
        : Verdict.Kept;

    private static string Planned(double hours, PlanInForce plan, bool lighter)
    {
        var factor = lighter ? $", {Shown.Share(plan.Limits.LighterWeekFactor)} of" : ",";
        return !plan.PlannedHoursFromHistory
            ? $"the {Shown.Hours(hours)} planned{(lighter ? " for a lighter week" : "")}"
            : plan.HistoryWeeks == 1
                ? $"{Shown.Hours(hours)}{factor} the hours of the week before"
                : $"{Shown.Hours(hours)}{factor} the mean of {Shown.Count(plan.HistoryWeeks, "week")} before";
    }

    /// <summary>What it reads, h.</summary>
    /// <param name="Hours">Ridden.</param>
    /// <param name="Planned">Planned, above 0.</param>
    internal readonly record struct Reading(double Hours, double Planned)
    {
        public double ShareOfPlan => Hours / Planned;
    }
}
