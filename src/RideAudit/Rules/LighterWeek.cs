using System.Collections.Immutable;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Rules;

/// <summary>A lighter week now and then.</summary>
internal sealed class LighterWeek : Rule<LighterWeek.Reading>
{
    private static readonly LighterWeek Own = new();

    public override string Id => "lighter-week";

    public override string Name => "Lighter week";

    public override Standing Standing { get; } = new() { Rank = 160 };

    public override Evidence Evidence => Evidence.CommonPractice;

    public override string Source => NoSource;

    public override ImmutableArray<string> LimitNames => ["lighter_week_share", "lighter_watch_weeks", "lighter_broken_weeks"];

    protected override Needs Needs => Needs.Rides | Needs.Tier | Needs.FinishedWeek;

    public override string Ask(PlanInForce plan) =>
        $"One of every {Shown.Count(plan.Limits.LighterWatchWeeks, "week")} has at most {Shown.Share(plan.Limits.LighterWeekShare)} of the hours of the others, "
        + $"and at the latest one of {Shown.InWords(plan.Limits.LighterBrokenWeeks)}.";

    /// <summary>Its verdict on a week.</summary>
    public static Verdict Of(JudgedWeek week) => Own.Decide(week).Verdict;

    protected override Look Read(JudgedWeek week)
    {
        if (week.Plan.Tier == Tier.Low)
            return NotJudged("at low volume no lighter week is asked for");
        if (Lightest(week, week.Limits.LighterWatchWeeks) is not { } few)
            return NotJudged($"it needs {Shown.Count(week.Limits.LighterWatchWeeks, "week")}, this one included");
        if (IsLighter(few.Share, week.Limits))
            return As(Verdict.Kept, few);
        return Lightest(week, week.Limits.LighterBrokenWeeks) is { } more && !IsLighter(more.Share, week.Limits) ? As(Verdict.Broken, more) : As(Verdict.Watch, few);
    }

    protected override RuleWords Tell(Reading reading, JudgedWeek week, Verdict verdict) => new()
    {
        Sentence = $"The lightest of the last {Shown.Count(reading.Weeks, "week")} had {Shown.Hours(reading.Lightest.Hours)}, {Shown.Share(reading.Share)} of the mean of the others; "
            + $"a lighter week has {Shown.Share(week.Limits.LighterWeekShare)} or less.",
        WouldHaveKept = $"One of the last {Shown.Count(week.Limits.LighterWatchWeeks, "week")} with {Shown.Share(week.Limits.LighterWeekShare)} of the others’ hours at most.",
        Advice = "Plan a lighter week soon.",
        Headline = "no lighter week for a while",
        Held = week.Week.Exception is ExceptionKind.Lighter || !WeeklyHours.IsOff(week) ? "a lighter week lately" : null,
        Figure = $"the lightest had {Shown.Hours(reading.Lightest.Hours)}, {Shown.Share(reading.Share)} of the others",
        Occurrences = verdict == Verdict.Kept ? [] : [Describe(reading, verdict)],
    };

    private static Occurrence Describe(Reading reading, Verdict verdict) => new()
    {
        Verdict = verdict,
        Dates = [reading.Lightest.StartsOn],
        Numbers =
        [
            NamedNumber.Of("lightest_week_hours", reading.Lightest.Hours, 2, v => $"lightest week {Shown.Hours(v)}"),
            NamedNumber.Of("share_of_the_others", reading.Share, 3, v => $"{Shown.Share(v, 1)} of the others"),
            NamedNumber.Of("weeks", reading.Weeks, 0, v => $"{Shown.Tally((int)v, "week")} looked at"),
        ],
    };

    /// <summary>The lightest of the last weeks, this one included, as a share of the mean of the others; null when there are too few.</summary>
    private static Reading? Lightest(JudgedWeek week, int count)
    {
        if (week.Background.WeeksBefore(count - 1) is not { } before)
            return null;
        var sum = week.Week.Hours;
        var lightest = week.Week;
        foreach (var other in before)
        {
            sum += other.Hours;
            lightest = other.Hours < lightest.Hours ? other : lightest;
        }
        var others = (sum - lightest.Hours) / (count - 1);
        return new Reading(lightest, others > 0 ? lightest.Hours / others : 0, count);
    }

    private static bool IsLighter(double share, Limits limits) => !Close.Above(AsShown.Percent(share), 100 * limits.LighterWeekShare);

    /// <summary>What it reads.</summary>
    /// <param name="Lightest">The lightest week.</param>
    /// <param name="Share">Its hours over the mean of the others.</param>
    /// <param name="Weeks">Weeks looked at, the judged one included.</param>
    internal readonly record struct Reading(WeekFacts Lightest, double Share, int Weeks);
}
