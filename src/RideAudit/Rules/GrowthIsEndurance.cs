using System.Collections.Immutable;
using RideAudit.Plan;
using RideAudit.Units;

namespace RideAudit.Rules;

/// <summary>When hours grow, the added time is mostly easy.</summary>
internal sealed class GrowthIsEndurance : Rule
{
    public override string Id => "growth-is-endurance";

    public override Evidence Evidence => Evidence.CommonPractice;

    public override string Source => NoSource;

    public override ImmutableArray<string> LimitNames => ["growth_share", "growth_above_low_share", "growth_weeks"];

    protected override Needs Needs => Needs.Rides | Needs.FinishedWeek | Needs.NoEvent;

    protected override Basis Basis => Basis.Kinds;

    public override string Ask(PlanInForce plan) =>
        $"When hours grow by more than {Say.Percent(plan.Limits.GrowthShare)}, no more than {Say.Percent(plan.Limits.GrowthAboveLowShare)} of the added time is above easy.";

    protected override Call Look(JudgedWeek week)
    {
        if (MeanBefore(week) is not { } before)
            return Call.NotJudged($"it needs {Say.Number(week.Limits.GrowthWeeks)} ordinary weeks before this one");
        if (before.Hours <= 0)
            return Call.NotJudged("the weeks before hold no riding to compare with");
        if (!Close.Above(week.Week.Hours, (1 + week.Limits.GrowthShare) * before.Hours))
            return Call.Kept;
        var added = week.Week.Hours - before.Hours;
        var above = week.Week.Bands.AboveLow / 3600 - before.AboveLow;
        var limit = week.Limits.GrowthAboveLowShare * added;
        var least = above - before.Unbanded;
        var most = above + Unbanded.SecondsIn(week.Week) / 3600;
        return Close.Above(least, limit) ? Call.Broken
            : Close.Above(most, limit) ? Call.NotJudged("riding without power or heart rate to rate it could change the verdict")
            : Call.Kept;
    }

    protected override Account Tell(JudgedWeek week, Verdict verdict)
    {
        var before = MeanBefore(week) ?? default;
        var added = week.Week.Hours - before.Hours;
        if (!Close.Above(week.Week.Hours, (1 + week.Limits.GrowthShare) * before.Hours))
            return Account.Of($"{Say.Hours(week.Week.Hours)} against a mean of {Say.Hours(before.Hours)}: hours did not grow by more than {Say.Percent(week.Limits.GrowthShare)}.");
        var above = week.Week.Bands.AboveLow / 3600 - before.AboveLow;
        var sentence = $"{Say.Time(added * 3600)} more than the mean of the weeks before, {Say.Time(Math.Max(0, above) * 3600)} of it above easy.";
        if (verdict == Verdict.Kept)
            return Account.Of(sentence);
        return Account.Of(sentence, $"At most {Say.Time(week.Limits.GrowthAboveLowShare * added * 3600)} of the added time above easy.", new Occurrence
        {
            Verdict = Verdict.Broken,
            Numbers =
            [
                Numbered.Of("added_hours", added, 2),
                Numbered.Of("added_above_low_hours", above, 2),
                Numbered.Of("above_low_share_of_added", above / added, 3),
            ],
        });
    }

    protected override Trust TrustIn(JudgedWeek week) =>
        Background.Worse(week.TrustIn(Basis, 0), week.Background.TrustInOrdinaryWeeks(Basis));

    private static (double Hours, double AboveLow, double Unbanded)? MeanBefore(JudgedWeek week) => week.Background.OrdinaryMean;
}
