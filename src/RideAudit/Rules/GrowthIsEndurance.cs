using System.Collections.Immutable;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Units;

namespace RideAudit.Rules;

/// <summary>When hours grow, the added time is mostly easy.</summary>
internal sealed class GrowthIsEndurance : Rule<GrowthIsEndurance.Reading>
{
    public override string Id => "growth-is-endurance";

    public override string Name => "Growth is endurance";

    public override Standing Standing { get; } = new() { Rank = 110, Group = RuleGroup.Growth };

    public override Evidence Evidence => Evidence.CommonPractice;

    public override string Source => NoSource;

    public override ImmutableArray<string> LimitNames => ["growth_share", "growth_above_low_share", "growth_weeks", "lighter_week_share"];

    protected override Needs Needs => Needs.Rides | Needs.FinishedWeek | Needs.NoEvent;

    protected override Basis Basis => Basis.Kinds;

    public override string Ask(PlanInForce plan) =>
        $"When hours grow by more than {Shown.Share(plan.Limits.GrowthShare)}, no more than {Shown.Share(plan.Limits.GrowthAboveLowShare)} of the added time is above easy.";

    protected override Look Read(JudgedWeek week)
    {
        if (week.Background.OrdinaryMean is not { } before)
            return NotJudged($"it needs {Shown.Count(week.Limits.GrowthWeeks, "ordinary week")} before this one");
        if (before.Hours <= 0)
            return NotJudged("the weeks before hold no riding to compare with");
        var grew = Close.Above(AsShown.Percent(week.Week.Hours / before.Hours - 1), 100 * week.Limits.GrowthShare);
        var reading = new Reading(grew, before.Hours, week.Week.Hours - before.Hours, week.Week.Bands.AboveLow / 3600 - before.AboveLow);
        if (!grew)
            return As(Verdict.Kept, reading);
        var most = reading.AddedAboveLow + Unbanded.SecondsIn(week.Week) / 3600;
        return IsTooMuch(reading.AddedAboveLow - before.Unbanded) ? As(Verdict.Broken, reading)
            : IsTooMuch(most) ? Unrated()
            : As(Verdict.Kept, reading);

        bool IsTooMuch(double aboveLow) => AsShown.Percent(aboveLow / reading.Added) > AsShown.Percent(week.Limits.GrowthAboveLowShare);
    }

    protected override RuleWords Tell(Reading reading, JudgedWeek week, Verdict verdict)
    {
        var held = week.IsLongerThanTheLast ? "growth by endurance" : null;
        if (!reading.Grew)
        {
            return new RuleWords
            {
                Sentence = $"{Shown.Hours(week.Week.Hours)} against a mean of {Shown.Hours(reading.MeanBefore)}: "
                    + $"hours did not grow by more than {Shown.Share(week.Limits.GrowthShare)}.",
                Held = held,
                Figure = "no growth",
            };
        }
        return new RuleWords
        {
            Sentence = $"{Shown.Length(reading.Added * 3600)} more than the mean of the weeks before, "
                + $"{(AsShown.Minutes(reading.AddedAboveLow * 3600) <= 0 ? "none" : Shown.Length(reading.AddedAboveLow * 3600))} of it above easy.",
            WouldHaveKept = $"At most {Shown.Length(60 * Math.Floor(60 * week.Limits.GrowthAboveLowShare * reading.Added))} of the added time above easy.",
            Advice = "Grow by easy hours first.",
            Headline = "growth by intensity instead of endurance",
            Held = held,
            Figure = $"{Shown.Length(reading.Added * 3600)} more than before",
            Occurrences = verdict == Verdict.Kept ? [] : [Describe(reading)],
        };
    }

    protected override Trust TrustIn(JudgedWeek week) =>
        Background.Worse(week.TrustIn(Basis, 0), week.Background.TrustInOrdinaryWeeks(Basis));

    private static Occurrence Describe(Reading reading) => new()
    {
        Verdict = Verdict.Broken,
        Numbers =
        [
            NamedNumber.Of("added_hours", reading.Added, 2, v => $"{Shown.Hours(v)} added"),
            NamedNumber.Of("added_above_low_hours", reading.AddedAboveLow, 2, v => $"{Shown.Hours(v)} of it above low"),
            NamedNumber.Of("above_low_share_of_added", reading.AddedAboveLow / reading.Added, 3, v => $"{Shown.Share(v, 1)} of the added time"),
        ],
    };

    /// <summary>What it reads, h.</summary>
    /// <param name="Grew">Hours grew by enough to look at.</param>
    /// <param name="MeanBefore">Mean of the ordinary weeks before.</param>
    /// <param name="Added">Ridden more than that.</param>
    /// <param name="AddedAboveLow">Ridden more than before above the low band.</param>
    internal readonly record struct Reading(bool Grew, double MeanBefore, double Added, double AddedAboveLow);
}
