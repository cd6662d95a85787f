namespace RideAudit.Rules;

/// <summary>How much more riding a week had room for, so that no rule asks for riding where another asks for less of it.</summary>
internal static class RoomForMore
{
    /// <summary>Riding that could have been added before the week's hours or their growth were worth a look, s; 0 or more.</summary>
    public static double Seconds(JudgedWeek week)
    {
        if (ReturnToRiding.AsksForLess(week))
            return 0;
        var most = double.PositiveInfinity;
        if (week.PlannedHours is { } planned)
            most = planned * (1 + week.Limits.HoursWatchMargin);
        if (week.Background.OrdinaryMean is { Hours: > 0 and var mean })
            most = Math.Min(most, mean * week.Limits.GrowthRatio);
        return Math.Max(0, 3600 * most - week.Week.RideSeconds);
    }

    /// <summary>The review says that the week had fewer hours than planned.</summary>
    public static bool IsAskedFor(JudgedWeek week) => WeeklyHours.IsOff(week) && week.Week.Hours < week.PlannedHours;

    /// <summary>The review says that the week, or a ride of it, was longer than it should have been, or the rider has just come back.</summary>
    public static bool IsRefused(JudgedWeek week) =>
        week.JustBack || ReturnToRiding.AsksForLess(week) || WeeklyGrowth.IsWatched(week) || LongestRideJump.IsWatched(week) || (WeeklyHours.IsOff(week) && week.Week.Hours > week.PlannedHours);
}
