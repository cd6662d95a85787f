using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Next;

/// <summary>How long the rides of a layout are, before anything is said of days.</summary>
/// <param name="WeekMinutes">Minutes of the whole week.</param>
/// <param name="LongMinutes">Length of the long ride; 0 for a week without one.</param>
/// <param name="MostMinutes">No ride is longer than this, min.</param>
/// <param name="High">A high day.</param>
/// <param name="Threshold">A threshold day.</param>
internal sealed record NextWeekSizes(int WeekMinutes, int LongMinutes, int MostMinutes, PlannedDay High, PlannedDay Threshold)
{
    private const double LongShareOfWeek = 0.35;
    private const int MostLongMinutes = 300;
    private const double HighWorkPerHour = 4.7;
    private const double ThresholdWorkPerHour = 6.2;
    private const int WeeksOfWork = 4;
    private const int HighRepeat = 5;
    private const int ThresholdRepeat = 10;
    private static readonly int[] HighWork = [15, 20, 25, 30];
    private static readonly int[] ThresholdWork = [20, 30, 40, 50, 60];

    /// <summary>Sizes for a week with so many hard days.</summary>
    /// <param name="plan">The plan to lay out by, with planned hours.</param>
    /// <param name="past">The weeks up to the reviewed one, oldest first.</param>
    /// <param name="highDays">High days.</param>
    /// <param name="thresholdDays">Threshold days.</param>
    /// <param name="lighter">A lighter week: fewer hours, no long ride.</param>
    /// <param name="gentle">The least hard work, for a rider whose weeks before held little.</param>
    public static NextWeekSizes For(PlanInForce plan, IReadOnlyList<WeekFacts> past, int highDays, int thresholdDays, bool lighter, bool gentle)
    {
        var limits = plan.Limits;
        var minutes = plan.PlannedHours!.Value * 60 * (lighter ? limits.LighterWeekFactor : 1);
        var spare = gentle ? 0 : Math.Max(0, 1 - limits.IntendedLowShare - limits.SplitTolerance / 2) * minutes;
        var (high, threshold) = Work(past, spare, minutes / 60, highDays, thresholdDays);
        var most = MostMinutesOf(limits, past);
        return new NextWeekSizes(
            ToFive(minutes),
            lighter ? 0 : LongRide(limits, most, minutes),
            most,
            new PlannedDay(DayKind.High, ToFive(25 + high + 4 * (high / HighRepeat - 1)), high),
            new PlannedDay(DayKind.Threshold, ToFive(25 + threshold + 4 * (threshold / ThresholdRepeat - 1)), threshold));
    }

    // The length asked for, more in a big week, and never further than the jump rule lets the longest ride of late grow.
    private static int LongRide(Limits limits, int most, double weekMinutes)
    {
        var asked = UpToFive(limits.LongRideHours * 60);
        var wanted = Math.Max(asked, ToFive(weekMinutes * LongShareOfWeek));
        return Math.Min(wanted, most);
    }

    private static int MostMinutesOf(Limits limits, IReadOnlyList<WeekFacts> past)
    {
        var longest = past.TakeLast(limits.JumpDays / 7).Select(w => w.LongestRideSeconds / 60).DefaultIfEmpty(0).Max();
        var asked = Math.Max(MostLongMinutes, UpToFive(limits.LongRideHours * 60));
        if (longest <= 0)
            return asked;
        var jump = Math.Max(limits.JumpLeastMinutes, Math.Floor(longest * limits.JumpRatio / 5) * 5);
        return (int)Math.Min(asked, jump);
    }

    // Work that brings the week's split to what the plan intends, in one ride no more than its hours carry,
    // and at most one repeat more than the rider did of late (common practice, no source).
    private static (int High, int Threshold) Work(
        IReadOnlyList<WeekFacts> past, double spare, double hours, int highDays, int thresholdDays)
    {
        var mostHigh = Math.Min(HighWorkPerHour * hours, OneMore(past, RideKind.High, f => f.NearThreshold, HighRepeat, usual: 20, most: 30));
        var mostThreshold = Math.Min(
            ThresholdWorkPerHour * hours, OneMore(past, RideKind.Threshold, f => f.AtThresholdShare, ThresholdRepeat, usual: 30, most: 60));
        var best = (High: HighWork[0], Threshold: ThresholdWork[0]);
        double Miss((int High, int Threshold) w) => Math.Abs(w.High * highDays + w.Threshold * thresholdDays - spare);
        foreach (var high in HighWork.Where(w => w <= mostHigh))
            foreach (var threshold in ThresholdWork.Where(w => w <= mostThreshold))
                if (Miss((high, threshold)) < Miss(best))
                    best = (high, threshold);
        return best;
    }

    private static double OneMore(
        IReadOnlyList<WeekFacts> past, RideKind kind, Func<RideFigures, SustainedTime?> work, int repeat, int usual, int most)
    {
        var minutes = past.TakeLast(WeeksOfWork).Reverse().Select(w => MinutesOf(w, kind, work)).FirstOrDefault(m => m.Length > 0);
        if (minutes is null)
            return usual;
        // The last week that held one, and of several the one in the middle: a race or a fast group ride does not set the next session.
        // Runs are measured on a trailing mean, so a repeat may come out a little short of its length.
        var repeats = Math.Round(minutes[(minutes.Length - 1) / 2] / repeat, MidpointRounding.AwayFromZero);
        return Math.Clamp((repeats + 1) * repeat, usual, most);
    }

    private static double[] MinutesOf(WeekFacts week, RideKind kind, Func<RideFigures, SustainedTime?> work) =>
        [.. week.Rides.Where(r => r.Kind == kind).Select(r => (work(r)?.SustainedSeconds ?? 0) / 60).Where(m => m > 0).Order()];

    private static int ToFive(double minutes) => (int)Math.Round(minutes / 5, MidpointRounding.AwayFromZero) * 5;

    private static int UpToFive(double minutes) => (int)Math.Ceiling(minutes / 5) * 5;
}
