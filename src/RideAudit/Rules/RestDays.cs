using System.Collections.Immutable;
using NodaTime;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Weeks;

namespace RideAudit.Rules;

/// <summary>Enough days of rest or recovery.</summary>
internal sealed class RestDays : Rule<RestDays.Reading>
{
    public override string Id => "rest-days";

    public override string Name => "Rest days";

    public override string ShortName => "rest-day";

    public override string Effect(Finding finding, LocalDate? riddenOn) => "left too few rest days";

    public override Standing Standing { get; } = new() { Rank = 50, Protects = true };

    public override bool IsChangeSought => true;

    public override Evidence Evidence => Evidence.CommonPractice;

    public override string Source => NoSource;

    public override ImmutableArray<string> LimitNames =>
        ["rest_days_at_least", "short_day_min", "short_day_low_share", "recovery_min", "other_activity_min"];

    protected override Needs Needs => Needs.Rides | Needs.Tier | Needs.FinishedWeek;

    protected override Basis Basis => Basis.Kinds;

    protected override bool UnratedMatters => true;

    public override string Ask(PlanInForce plan) =>
        $"At least {Shown.Count(plan.Limits.RestDaysAtLeast, "day")} of rest or recovery: no ride, or a short easy one.";

    protected override Look Read(JudgedWeek week)
    {
        var rest = Count(week.Week);
        var asked = week.Limits.RestDaysAtLeast * week.OrdinaryDays / 7;
        return As(rest < asked ? Verdict.Broken : Verdict.Kept, new Reading(rest, asked, week.Week.Days.Count(d => d.Kind == DayKind.Rest)));
    }

    protected override RuleWords Tell(Reading reading, JudgedWeek week, Verdict verdict)
    {
        var asked = reading.Asked;
        var shorter = asked < week.Limits.RestDaysAtLeast ? " of such a week" : "";
        return new RuleWords
        {
            Sentence = $"{Shown.Capital(Shown.Count(reading.Days, "day"))} of rest or recovery; {(asked == 0 ? "none is asked of such a week" : $"the plan asks{shorter} for at least {Shown.InWords(asked)}")}.",
            WouldHaveKept = $"{Shown.Capital(Shown.Count(asked - reading.Days, "more day"))} off, or with nothing but a short easy ride.",
            Advice = $"Leave {Shown.Count(asked, "day")} for rest or recovery.",
            Headline = Shown.Count(reading.Days, "rest day"),
            Held = Named(reading),
            Figure = Named(reading),
            Occurrences = verdict == Verdict.Kept ? [] : [Describe(reading, week.Week)],
        };
    }

    // A day off and a day of short easy riding both count, and are not the same.
    private static string Named(Reading reading)
    {
        var recovery = reading.Days - reading.Rest;
        return (reading.Rest, recovery) switch
        {
            (_, 0) => Shown.Count(reading.Rest, "rest day"),
            (0, _) => Shown.Count(recovery, "recovery day"),
            _ => $"{Shown.InWords(reading.Rest)} rest and {Shown.Count(recovery, "recovery day")}",
        };
    }

    private static Occurrence Describe(Reading reading, WeekFacts week) => new()
    {
        Verdict = Verdict.Broken,
        Dates = [.. week.Days.Where(d => !d.IsRestOrRecovery).Select(d => d.Date)],
        Numbers = [NamedNumber.Of("rest_or_recovery_days", reading.Days, 0, v => $"{Shown.Tally((int)v, "day")} of rest or recovery")],
    };

    private static int Count(WeekFacts week)
    {
        var count = 0;
        foreach (var day in week.Days)
            count += day.IsRestOrRecovery ? 1 : 0;
        return count;
    }

    /// <summary>What it reads.</summary>
    /// <param name="Days">Days of rest or recovery.</param>
    /// <param name="Asked">Days asked for: fewer where days are out or an event.</param>
    /// <param name="Rest">Those of them that are off.</param>
    internal readonly record struct Reading(int Days, int Asked, int Rest);
}
