using System.Collections.Immutable;
using NodaTime;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Units;

namespace RideAudit.Rules;

/// <summary>The hours that were planned, neither far fewer nor far more.</summary>
internal sealed class WeeklyHours : Rule<WeeklyHours.Reading>
{
    private static readonly WeeklyHours Own = new();

    public override string Id => "weekly-hours";

    public override string Name => "Weekly hours";

    public override string ShortName => "weekly-hours";

    public override string Effect(Finding finding, LocalDate? riddenOn) => "put the hours off the plan";

    public override Standing Standing { get; } = new() { Rank = 170, Heads = Trend.Hours };

    public override Evidence Evidence => Evidence.CommonPractice;

    public override string Source => NoSource;

    public override ImmutableArray<string> LimitNames =>
        ["hours_watch_margin", "hours_broken_margin", "lighter_week_factor", "planned_hours_weeks"];

    protected override Needs Needs => Needs.Tier | Needs.NoEvent | Needs.NoAway;

    public override string Ask(PlanInForce plan) => (plan.AskedHours ?? plan.PlannedHours) is { } hours
        ? $"Within {Shown.Share(plan.Limits.HoursWatchMargin)} of {Planned(hours, plan, null)}."
        : "Hours near those planned.";

    /// <summary>Whether the week's hours are off the plan.</summary>
    public static bool IsOff(JudgedWeek week) => Own.Decide(week).IsWanting;

    protected override Look Read(JudgedWeek week)
    {
        if (week.PlannedHours is not { } planned)
            return NotJudged("no hours are planned");
        var reading = new Reading(week.Week.Hours, planned);
        var verdict = VerdictOf(reading, week.Limits);
        if (reading.ShareOfPlan > 1 && verdict != Verdict.Kept)
            return As(verdict, reading);
        if (!week.Week.Finished)
            return NotJudged("the week is not over, and its hours are not above plan so far");
        if (verdict != Verdict.Kept && WeeklyGrowth.IsWatched(week))
            return NotJudged("the hours are below plan, but grew as fast as they should");
        if ((week.JustBack || ReturnToRiding.AsksForLess(week)) && verdict != Verdict.Kept)
            return NotJudged("the rider has just come back, and fewer hours are right");
        return As(week.Week.RideCount == 0 ? Verdict.Watch : verdict, reading);
    }

    protected override RuleWords Tell(Reading reading, JudgedWeek week, Verdict verdict)
    {
        var plan = Planned(reading.Planned, week.Plan, week);
        var fewer = reading.Hours < reading.Planned;
        return new RuleWords
        {
            Sentence = week.Week.RideCount == 0
                ? $"No ride this week, against {plan}."
                : $"{Shown.Hours(reading.Hours)} ridden, {Shown.Share(reading.ShareOfPlan)} of {plan}.",
            WouldHaveKept = fewer
                ? $"{Missing((1 - week.Limits.HoursWatchMargin) * reading.Planned - reading.Hours)} more."
                : $"{Missing(reading.Hours - (1 + week.Limits.HoursWatchMargin) * reading.Planned)} less.",
            Advice = week.Plan.PlannedHoursFromHistory ? "Ride nearer the usual hours."
                : fewer ? "Ride the hours that are planned." : "Ride no more than the planned hours.",
            Headline = week.Plan.PlannedHoursFromHistory
                ? $"{Shown.Hours(reading.Hours)} against a usual {Shown.Hours(reading.Planned)}"
                : $"{Shown.Hours(reading.Hours)} of {Shown.Hours(reading.Planned)} planned",
            Held = $"{Shown.Hours(reading.Hours)} ridden",
            Figure = Shown.Hours(reading.Hours),
            Leads = verdict == Verdict.Broken && reading.ShareOfPlan is < 0.5 or > 1.5,
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

    private static Verdict VerdictOf(Reading reading, Limits limits)
    {
        var off = Math.Abs(AsShown.Percent(reading.ShareOfPlan) - 100);
        return Close.Above(off, 100 * limits.HoursBrokenMargin) ? Verdict.Broken
            : Close.Above(off, 100 * limits.HoursWatchMargin) ? Verdict.Watch
            : Verdict.Kept;
    }

    /// <summary>Hours in whole minutes, rounded up, so that what is printed is enough.</summary>
    private static string Missing(double hours) => Shown.Length(60 * Math.Ceiling(60 * hours - Close.Hair));

    private static string Planned(double hours, PlanInForce plan, JudgedWeek? week)
    {
        if (plan.AskedByPlanTable || !plan.PlannedHoursFromHistory)
            return $"the {Shown.Hours(hours)} planned{(week is null ? "" : For(week))}";
        var share = hours / plan.PlannedHours is { } part && AsShown.Percent(part) != 100 ? $", {Shown.Share(part)} of" : ",";
        return plan.HistoryWeeks == 1
            ? $"{Shown.Hours(hours)}{share} the hours of the week before"
            : $"{Shown.Hours(hours)}{share} the mean of {Shown.Count(plan.HistoryWeeks, "week")} before";
    }

    private static string For(JudgedWeek week)
    {
        var away = week.Background.Calendar.DaysOut(week.Week.StartsOn);
        return week.Exceptions.Lighter ? " for a lighter week" : away > 0 ? $" for a week with {Shown.Count(away, "day")} away" : "";
    }

    /// <summary>What it reads, h.</summary>
    /// <param name="Hours">Ridden.</param>
    /// <param name="Planned">Planned, above 0.</param>
    internal readonly record struct Reading(double Hours, double Planned)
    {
        public double ShareOfPlan => Hours / Planned;
    }
}
