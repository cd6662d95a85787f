using System.Collections.Immutable;
using RideAudit.Figures;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Units;

namespace RideAudit.Rules;

/// <summary>One long easy ride a week.</summary>
internal sealed class LongRide : Rule<LongRide.Reading>
{
    public override string Id => "long-ride";

    public override string Name => "Long ride";

    public override string ShortName => "long-ride";

    public override Standing Standing { get; } = new() { Rank = 60, Group = RuleGroup.Endurance, Heads = Trend.LongestRide };

    public override bool IsChangeSought => true;

    public override Evidence Evidence => Evidence.CommonPractice;

    public override string Source => NoSource;

    public override ImmutableArray<string> LimitNames =>
        ["long_ride_h", "long_ride_low_share", "long_ride_margin", "long_ride_week_share_at_most"];

    protected override Needs Needs => Needs.Rides | Needs.Tier | Needs.FinishedWeek | Needs.NoLighter | Needs.NoAway;

    protected override Basis Basis => Basis.Kinds;

    protected override bool UnratedMatters => true;

    public override string Ask(PlanInForce plan) =>
        $"One ride of at least {Shown.Length(plan.Limits.LongRideHours * 3600)}, at least {Shown.Share(plan.Limits.LongRideLowShare)} of it easy.";

    protected override Look Read(JudgedWeek week)
    {
        var near = week.Limits.LongRideHours * 3600 * (1 - week.Limits.LongRideMargin);
        var verdict = Verdict.Broken;
        RideFigures? longest = null, done = null;
        foreach (var day in week.Week.Days)
        {
            foreach (var ride in day.Rides)
            {
                longest = ride.DurationSeconds <= longest?.DurationSeconds ? longest : ride;
                if (ride.Kind == RideKind.Long && !(ride.DurationSeconds <= done?.DurationSeconds))
                    done = ride;
                if (!Close.Below(ride.DurationSeconds, near))
                    verdict = Verdict.Watch;
            }
        }
        return done is not null ? As(Verdict.Kept, new Reading(done)) : As(verdict, new Reading(longest!));
    }

    protected override RuleWords Tell(Reading reading, JudgedWeek week, Verdict verdict)
    {
        var asked = week.Limits.LongRideHours * 3600;
        var (ride, day) = (reading.Ride, Shown.Weekday(reading.Ride.Date));
        if (verdict == Verdict.Kept)
        {
            return new RuleWords
            {
                Sentence = $"{day}’s ride of {Shown.Length(ride.DurationSeconds)} was the long ride; the plan asks for {Shown.Length(asked)}.",
                Held = $"long ride {Shown.Length(ride.DurationSeconds)}",
            };
        }
        var longEnough = ride.DurationSeconds >= asked;
        return new RuleWords
        {
            Sentence = longEnough
                ? $"{day}’s ride of {Shown.Length(ride.DurationSeconds)} was long enough, but {NotEasy(ride)}."
                : $"The longest ride was {Shown.Length(ride.DurationSeconds)} on {day}; the plan asks for {Shown.Length(asked)}.",
            WouldHaveKept = longEnough
                ? "The same ride with less hard riding in it."
                : $"{Shown.Length(asked - ride.DurationSeconds)} more on {day}, all of it easy.",
            Advice = LongRideFirst.Asks(week) ? null : $"Ride one long easy ride of {Shown.Length(asked)}.",
            Headline = verdict == Verdict.Watch ? "a long ride not quite long or easy enough" : "no long easy ride",
            Occurrences = [Describe(ride, verdict)],
        };
    }

    private static Occurrence Describe(RideFigures ride, Verdict verdict) => new()
    {
        Verdict = verdict,
        Dates = [ride.Date],
        Rides = [ride.File],
        Numbers =
        [
            NamedNumber.Of("longest_ride_h", ride.DurationSeconds / 3600, 2, v => $"longest ride {Shown.Length(v * 3600)}"),
            NamedNumber.Of("low_share", ride.Bands.LowShare, 3, v => $"{Shown.Share(v, 1)} low"),
        ],
    };

    private static string NotEasy(RideFigures ride) => ride.Bands.LowShare is { } low
        ? $"it was a {KindName(ride.Kind)} ride with {Shown.Share(low)} of it easy"
        : "nothing tells how easy it was";

    private static string KindName(RideKind kind) => kind switch
    {
        RideKind.High => "high",
        RideKind.Threshold => "threshold",
        _ => "mixed",
    };

    /// <summary>What it reads.</summary>
    /// <param name="Ride">The longest long ride; without one the longest ride.</param>
    internal readonly record struct Reading(RideFigures Ride);
}
