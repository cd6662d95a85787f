using System.Collections.Immutable;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Rules;

/// <summary>Chronic load rises no faster than it can be borne.</summary>
internal sealed class ChronicRamp : Rule<ChronicRamp.Reading>
{
    private static readonly ChronicRamp Own = new();

    public override string Id => "chronic-ramp";

    public override string Name => "Chronic ramp";

    public override Standing Standing { get; } = new() { Rank = 100, Group = RuleGroup.Growth, Protects = true, Heads = Trend.Load };

    public override Evidence Evidence => Evidence.CommonPractice;

    public override string Source =>
        "common practice for the limits; the load is the time-constant form of Banister, Calvert, Savage and Bach 1975, Aust J Sports Med 7:57 (from memory)";

    public override string? SourceInShort => "Common practice; Banister, Calvert, Savage and Bach 1975 (from memory)";

    public override ImmutableArray<string> LimitNames => ["ramp_watch", "ramp_broken", "stress_unknown_share_at_most"];

    protected override Needs Needs => Needs.Rides | Needs.FinishedWeek | Needs.NoEvent;

    protected override Basis Basis => Basis.Stress;

    protected override int DaysBefore => 42;

    public override string Ask(PlanInForce plan) =>
        $"Chronic load, the mean daily stress of about six weeks, rises by no more than {Shown.Points(plan.Limits.RampWatch)} in a week.";

    /// <summary>Whether it rises faster than it should.</summary>
    public static bool IsSteep(JudgedWeek week) => Own.Decide(week).IsWanting;

    protected override Look Read(JudgedWeek week)
    {
        if (week.Week.SettlingIn)
            return NotJudged("chronic load needs 42 days of riding to settle");
        var reading = new Reading(week.Week.Ramp, week.Week.LoadBefore.Chronic, week.Week.LoadAfter.Chronic);
        return As(VerdictOf(reading, week.Limits), reading);
    }

    protected override RuleWords Tell(Reading reading, JudgedWeek week, Verdict verdict) => new()
    {
        Sentence = $"Chronic load {(reading.Ramp >= 0 ? "rose" : "fell")} by {Shown.Points(Math.Abs(reading.Ramp), 1)}, "
            + $"from {Shown.Number(reading.Before, 1)} to {Shown.Number(reading.After, 1)}; up to {Shown.Number(week.Limits.RampWatch)} in a week is usual.",
        WouldHaveKept = $"{Shown.Points(TooMuch(reading, week.Limits))} of training stress less in the week: {(week.AsksForMore ? "easier hours" : "fewer hours, or easier ones")}.",
        Advice = $"Let chronic load rise by no more than {Shown.Points(week.Limits.RampWatch)} a week.",
        Headline = "training load rising fast",
        Held = $"ramp {Shown.Signed(reading.Ramp)}",
        Figure = $"{Shown.Signed(reading.Ramp)} points",
        Occurrences = verdict == Verdict.Kept ? [] : [Describe(reading, VerdictOf(reading, week.Limits))],
    };

    /// <summary>Stress that the week had too much of, whole points, enough on whatever day it is left out: the first day counts least at the week's end.</summary>
    private static double TooMuch(Reading reading, Limits limits)
    {
        var leastEffect = new LoadState().After(1).After(0).After(0).After(0).After(0).After(0).After(0).Chronic;
        return Math.Ceiling((reading.Ramp - limits.RampWatch) / leastEffect);
    }

    private static Verdict VerdictOf(Reading reading, Limits limits) =>
        Close.Above(reading.Ramp.To(1), limits.RampBroken) ? Verdict.Broken
        : Close.Above(reading.Ramp.To(1), limits.RampWatch) ? Verdict.Watch
        : Verdict.Kept;

    private static Occurrence Describe(Reading reading, Verdict verdict) => new()
    {
        Verdict = verdict,
        Numbers =
        [
            NamedNumber.Of("ramp_points", reading.Ramp, 1, v => $"ramp {Shown.Points(v, 1)}"),
            NamedNumber.Of("chronic_load_before_points", reading.Before, 1, v => $"chronic load {Shown.Points(v, 1)} before"),
            NamedNumber.Of("chronic_load_after_points", reading.After, 1, v => $"{Shown.Points(v, 1)} after"),
        ],
    };

    /// <summary>What it reads: chronic load, points.</summary>
    /// <param name="Ramp">Its change in the week.</param>
    /// <param name="Before">At the end of the day before.</param>
    /// <param name="After">At the week's end.</param>
    internal readonly record struct Reading(double Ramp, double Before, double After);
}
