using System.Collections.Immutable;
using RideAudit.Plan;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Rules;

/// <summary>A long ride before a third hard day.</summary>
internal sealed class LongRideFirst : Rule
{
    public override string Id => "long-ride-first";

    public override Evidence Evidence => Evidence.CommonPractice;

    public override string Source => NoSource;

    public override ImmutableArray<string> LimitNames => ["long_ride_first_hard_days", "long_ride_h"];

    protected override Needs Needs => Needs.Rides | Needs.Tier | Needs.FinishedWeek | Needs.NoEvent | Needs.NoLighter | Needs.NoAway;

    protected override Basis Basis => Basis.Kinds;

    protected override bool UnratedMatters => true;

    public override string Ask(PlanInForce plan) =>
        $"A week with {Say.Count(plan.Limits.LongRideFirstHardDays, "hard day")} also has its long ride: it serves the rider more than the last of the hard ones.";

    protected override Call Look(JudgedWeek week) =>
        HardDays(week.Week) >= week.Limits.LongRideFirstHardDays && !HasLongRide(week.Week) ? Call.Broken : Call.Kept;

    protected override Account Tell(JudgedWeek week, Verdict verdict)
    {
        var count = HardDays(week.Week);
        if (verdict == Verdict.Kept)
        {
            return Account.Of(HasLongRide(week.Week)
                ? $"{Say.Capital(Say.Count(count, "hard day"))}, and a long ride."
                : $"{Say.Capital(Say.Count(count, "hard day"))}: the long ride was not crowded out by hard riding.");
        }
        var hard = week.Week.Days.Where(d => d.IsHard).ToList();
        return Account.Of(
            $"{Say.Capital(Say.Count(count, "hard day"))} and no long ride; a long ride in place of one of them serves the rider more.",
            $"A ride of {Say.Time(week.Limits.LongRideHours * 3600)}, nearly all of it easy, in place of one of the hard rides.",
            new Occurrence
            {
                Verdict = Verdict.Broken,
                Dates = [.. hard.Select(d => d.Date)],
                Rides = [.. hard.SelectMany(d => d.Rides).Where(r => r.IsHard).Select(r => r.File)],
                Numbers = [new("hard_days", count), Numbered.Of("longest_ride_h", week.Week.LongestRideSeconds / 3600, 2)],
            });
    }

    private static int HardDays(WeekFacts week)
    {
        var count = 0;
        foreach (var day in week.Days)
            count += day.IsHard ? 1 : 0;
        return count;
    }

    private static bool HasLongRide(WeekFacts week)
    {
        foreach (var day in week.Days)
        {
            foreach (var ride in day.Rides)
            {
                if (ride.Kind == RideKind.Long)
                    return true;
            }
        }
        return false;
    }
}
