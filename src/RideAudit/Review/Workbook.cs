using System.Collections.Immutable;
using NodaTime;
using RideAudit.Figures;
using RideAudit.Ingest;
using RideAudit.Plan;
using RideAudit.Rides;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Review;

/// <summary>Everything computed from a folder up to one week: rides, figures, weeks, the plan in force.</summary>
internal sealed record Workbook
{
    private const int DaysWithoutRides = 28;

    public required LocalDate AsOf { get; init; }

    /// <summary>The as-of date was moved to the last week ridden.</summary>
    public required bool AsOfFromLastRide { get; init; }

    public required ImmutableArray<Ride> Rides { get; init; }

    public required ImmutableArray<RideFigures> Figures { get; init; }

    /// <summary>Every week from the first ride's to the judged one.</summary>
    public required ImmutableArray<WeekFacts> Weeks { get; init; }

    public required PlanInForce Plan { get; init; }

    /// <summary>The rider file and the plan tables over each other.</summary>
    public required PlanCalendar Calendar { get; init; }

    public WeekFacts Week => Weeks[^1];

    public ImmutableArray<WeekFacts> Before => Weeks[..^1];

    /// <summary>Opens the workbook at the week asked for; null without a ride before the as-of date.</summary>
    public static Workbook? Open(FolderContent folder, Rider rider, ReviewRequest request)
    {
        var all = AllRides(folder, rider);
        var (asOf, moved) = AsOfDate(all, rider, request);
        var firstDay = rider.Plan.WeekStartsOn;
        var judged = request.WeekOf is { } day ? WeekTable.StartOf(day, firstDay) : WeekTable.StartOf(asOf, firstDay).PlusDays(-7);
        ImmutableArray<Ride> rides = [.. all.Where(r => r.Date < asOf && r.Date < judged.PlusDays(7))];
        if (!all.Any(r => r.Date < asOf))
            return null;
        var calendar = new PlanCalendar(rider, folder.Plan);
        rider = calendar.RiderWithEvents;
        var plan = PlanInForce.For(rider, HoursBefore(rides, rider, judged), judged, folder.Plan);
        var figures = request.Kept?.Build(rides, rider, plan.Limits) ?? FigureBuilder.Build(rides, rider, plan.Limits);
        return new Workbook
        {
            AsOf = asOf,
            AsOfFromLastRide = moved,
            Rides = rides,
            Figures = figures,
            Plan = plan,
            Calendar = calendar,
            Weeks = WeeksOf(figures, Others(folder, asOf), firstDay, judged, asOf, plan.Limits, calendar),
        };
    }

    private static ImmutableArray<WeekFacts> WeeksOf(
        ImmutableArray<RideFigures> figures, OtherActivity[] others, IsoDayOfWeek firstDay, LocalDate judged, LocalDate asOf, Limits limits, PlanCalendar calendar)
    {
        using var phase = Phase.Begin("weeks");
        return WeekTable.Build(figures, others, firstDay, judged, asOf, limits, start => calendar.Week(start).Leading);
    }

    /// <summary>The day after the last week ridden, where that is what is looked back from; null where it is not.</summary>
    public static LocalDate? StopAtLastRide(FolderContent folder, Rider rider, ReviewRequest request)
    {
        var (asOf, moved) = AsOfDate(AllRides(folder, rider), rider, request with { WeekOf = null });
        return moved ? asOf : null;
    }

    private static ImmutableArray<Ride> AllRides(FolderContent folder, Rider rider)
    {
        using var phase = Phase.Begin("joining");
        var gap = LimitCatalogue.Override(new Limits(), rider.Plan.LimitOverrides).JoinGapMinutes;
        return RideLogMerger.Merge(RideJoiner.Join(folder.Recordings, gap), folder.LoggedRides);
    }

    private static (LocalDate AsOf, bool Moved) AsOfDate(ImmutableArray<Ride> rides, Rider rider, ReviewRequest request)
    {
        if (request.AsOf is { } asked)
            return (asked, false);
        var before = rides.Where(r => r.Date < request.Today).ToArray();
        if (before.Length == 0 || request.WeekOf is not null)
            return (request.Today, false);
        var last = before.Max(r => r.Date);
        return Period.DaysBetween(last, request.Today) > DaysWithoutRides
            ? (WeekTable.StartOf(last, rider.Plan.WeekStartsOn).PlusDays(7), true)
            : (request.Today, false);
    }

    private static List<WeekHours> HoursBefore(ImmutableArray<Ride> rides, Rider rider, LocalDate judged)
    {
        var byWeek = rides.ToLookup(r => WeekTable.StartOf(r.Date, rider.Plan.WeekStartsOn), r => r.TimerSeconds);
        var weeks = new List<WeekHours>();
        if (rides.IsEmpty)
            return weeks;
        var firstRideOn = rides.Min(r => r.Date);
        var firstWeek = WeekTable.StartOf(firstRideOn, rider.Plan.WeekStartsOn);
        for (var start = firstWeek; start < judged; start = start.PlusDays(7))
        {
            var excepted = !WeekExceptions.For(rider.Exceptions, start).None;
            weeks.Add(new WeekHours(start, byWeek[start].Sum() / 3600, excepted, start == firstWeek ? firstRideOn : null));
        }
        return weeks;
    }

    private static OtherActivity[] Others(FolderContent folder, LocalDate asOf) =>
        [.. folder.Recordings
            .Where(r => r.Sport == RideSport.Other && r.StartsAt.Date < asOf)
            .Select(r => new OtherActivity(r.File, r.StartsAt.Date, r.TimerSeconds))];
}
