using System.Collections.Immutable;
using RideAudit.Plan;
using RideAudit.Units;

namespace RideAudit.Rules;

/// <summary>Hours do not leap above those of ordinary weeks.</summary>
internal sealed class WeeklyGrowth : Rule
{
    public override string Id => "weekly-growth";

    public override Evidence Evidence => Evidence.PublishedStudy;

    public override string Source =>
        "studies of runners, not of cyclists: Buist et al. 2008, Am J Sports Med 36:33 (growing by 10 % a week as such made no difference); "
        + "Nielsen et al. 2014, J Orthop Sports Phys Ther (a weak signal beyond 30 %)";

    public override ImmutableArray<string> LimitNames => ["growth_ratio", "growth_weeks"];

    protected override Needs Needs => Needs.Rides | Needs.FinishedWeek | Needs.NoEvent;

    public override string Ask(PlanInForce plan) =>
        $"Hours stay within {Say.Decimal(plan.Limits.GrowthRatio)} times the mean of the last {Say.Number(plan.Limits.GrowthWeeks)} ordinary weeks.";

    protected override Call Look(JudgedWeek week) => MeanHours(week) switch
    {
        null => Call.NotJudged($"it needs {Say.Number(week.Limits.GrowthWeeks)} ordinary weeks before this one"),
        0 => Call.NotJudged("the weeks before hold no riding to compare with"),
        { } mean => Close.Above(week.Week.Hours, week.Limits.GrowthRatio * mean) ? Call.Watch : Call.Kept,
    };

    protected override Account Tell(JudgedWeek week, Verdict verdict)
    {
        var mean = MeanHours(week) ?? 0;
        var ratio = week.Week.Hours / mean;
        var sentence = $"{Say.Hours(week.Week.Hours)}, {Say.Decimal(ratio, 2)} times the mean of {Say.Number(week.Limits.GrowthWeeks)} ordinary weeks before ({Say.Hours(mean)}).";
        if (verdict == Verdict.Kept)
            return Account.Of(sentence);
        return Account.Of(
            sentence + " Studies found no effect of growing by 10 % as such and a weak signal beyond 30 %, and those were runners.",
            $"At most {Say.Hours(week.Limits.GrowthRatio * mean)}.",
            new Occurrence
            {
                Verdict = Verdict.Watch,
                Numbers = [Numbered.Of("hours", week.Week.Hours, 2), Numbered.Of("mean_hours_before", mean, 2), Numbered.Of("growth_ratio", ratio, 3)],
            });
    }

    private static double? MeanHours(JudgedWeek week) => week.Background.OrdinaryMean?.Hours;
}
