using System.Collections.Immutable;
using RideAudit.Figures;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Units;

namespace RideAudit.Rules;

/// <summary>The threshold in force is not far below what the rider has shown.</summary>
internal sealed class ThresholdFresh : Rule<ThresholdFresh.Reading>
{
    private const int TwentyMinutes = 1200;
    private const double ShareOfBestTwenty = 0.95;

    public override string Id => "threshold-fresh";

    public override string Name => "Threshold fresh";

    public override Standing Standing { get; } = new() { Rank = 180 };

    public override Evidence Evidence => Evidence.Handbook;

    public override string Source =>
        "Allen and Coggan, Training and Racing with a Power Meter (95 % of the best 20 min; from memory); "
        + "Karsten et al. 2021, Front Physiol, found it 7 ± 13 W off critical power: an estimate";

    public override string? SourceInShort => "Allen and Coggan; Karsten et al. 2021 (from memory)";

    public override ImmutableArray<string> LimitNames => ["fresh_margin", "fresh_days"];

    protected override Needs Needs => Needs.Rides | Needs.FinishedWeek | Needs.NotIll;

    public override string Ask(PlanInForce plan) =>
        $"{Shown.Share(ShareOfBestTwenty)} of the best 20\u00A0min of {Shown.Count(plan.Limits.FreshDays, "day")} is no more than {Shown.Share(plan.Limits.FreshMargin)} above the threshold in force.";

    protected override Look Read(JudgedWeek week)
    {
        if (InForce(week) is not { } threshold)
            return NotJudged("no threshold power is known");
        if (threshold.IsEstimate)
            return NotJudged("the threshold power is itself an estimate from best efforts");
        if (Best(week) is not { } best)
            return NotJudged($"no ride of the last {Shown.Count(week.Limits.FreshDays, "day")} has 20\u00A0min of power");
        var reading = new Reading(best.Ride, best.MeanW, threshold.Power.Value);
        return As(Close.Above(AsShown.Percent(reading.ShownAbove), 100 * week.Limits.FreshMargin) ? Verdict.Watch : Verdict.Kept, reading);
    }

    protected override RuleWords Tell(Reading reading, JudgedWeek week, Verdict verdict)
    {
        var (date, shown, inForce) = (Shown.Date(reading.Ride.Date), Shown.Watts(reading.ShownW), Shown.Watts(reading.InForceW));
        var numbers = $"A best 20\u00A0min of {Shown.Watts(reading.BestW)} on {date} puts threshold power near {shown}";
        if (verdict == Verdict.Kept)
            return new RuleWords
            {
                Sentence = $"The best 20\u00A0min of {Shown.Count(week.Limits.FreshDays, "day")}, {Shown.Watts(reading.BestW)} on {date}, do not say that the {inForce} in force are too low.",
                Held = "threshold power not too low",
                Figure = $"best 20\u00A0min {Shown.Watts(reading.BestW)}, {inForce} in force",
            };
        return new RuleWords
        {
            Sentence = $"{numbers}, {Shown.Share(reading.ShownAbove)} above the {inForce} in force: every share in this review is then too high.",
            WouldHaveKept = $"A threshold near {shown} in the rider file, from {date} on.",
            Advice = "Test the threshold power again.",
            Headline = "a threshold power that looks too low",
            Occurrences = [Describe(reading)],
        };
    }

    private static Occurrence Describe(Reading reading) => new()
    {
        Verdict = Verdict.Watch,
        Dates = [reading.Ride.Date],
        Rides = [reading.Ride.File],
        Numbers =
        [
            NamedNumber.Of("best_20_min_w", reading.BestW, 1, v => $"best {Shown.Minutes(TwentyMinutes / 60)} {Shown.Watts(v)}"),
            NamedNumber.Of("threshold_shown_w", reading.ShownW, 1, v => $"{Shown.Watts(v)} shown"),
            NamedNumber.Of("threshold_in_force_w", reading.InForceW, 1, v => $"{Shown.Watts(v)} in force"),
        ],
    };

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

    /// <summary>What it reads, W.</summary>
    /// <param name="Ride">The ride that holds the best 20 minutes.</param>
    /// <param name="BestW">Their mean power.</param>
    /// <param name="InForceW">The threshold power in force.</param>
    internal readonly record struct Reading(RideFigures Ride, double BestW, double InForceW)
    {
        /// <summary>The threshold power that the best 20 minutes show.</summary>
        public double ShownW => BestW * ShareOfBestTwenty;

        /// <summary>How far it is above the one in force, a share of it, both in whole watts.</summary>
        public double ShownAbove => AsShown.Watts(new Watts(ShownW)) / AsShown.Watts(new Watts(InForceW)) - 1;
    }
}
