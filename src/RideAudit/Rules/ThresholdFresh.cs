using System.Collections.Immutable;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Units;

namespace RideAudit.Rules;

/// <summary>The threshold in force is not far below what the rider has shown.</summary>
internal sealed class ThresholdFresh : Rule
{
    private const int TwentyMinutes = 1200;
    private const double ShareOfBestTwenty = 0.95;

    public override string Id => "threshold-fresh";

    public override Evidence Evidence => Evidence.Handbook;

    public override string Source =>
        "Allen and Coggan, Training and Racing with a Power Meter (95 % of the best 20 minutes; from memory); "
        + "Karsten et al. 2021, Front Physiol, found it 7 ± 13 W off critical power: an estimate";

    public override ImmutableArray<string> LimitNames => ["fresh_margin", "fresh_days"];

    protected override Needs Needs => Needs.Rides | Needs.FinishedWeek;

    public override string Ask(PlanInForce plan) =>
        $"95 % of the best 20 minutes of {Say.Number(plan.Limits.FreshDays)} days is no more than {Say.Percent(plan.Limits.FreshMargin)} above the threshold in force.";

    protected override Call Look(JudgedWeek week)
    {
        if (InForce(week) is not { } threshold)
            return Call.NotJudged("no threshold power is known");
        if (threshold.IsEstimate)
            return Call.NotJudged("the threshold power is itself an estimate from best efforts");
        if (Best(week) is not { } best)
            return Call.NotJudged($"no ride of the last {Say.Number(week.Limits.FreshDays)} days has 20 minutes of power");
        return Close.Above(best.MeanW * ShareOfBestTwenty, (1 + week.Limits.FreshMargin) * threshold.Power.Value) ? Call.Watch : Call.Kept;
    }

    protected override Account Tell(JudgedWeek week, Verdict verdict)
    {
        var (ride, mean) = Best(week) ?? default;
        var threshold = InForce(week)?.Power.Value ?? 0;
        var shown = mean * ShareOfBestTwenty;
        var numbers = $"A best 20 minutes of {Say.Decimal(mean, 0)} W on {Say.Date(ride.Date)} puts threshold power near {Say.Decimal(shown, 0)} W";
        if (verdict == Verdict.Kept)
            return Account.Of($"{numbers}; {Say.Decimal(threshold, 0)} W is in force.");
        return Account.Of(
            $"{numbers}, {Say.Percent(shown / threshold - 1)} above the {Say.Decimal(threshold, 0)} W in force: every share in this review is then too high.",
            $"A threshold near {Say.Decimal(shown, 0)} W in the rider file, from {Say.Date(ride.Date)} on.",
            new Occurrence
            {
                Verdict = Verdict.Watch,
                Dates = [ride.Date],
                Rides = [ride.File],
                Numbers =
                [
                    Numbered.Of("best_20_min_w", mean, 1),
                    Numbered.Of("threshold_shown_w", shown, 1),
                    Numbered.Of("threshold_in_force_w", threshold, 1),
                ],
            });
    }

    /// <summary>The threshold at the week's end: the rider file's, else that of the last ride that has one.</summary>
    private static ThresholdInForce? InForce(JudgedWeek week)
    {
        Watts? listed = null;
        foreach (var entry in week.Plan.Rider.Thresholds)
        {
            if (entry.Power is { } power && (listed is null || entry.From <= week.Week.EndsOn))
                listed = power;
        }
        if (listed is { } watts)
            return new ThresholdInForce(watts, ThresholdSource.RiderFile);
        for (var day = 6; day >= 0; day--)
        {
            var rides = week.Week.Days[day].Rides;
            for (var i = rides.Length - 1; i >= 0; i--)
            {
                if (rides[i].Threshold is { } found)
                    return found;
            }
        }
        return null;
    }

    private static (RideFigures Ride, double MeanW)? Best(JudgedWeek week)
    {
        var best = week.Background.BestWithin(TwentyMinutes, week.Limits.FreshDays - 7);
        foreach (var day in week.Week.Days)
        {
            foreach (var ride in day.Rides)
            {
                foreach (var effort in ride.Bests)
                {
                    if (effort.DurationSeconds == TwentyMinutes && (best is null || effort.MeanW > best.Value.MeanW))
                        best = (ride, effort.MeanW);
                }
            }
        }
        return best;
    }
}
