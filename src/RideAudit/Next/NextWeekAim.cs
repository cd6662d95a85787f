using System.Collections.Immutable;
using RideAudit.Plan;
using RideAudit.Weeks;

namespace RideAudit.Next;

/// <summary>The hours a layout aims at: those of the plan, as far as the weeks ridden of late lead up to them.</summary>
/// <remarks>A caution of the same size as the growth rule's: the studies behind it are of runners (see that rule), so the step is our choice, common practice.</remarks>
/// <param name="Plan">The plan to lay out by: that of the hours aimed at.</param>
/// <param name="PlannedHours">What the plan asks for, h.</param>
/// <param name="MeanHours">Mean of the last ordinary weeks, h; null without any ridden.</param>
/// <param name="WeeksBehindMean">How many weeks that mean is of.</param>
internal sealed record NextWeekAim(PlanInForce Plan, double PlannedHours, double? MeanHours, int WeeksBehindMean)
{
    /// <summary>The hours aimed at, h.</summary>
    public double Hours => Plan.PlannedHours ?? 0;

    /// <summary>The plan asks for more than one step from where the rider is.</summary>
    public bool IsStep => Hours < PlannedHours;

    /// <summary>What to aim at.</summary>
    /// <param name="plan">The plan in force.</param>
    /// <param name="past">The weeks up to the reviewed one, oldest first.</param>
    public static NextWeekAim For(PlanInForce plan, ImmutableArray<WeekFacts> past)
    {
        var planned = plan.PlannedHours ?? 0;
        var ordinary = Ordinary(plan, past);
        if (ordinary.Length == 0)
            return new(plan, planned, null, 0);
        var mean = ordinary.Average(w => w.Hours);
        var step = plan.Limits.GrowthRatio * mean;
        return new(step < planned ? Stepped(plan, step) : plan, planned, mean, ordinary.Length);
    }

    // After weeks without any ride the last ridden ones say where the rider was.
    private static ImmutableArray<WeekFacts> Ordinary(PlanInForce plan, ImmutableArray<WeekFacts> past)
    {
        WeekFacts[] weeks = [.. past.Where(w => IsOrdinary(plan, w))];
        var last = weeks.TakeLast(plan.Limits.GrowthWeeks).ToImmutableArray();
        return last.Any(w => w.Hours > 0) ? last : [.. weeks.Where(w => w.Hours > 0).TakeLast(plan.Limits.GrowthWeeks)];
    }

    private static bool IsOrdinary(PlanInForce plan, WeekFacts week)
    {
        var exceptions = WeekExceptions.For(plan.Rider.Exceptions, week.StartsOn).With(week.Exception);
        return !exceptions.Lighter && !exceptions.Away;
    }

    // Rest days and the long ride are those of the hours ridden; no more hard days than the plan itself allows.
    private static PlanInForce Stepped(PlanInForce plan, double hours)
    {
        var rider = plan.Rider with { Plan = plan.Rider.Plan with { WeeklyHours = hours } };
        var stepped = PlanInForce.For(rider, []);
        return stepped with
        {
            Rider = plan.Rider,
            Limits = stepped.Limits with { HighDaysAtMost = Math.Min(stepped.Limits.HighDaysAtMost, plan.Limits.HighDaysAtMost) },
        };
    }
}
