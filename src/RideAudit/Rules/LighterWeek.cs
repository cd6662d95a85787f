using System.Collections.Immutable;
using RideAudit.Plan;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Rules;

/// <summary>A lighter week now and then.</summary>
internal sealed class LighterWeek : Rule
{
    public override string Id => "lighter-week";

    public override Evidence Evidence => Evidence.CommonPractice;

    public override string Source => NoSource;

    public override ImmutableArray<string> LimitNames => ["lighter_week_share", "lighter_watch_weeks", "lighter_broken_weeks"];

    protected override Needs Needs => Needs.Rides | Needs.Tier | Needs.FinishedWeek;

    public override string Ask(PlanInForce plan) =>
        $"One of every {Say.Number(plan.Limits.LighterWatchWeeks)} weeks has at most {Say.Percent(plan.Limits.LighterWeekShare)} of the hours of the others, "
        + $"and at the latest one of {Say.Number(plan.Limits.LighterBrokenWeeks)}.";

    protected override Call Look(JudgedWeek week)
    {
        if (week.Plan.Tier == Tier.Low)
            return Call.NotJudged("at low volume no lighter week is asked for");
        if (Lightest(week, week.Limits.LighterWatchWeeks) is not { } few)
            return Call.NotJudged($"it needs {Say.Number(week.Limits.LighterWatchWeeks)} weeks, this one included");
        if (IsLighter(few.Share, week.Limits))
            return Call.Kept;
        return Lightest(week, week.Limits.LighterBrokenWeeks) is { } more && !IsLighter(more.Share, week.Limits) ? Call.Broken : Call.Watch;
    }

    protected override Account Tell(JudgedWeek week, Verdict verdict)
    {
        var broken = Lightest(week, week.Limits.LighterBrokenWeeks) is { } many && !IsLighter(many.Share, week.Limits);
        var span = verdict != Verdict.Kept && broken ? week.Limits.LighterBrokenWeeks : week.Limits.LighterWatchWeeks;
        var (lightest, share) = Lightest(week, span) ?? (week.Week, 1);
        var sentence = $"The lightest of the last {Say.Number(span)} weeks had {Say.Hours(lightest.Hours)}, {Say.Percent(share)} of the mean of the others; "
            + $"a lighter week has {Say.Percent(week.Limits.LighterWeekShare)} or less.";
        if (verdict == Verdict.Kept)
            return Account.Of(sentence);
        return Account.Of(sentence, $"One week of about {Say.Percent(week.Limits.LighterWeekShare)} of the usual hours.", new Occurrence
        {
            Verdict = broken ? Verdict.Broken : Verdict.Watch,
            Dates = [lightest.StartsOn],
            Numbers = [Numbered.Of("lightest_week_hours", lightest.Hours, 2), Numbered.Of("share_of_the_others", share, 3), new("weeks", span)],
        });
    }

    /// <summary>The lightest of the last weeks, this one included, as a share of the mean of the others; null when there are too few.</summary>
    private static (WeekFacts Week, double Share)? Lightest(JudgedWeek week, int count)
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
        return (lightest, others > 0 ? lightest.Hours / others : 0);
    }

    private static bool IsLighter(double share, Limits limits) => !Close.Above(share, limits.LighterWeekShare);
}
