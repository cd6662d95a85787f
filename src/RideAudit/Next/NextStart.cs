using System.Collections.Immutable;
using NodaTime;
using RideAudit.Ingest;
using RideAudit.Plan;
using RideAudit.Review;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Next;

/// <summary>Where a layout begins: the weeks behind it, and the days of a week begun that are over.</summary>
internal sealed record NextStart
{
    public required LocalDate AsOf { get; init; }

    /// <summary>The first day of the first week laid out.</summary>
    public required LocalDate StartsOn { get; init; }

    /// <summary>Every week before it, oldest first; empty without any ride.</summary>
    public required ImmutableArray<WeekFacts> Past { get; init; }

    /// <summary>Its days that are over, in order.</summary>
    public ImmutableArray<DayFacts> Ridden { get; init; } = [];

    /// <summary>The rider's time zone, by its IANA name.</summary>
    public string Zone { get; init; } = "";

    /// <summary>Threshold power as estimated from the recordings; null where the rider file says it, or nothing does.</summary>
    public Watts? Estimate { get; init; }

    public bool IsEstimated => Estimate is not null;

    /// <summary>The rider with what the recordings say of the threshold, so that sessions are told in watts.</summary>
    public Rider Known(Rider rider) => Estimate is { } power
        ? rider with { Thresholds = [.. rider.Thresholds, new ThresholdEntry(StartsOn.PlusDays(-1), power, null)] }
        : rider;

    /// <summary>The start for a request. Rides on the as-of date itself count here: what is ridden is not laid out again.</summary>
    /// <param name="folder">What the folder holds.</param>
    /// <param name="rider">The rider file.</param>
    /// <param name="request">From when it is looked.</param>
    /// <param name="fromWeekBegun">Without any ride the week begun counts, its days over as not ridden; else the next week is the first.</param>
    public static NextStart Of(FolderContent folder, Rider rider, ReviewRequest request, bool fromWeekBegun = false)
    {
        var firstDay = rider.Plan.WeekStartsOn;
        if (Workbook.Open(folder, rider, request) is not { } reviewed)
            return First(folder, rider, request, fromWeekBegun);
        var asOf = reviewed.AsOf;
        var startsOn = reviewed.Week.StartsOn.PlusDays(7);
        var estimate = rider.Thresholds.Any(t => t.Power is not null) ? null : reviewed.Figures.LastOrDefault(f => f.Threshold is not null)?.Threshold?.Power;
        var start = new NextStart { AsOf = asOf, StartsOn = startsOn, Past = reviewed.Weeks, Zone = folder.TimeZone, Estimate = estimate };
        if (WeekTable.StartOf(asOf, firstDay) != startsOn)
            return start;
        var begun = Workbook.Open(folder, rider, request with { AsOf = asOf.PlusDays(1), WeekOf = asOf });
        var over = Period.DaysBetween(startsOn, asOf);
        if (begun is null)
            return start;
        over += begun.Week.Days[over].Rides.IsEmpty ? 0 : 1;
        return over == 7
            ? start with { Past = begun.Weeks, StartsOn = startsOn.PlusDays(7) }
            : start with { Past = begun.Before, Ridden = begun.Week.Days[..over] };
    }

    // Without rides: the week that begins on the day asked, else the next one.
    private static NextStart First(FolderContent folder, Rider rider, ReviewRequest request, bool fromWeekBegun)
    {
        var asOf = request.AsOf ?? request.Today;
        var week = WeekTable.StartOf(asOf, rider.Plan.WeekStartsOn);
        var start = new NextStart { AsOf = asOf, StartsOn = week == asOf || fromWeekBegun ? week : week.PlusDays(7), Past = [], Zone = folder.TimeZone };
        return fromWeekBegun
            ? start with { Ridden = [.. Enumerable.Range(0, Period.DaysBetween(week, asOf)).Select(i => DayFacts.Build(week.PlusDays(i), [], 0, new Limits()))] }
            : start;
    }
}
