using System.Collections.Immutable;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Units;

namespace RideAudit.Rules;

/// <summary>One long easy ride a week.</summary>
internal sealed class LongRide : Rule
{
    public override string Id => "long-ride";

    public override Evidence Evidence => Evidence.CommonPractice;

    public override string Source => NoSource;

    public override ImmutableArray<string> LimitNames =>
        ["long_ride_h", "long_ride_low_share", "long_ride_margin", "long_ride_week_share_at_most"];

    protected override Needs Needs => Needs.Rides | Needs.Tier | Needs.FinishedWeek | Needs.NoLighter | Needs.NoAway;

    protected override Basis Basis => Basis.Kinds;

    protected override bool UnratedMatters => true;

    public override string Ask(PlanInForce plan) =>
        $"One ride of at least {Say.Time(plan.Limits.LongRideHours * 3600)}, at least {Say.Percent(plan.Limits.LongRideLowShare)} of it easy.";

    protected override Call Look(JudgedWeek week)
    {
        var near = week.Limits.LongRideHours * 3600 * (1 - week.Limits.LongRideMargin);
        var verdict = Verdict.Broken;
        foreach (var day in week.Week.Days)
        {
            foreach (var ride in day.Rides)
            {
                if (ride.Kind == RideKind.Long)
                    return Call.Kept;
                if (!Close.Below(ride.DurationSeconds, near))
                    verdict = Verdict.Watch;
            }
        }
        return new Call(verdict);
    }

    protected override Account Tell(JudgedWeek week, Verdict verdict)
    {
        var asked = week.Limits.LongRideHours * 3600;
        var rides = week.Week.Rides.OrderByDescending(r => r.DurationSeconds).ToList();
        if (rides.FirstOrDefault(r => r.Kind == RideKind.Long) is { } done)
            return Account.Of($"{Say.Day(done.Date)}’s ride of {Say.Time(done.DurationSeconds)} was the long ride; the plan asks for {Say.Time(asked)}.");
        var longest = rides[0];
        var longEnough = longest.DurationSeconds >= asked;
        var sentence = longEnough
            ? $"{Say.Day(longest.Date)}’s ride of {Say.Time(longest.DurationSeconds)} was long enough, but {NotEasy(longest)}."
            : $"The longest ride was {Say.Time(longest.DurationSeconds)} on {Say.Day(longest.Date)}; the plan asks for {Say.Time(asked)}.";
        var kept = longEnough
            ? "The same ride with less hard riding in it."
            : $"{Say.Time(asked - longest.DurationSeconds)} more on {Say.Day(longest.Date)}, all of it easy.";
        return Account.Of(sentence, kept, new Occurrence
        {
            Verdict = verdict,
            Dates = [longest.Date],
            Rides = [longest.File],
            Numbers = [Numbered.Of("longest_ride_h", longest.DurationSeconds / 3600, 2), Numbered.Of("low_share", longest.Bands.LowShare, 3)],
        });
    }

    private static string NotEasy(RideFigures ride) => ride.Bands.LowShare is { } low
        ? $"it was a {Name(ride.Kind)} ride with {Say.Percent(low)} of it easy"
        : "nothing tells how easy it was";

    private static string Name(RideKind kind) => kind switch
    {
        RideKind.High => "high",
        RideKind.Threshold => "threshold",
        _ => "mixed",
    };
}
