using System.Collections.Immutable;
using NodaTime;
using RideAudit.Document;
using RideAudit.Figures;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Plan.Table;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Review;

/// <summary>Turns week facts into document entries.</summary>
internal static class WeekEntries
{
    private const int WeeksOfStressMean = 4;

    public static WeekEntry Of(WeekFacts week, ImmutableArray<WeekFacts> before, PlanInForce plan)
    {
        var rides = week.Rides.ToArray();
        var zones = rides.Aggregate(default(ZoneSeconds), (sum, r) => sum + r.Zones);
        var judgesSplit = plan.Tier is not null;
        var asksLong = plan.Tier is not null && week.Exception is null;
        var calendar = new PlanCalendar(plan.Rider, PlanTable.Empty);
        return new WeekEntry
        {
            StartsOn = week.StartsOn,
            IsoWeek = IsoWeek.StartingOn(week.StartsOn),
            Finished = week.Finished,
            Hours = week.Hours,
            RideCount = week.RideCount,
            Stress = week.Stress,
            StressUnknownHours = week.UnknownStressHours,
            WorkKj = rides.Any(r => r.WorkKj is not null) ? rides.Sum(r => r.WorkKj ?? 0) : null,
            BandSeconds = week.Bands.Entry(),
            ZoneSeconds = zones.Entry(),
            SplitByTime = week.Bands.Split(),
            SplitBySession = Sessions(rides),
            PolarizationIndex = IntensityStructure.PolarizationIndex(week.Bands),
            Structure = IntensityStructure.Of(week.Bands),
            IntendedLowShare = judgesSplit ? plan.Limits.IntendedLowShare : null,
            SplitTolerance = judgesSplit ? plan.Limits.SplitTolerance : null,
            LongestRideSeconds = week.LongestRideSeconds,
            LongRideAskedSeconds = asksLong ? plan.Limits.LongRideHours * 3600 : null,
            OtherActivityHours = week.OtherSeconds / 3600,
            Exception = week.Exception,
            AcuteLoad = week.LoadAfter.Acute,
            ChronicLoad = week.LoadAfter.Chronic,
            RampPerWeek = week.Ramp,
            AcuteChronicRatio = week.LoadAfter.Ratio,
            SettlingIn = week.SettlingIn,
            Monotony = week.Monotony,
            Strain = week.Strain,
            StressMeanBefore = before.IsEmpty ? null : before.TakeLast(WeeksOfStressMean).Average(w => w.Stress),
            PlanWeek = PlanWeek(week, plan.Rider.Plan),
            PlanWeeks = PlanWeek(week, plan.Rider.Plan) is null ? null : plan.Rider.Plan.Weeks,
            Days = [.. week.Days.Select((day, i) => Day(day, i < week.DaysThatCount) with { Exception = calendar.KindOn(day.Date) })],
        };
    }

    public static HistoryEntry History(WeekFacts week) => new()
    {
        StartsOn = week.StartsOn,
        Hours = week.Hours,
        Stress = week.Stress,
        BandSeconds = week.Bands.Entry(),
        ChronicLoad = week.LoadAfter.Chronic,
        AcuteLoad = week.LoadAfter.Acute,
        RampPerWeek = week.Ramp,
        LongestRideSeconds = week.LongestRideSeconds,
        Exception = week.Exception,
        SettlingIn = week.SettlingIn,
    };

    private static DayEntry Day(DayFacts day, bool hasBeen) => new()
    {
        Date = day.Date,
        Kind = hasBeen ? day.Kind : null,
        Hours = day.RideSeconds / 3600,
        Stress = !day.Rides.IsEmpty && day.Rides.All(r => r.Stress is null) ? null : day.Stress,
        Rides = [.. day.Rides.Select(r => r.File)],
        OtherActivityHours = day.OtherSeconds / 3600,
    };

    private static SessionSplitEntry? Sessions(IReadOnlyCollection<RideFigures> rides)
    {
        var rated = rides.Count(r => r.Kind is not (RideKind.None or RideKind.Unrated));
        if (rated == 0)
            return null;
        var hard = rides.Count(r => r.IsHard);
        return new SessionSplitEntry((double)(rated - hard) / rated, (double)hard / rated);
    }

    private static int? PlanWeek(WeekFacts week, TrainingPlan plan)
    {
        if (plan.Starts is not { } starts)
            return null;
        var first = WeekTable.StartOf(starts, plan.WeekStartsOn);
        var number = Period.DaysBetween(first, week.StartsOn) / 7 + 1;
        return week.StartsOn < first || number > (plan.Weeks ?? int.MaxValue) ? null : number;
    }
}
