using RideAudit.Plan;
using RideAudit.Weeks;

namespace RideAudit.Review;

/// <summary>How long the rides of a layout are, before anything is said of days.</summary>
/// <param name="WeekMinutes">Minutes of the whole week.</param>
/// <param name="LongMinutes">Length of the long ride; 0 for a week without one.</param>
/// <param name="High">A high day.</param>
/// <param name="Threshold">A threshold day.</param>
internal sealed record NextWeekSizes(int WeekMinutes, int LongMinutes, PlannedDay High, PlannedDay Threshold)
{
    private const int LeastDaysOfHistory = 30;
    private static readonly int[] HighWork = [15, 20, 25, 30];
    private static readonly int[] ThresholdWork = [20, 30, 40];

    /// <summary>Sizes for a week with so many hard days.</summary>
    /// <param name="plan">The plan in force, with planned hours.</param>
    /// <param name="past">The weeks up to the reviewed one, oldest first.</param>
    /// <param name="highDays">High days.</param>
    /// <param name="thresholdDays">Threshold days.</param>
    /// <param name="lighter">A lighter week: fewer hours, no long ride.</param>
    public static NextWeekSizes For(PlanInForce plan, IReadOnlyList<WeekFacts> past, int highDays, int thresholdDays, bool lighter)
    {
        var limits = plan.Limits;
        var minutes = plan.PlannedHours!.Value * 60 * (lighter ? limits.LighterWeekFactor : 1);
        var spare = Math.Max(0, 1 - limits.IntendedLowShare - limits.SplitTolerance / 2) * minutes;
        var (high, threshold) = Work(spare, highDays, thresholdDays);
        return new NextWeekSizes(
            ToFive(minutes),
            lighter ? 0 : LongRide(limits, past),
            new PlannedDay(DayKind.High, ToFive(25 + high + 4 * (high / 5 - 1)), high),
            new PlannedDay(DayKind.Threshold, ToFive(25 + threshold + 4 * (threshold / 10 - 1)), threshold));
    }

    /// <summary>The long ride asked for, or as far towards it as the longest ride of late allows.</summary>
    public static int LongRide(Limits limits, IReadOnlyList<WeekFacts> past)
    {
        var asked = UpToFive(limits.LongRideHours * 60);
        if (past.Count * 7 < LeastDaysOfHistory)
            return asked;
        var longest = past.TakeLast(limits.JumpDays / 7).Select(w => w.LongestRideSeconds / 60).DefaultIfEmpty(0).Max();
        var atMost = Math.Max(limits.JumpLeastMinutes, Math.Floor(longest * limits.JumpRatio / 5) * 5);
        return (int)Math.Min(asked, atMost);
    }

    private static (int High, int Threshold) Work(double spare, int highDays, int thresholdDays)
    {
        var best = (High: HighWork[0], Threshold: ThresholdWork[0]);
        double BestMiss((int High, int Threshold) w) => Math.Abs(w.High * highDays + w.Threshold * thresholdDays - spare);
        foreach (var high in HighWork)
            foreach (var threshold in ThresholdWork)
                if (BestMiss((high, threshold)) < BestMiss(best))
                    best = (high, threshold);
        return best;
    }

    private static int ToFive(double minutes) => (int)Math.Round(minutes / 5, MidpointRounding.AwayFromZero) * 5;

    private static int UpToFive(double minutes) => (int)Math.Ceiling(minutes / 5) * 5;
}
