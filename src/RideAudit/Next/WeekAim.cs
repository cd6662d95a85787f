using System.Collections.Immutable;
using RideAudit.Plan;
using RideAudit.Weeks;

namespace RideAudit.Next;

/// <summary>What a layout aims at before the rules are asked.</summary>
/// <remarks>Common practice, no source: the weeks the trade draws by volume and experience.</remarks>
/// <param name="Minutes">The week's minutes, what is ridden included.</param>
/// <param name="Rides">Days with riding.</param>
/// <param name="LongMinutes">The long ride's length, min; 0 when none is wanted.</param>
/// <param name="MostMinutes">The longest ride that does not grow far beyond the rider's recent ones, min.</param>
/// <param name="IsStep">The hours are a step towards those planned.</param>
internal sealed record WeekAim(int Minutes, int Rides, int HighDays, int ThresholdDays, int LongMinutes, int MostMinutes, bool IsStep)
{
    // Growth a week is aimed at: inside the limit of the rule, so that the rough edges of real weeks stay inside it as well.
    private const double StepOfHours = 1.2;
    private const int WeeksOfHabit = 6;
    private const double LongUnknown = 1.2;
    private const double LongestOfWeek = 3;

    /// <summary>Hard days of a usual week.</summary>
    public int HardDays => HighDays + ThresholdDays;

    /// <summary>The hours a rider may be asked for: those planned, as far as the weeks ridden of late lead up to them.</summary>
    /// <param name="plan">The plan in force.</param>
    /// <param name="ordinary">The last ordinary weeks, newest last; empty without any ridden.</param>
    /// <returns>Hours, and whether they are a step towards those planned; null when no hours are planned.</returns>
    public static (double Hours, bool IsStep)? HoursOf(PlanInForce plan, IReadOnlyCollection<WeekFacts> ordinary)
    {
        if (plan.PlannedHours is not > 0)
            return null;
        var planned = plan.PlannedHours.Value;
        if (ordinary.Count == 0)
            return (planned, false);
        var step = StepOfHours * ordinary.Average(w => w.Hours);
        return step < planned ? (step, true) : (planned, false);
    }

    /// <summary>The last weeks that were ridden and not excepted, newest last.</summary>
    public static ImmutableArray<WeekFacts> Ordinary(ImmutableArray<WeekFacts> past, PlanCalendar calendar, Limits limits)
    {
        WeekFacts[] weeks = [.. past.Where(w => calendar.Week(w.StartsOn).With(w.Exception) is { Lighter: false, Away: false, Event: false })];
        // A first week that begins late is part of one.
        if (weeks.Length > 1 && weeks[0] == past[0] && weeks[0].FirstRideOn > weeks[0].StartsOn.PlusDays(1))
            weeks = weeks[1..];
        var last = weeks.TakeLast(limits.GrowthWeeks).ToImmutableArray();
        return last.Any(w => w.Hours > 0) ? last : [.. weeks.Where(w => w.Hours > 0).TakeLast(limits.GrowthWeeks)];
    }

    /// <summary>High and threshold days of the trade's week.</summary>
    public static (int High, int Threshold) HardDaysOf(Tier tier, Experience experience, Limits limits)
    {
        var (high, threshold) = (tier, experience) switch
        {
            (Tier.Low or Tier.Middle, Experience.New) => (1, 0),
            (Tier.Low, Experience.Racing) => (2, 1),
            (Tier.Middle, Experience.Racing) => (2, 0),
            (Tier.Low or Tier.Middle, _) => (1, 1),
            (_, Experience.New) => (1, 1),
            _ => (2, 1),
        };
        high = Math.Min(high, limits.HighDaysAtMost);
        return (high, Math.Min(threshold, limits.HighDaysAtMost + limits.ThresholdDaysOnTop - high));
    }

    /// <summary>Days with riding: those of the rider's ordinary weeks, else of the trade's week.</summary>
    public static int RidesOf(Tier tier, Experience experience, ImmutableArray<WeekFacts> ordinary, int openDays)
    {
        var usual = ordinary.TakeLast(WeeksOfHabit).Select(w => w.Days.Count(d => d.RideSeconds > 0)).Where(n => n > 0).ToArray();
        var rides = usual.Length >= 2 ? (int)Math.Round(usual.Average()) : tier switch
        {
            Tier.Low => 4,
            Tier.Middle => 5,
            _ => 6,
        };
        return Math.Min(rides, openDays);
    }

    /// <summary>The longest ride that does not grow far beyond the recent ones, min; without any a fifth more than is asked for, or a third of the week.</summary>
    public static int MostMinutesOf(ImmutableArray<WeekFacts> past, Limits limits, double hours)
    {
        var longest = past.TakeLast(limits.JumpDays / 7).Select(w => w.LongestRideSeconds / 60).DefaultIfEmpty(0).Max();
        if (longest <= 0)
            longest = past.Select(w => w.LongestRideSeconds / 60).DefaultIfEmpty(0).Max();
        return longest <= 0
            ? (int)(Math.Max(LongUnknown * limits.LongRideHours, hours / LongestOfWeek) * 12) * 5
            : Math.Max((int)limits.JumpLeastMinutes - 5, (int)Math.Floor(longest * limits.JumpRatio / 5) * 5);
    }
}
