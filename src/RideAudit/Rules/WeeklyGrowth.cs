using System.Collections.Immutable;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Units;

namespace RideAudit.Rules;

/// <summary>Hours do not leap above those of ordinary weeks.</summary>
internal sealed class WeeklyGrowth : Rule<WeeklyGrowth.Reading>
{
    private static readonly WeeklyGrowth Own = new();

    public override string Id => "weekly-growth";

    public override string Name => "Weekly growth";

    public override Standing Standing { get; } = new() { Rank = 140, Group = RuleGroup.Growth };

    public override Evidence Evidence => Evidence.PublishedStudy;

    public override string Source =>
        "studies of runners, not of cyclists: Buist et al. 2008, Am J Sports Med 36:33 (growing by 10 % a week as such made no difference); "
        + "Nielsen et al. 2014, J Orthop Sports Phys Ther (a weak signal beyond 30 %)";

    public override string? SourceInShort => "Runners: Buist et al. 2008; Nielsen et al. 2014";

    public override ImmutableArray<string> LimitNames => ["growth_ratio", "growth_weeks", "lighter_week_share"];

    protected override Needs Needs => Needs.Rides | Needs.FinishedWeek | Needs.NoEvent;

    public override string Ask(PlanInForce plan) =>
        $"Hours stay within {Shown.Number(plan.Limits.GrowthRatio, 1)} times the mean of the last {Shown.Count(plan.Limits.GrowthWeeks, "ordinary week")}.";

    /// <summary>Whether a week's growth is worth a look.</summary>
    public static bool IsWatched(JudgedWeek week) => Own.Decide(week).IsWanting;

    protected override Look Read(JudgedWeek week)
    {
        if (week.Background.OrdinaryMean?.Hours is not { } mean)
            return NotJudged($"it needs {Shown.Count(week.Limits.GrowthWeeks, "ordinary week")} before this one");
        if (mean == 0)
            return NotJudged("the weeks before hold no riding to compare with");
        var reading = new Reading(week.Week.Hours, mean);
        return As(Close.Above(reading.Ratio.To(2), week.Limits.GrowthRatio) ? Verdict.Watch : Verdict.Kept, reading);
    }

    protected override RuleWords Tell(Reading reading, JudgedWeek week, Verdict verdict)
    {
        var sentence = $"{Shown.Hours(reading.Hours)}, {Against(reading)} the mean of {Shown.Count(week.Limits.GrowthWeeks, "ordinary week")} before ({Shown.Hours(reading.MeanBefore)}).";
        if (verdict == Verdict.Kept)
        {
            return new RuleWords
            {
                Sentence = sentence,
                Held = week.IsLongerThanTheLast && !ChronicRamp.IsSteep(week) && !LongestRideJump.IsWatched(week) ? "growth in small steps" : null,
                Figure = $"{Shown.Hours(reading.Hours)}, {Shown.Hours(reading.MeanBefore)} the mean before",
            };
        }
        return new RuleWords
        {
            Sentence = sentence + $" Studies found no effect of growing by {Shown.Percent(10)} as such and a weak signal beyond {Shown.Percent(30)}, and those were runners.",
            WouldHaveKept = $"At most {Shown.Length(60 * Math.Floor(60 * week.Limits.GrowthRatio * reading.MeanBefore + Close.Hair))} in the week.",
            Advice = "Add hours in smaller steps.",
            Headline = "a big jump in hours",
            Occurrences = [Describe(reading)],
        };
    }

    private static string Against(Reading reading) => Shown.Number(reading.Hours, 1) == Shown.Number(reading.MeanBefore, 1) ? "as much as"
        : reading.Ratio < 1 ? "less than"
        : $"{Shown.Number(reading.Ratio, 2)} times";

    private static Occurrence Describe(Reading reading) => new()
    {
        Verdict = Verdict.Watch,
        Numbers =
        [
            NamedNumber.Of("hours", reading.Hours, 2, v => $"{Shown.Hours(v)} ridden"),
            NamedNumber.Of("mean_hours_before", reading.MeanBefore, 2, v => $"mean before {Shown.Hours(v)}"),
            NamedNumber.Of("growth_ratio", reading.Ratio, 3, v => $"{Shown.Number(v, 2)} times the mean"),
        ],
    };

    /// <summary>What it reads, h.</summary>
    /// <param name="Hours">Ridden.</param>
    /// <param name="MeanBefore">Mean of the ordinary weeks before.</param>
    internal readonly record struct Reading(double Hours, double MeanBefore)
    {
        public double Ratio => Hours / MeanBefore;
    }
}
