using System.Collections.Immutable;
using NodaTime;
using RideAudit.Document;
using RideAudit.Figures;
using RideAudit.Formatting;
using RideAudit.Plan;
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
        var asksLong = plan.Tier is not null && week.Exception is not (ExceptionKind.Lighter or ExceptionKind.Away);
        return new WeekEntry
        {
            StartsOn = week.StartsOn,
            IsoWeek = IsoWeek.Name(week.StartsOn),
            Finished = week.Finished,
            Hours = week.Hours.To(2),
            RideCount = week.RideCount,
            Stress = week.Stress.To(1),
            StressUnknownHours = week.UnknownStressHours.To(2),
            WorkKj = rides.Any(r => r.WorkKj is not null) ? rides.Sum(r => r.WorkKj ?? 0).To(0) : null,
            BandSeconds = week.Bands.Entry(),
            ZoneSeconds = zones.Entry(),
            SplitByTime = week.Bands.Split(),
            SplitBySession = Sessions(rides),
            PolarizationIndex = IntensityStructure.PolarizationIndex(week.Bands).To(2),
            Structure = IntensityStructure.Word(week.Bands),
            IntendedLowShare = judgesSplit ? plan.Limits.IntendedLowShare.To(4) : null,
            SplitTolerance = judgesSplit ? plan.Limits.SplitTolerance.To(4) : null,
            LongestRideSeconds = week.LongestRideSeconds.Whole(),
            LongRideAskedSeconds = asksLong ? (plan.Limits.LongRideHours * 3600).Whole() : null,
            OtherActivityHours = (week.OtherSeconds / 3600).To(2),
            Exception = week.Exception is { } exception ? Words.Of(exception) : null,
            AcuteLoad = week.LoadAfter.Acute.To(1),
            ChronicLoad = week.LoadAfter.Chronic.To(1),
            RampPerWeek = week.Ramp.To(1),
            AcuteChronicRatio = week.LoadAfter.Ratio.To(2),
            SettlingIn = week.SettlingIn,
            Monotony = week.Monotony.To(2),
            Strain = week.Strain.To(1),
            StressMeanBefore = before.IsEmpty ? null : before.TakeLast(WeeksOfStressMean).Average(w => w.Stress).To(1),
            PlanWeek = PlanWeek(week, plan.Rider.Plan),
            PlanWeeks = PlanWeek(week, plan.Rider.Plan) is null ? null : plan.Rider.Plan.Weeks,
            Days = [.. week.Days.Select((day, i) => Day(day, i < week.DaysThatCount))],
        };
    }

    public static HistoryEntry History(WeekFacts week) => new()
    {
        StartsOn = week.StartsOn,
        Hours = week.Hours.To(2),
        Stress = week.Stress.To(1),
        BandSeconds = week.Bands.Entry(),
        ChronicLoad = week.LoadAfter.Chronic.To(1),
        AcuteLoad = week.LoadAfter.Acute.To(1),
        RampPerWeek = week.Ramp.To(1),
        LongestRideSeconds = week.LongestRideSeconds.Whole(),
        Exception = week.Exception is { } exception ? Words.Of(exception) : null,
        SettlingIn = week.SettlingIn,
    };

    private static DayEntry Day(DayFacts day, bool hasBeen) => new()
    {
        Date = day.Date,
        Kind = hasBeen ? Words.Of(day.Kind) : "to come",
        Hours = (day.RideSeconds / 3600).To(2),
        Stress = !day.Rides.IsEmpty && day.Rides.All(r => r.Stress is null) ? null : day.Stress.To(1),
        Rides = [.. day.Rides.Select(r => r.File)],
        OtherActivityHours = (day.OtherSeconds / 3600).To(2),
    };

    private static SessionSplitEntry? Sessions(IReadOnlyCollection<RideFigures> rides)
    {
        var rated = rides.Count(r => r.Kind is not (RideKind.None or RideKind.Unrated));
        if (rated == 0)
            return null;
        var hard = rides.Count(r => r.IsHard);
        return new SessionSplitEntry(((double)(rated - hard) / rated).To(4), ((double)hard / rated).To(4));
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
