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
    private const double LongShareOfWeek = 0.35;
    private const int MostLongMinutes = 300;
    private const double HighWorkPerHour = 4.7;
    private const double ThresholdWorkPerHour = 6.2;
    private static readonly int[] HighWork = [15, 20, 25, 30, 35];
    private static readonly int[] ThresholdWork = [20, 30, 40, 50, 60];

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
        var (high, threshold) = Work(spare, minutes / 60, highDays, thresholdDays);
        return new NextWeekSizes(
            ToFive(minutes),
            lighter ? 0 : LongRide(limits, past, minutes),
            new PlannedDay(DayKind.High, ToFive(25 + high + 4 * (high / 5 - 1)), high),
            new PlannedDay(DayKind.Threshold, ToFive(25 + threshold + 4 * (threshold / 10 - 1)), threshold));
    }

    // The length asked for, more in a big week, and never further than the jump rule lets the longest ride of late grow.
    private static int LongRide(Limits limits, IReadOnlyList<WeekFacts> past, double weekMinutes)
    {
        var asked = UpToFive(limits.LongRideHours * 60);
        var wanted = Math.Max(asked, Math.Min(ToFive(weekMinutes * LongShareOfWeek), MostLongMinutes));
        if (past.Count * 7 < limits.JumpDays)
            return wanted;
        var longest = past.TakeLast(limits.JumpDays / 7).Select(w => w.LongestRideSeconds / 60).DefaultIfEmpty(0).Max();
        var atMost = Math.Max(limits.JumpLeastMinutes, Math.Floor(longest * limits.JumpRatio / 5) * 5);
        return (int)Math.Min(wanted, atMost);
    }

    // Work that brings the week's split to what the plan intends, and in one ride no more than its hours carry (common practice, no source).
    private static (int High, int Threshold) Work(double spare, double hours, int highDays, int thresholdDays)
    {
        var best = (High: HighWork[0], Threshold: ThresholdWork[0]);
        double Miss((int High, int Threshold) w) => Math.Abs(w.High * highDays + w.Threshold * thresholdDays - spare);
        foreach (var high in HighWork.Where(w => w <= HighWorkPerHour * hours))
            foreach (var threshold in ThresholdWork.Where(w => w <= ThresholdWorkPerHour * hours))
                if (Miss((high, threshold)) < Miss(best))
                    best = (high, threshold);
        return best;
    }

    private static int ToFive(double minutes) => (int)Math.Round(minutes / 5, MidpointRounding.AwayFromZero) * 5;

    private static int UpToFive(double minutes) => (int)Math.Ceiling(minutes / 5) * 5;
}
