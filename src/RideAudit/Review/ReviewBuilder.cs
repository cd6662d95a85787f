using System.Collections.Immutable;
using RideAudit.Document;
using RideAudit.Figures;
using RideAudit.Ingest;
using RideAudit.Plan;
using RideAudit.Rules;
using RideAudit.Rules.Changes;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Review;

/// <summary>Turns what a folder holds into documents. Pure: the same input gives the same document.</summary>
public static class ReviewBuilder
{
    private const int MostHistoryWeeks = 26;

    /// <summary>Reviews one week.</summary>
    /// <param name="folder">What the folder holds.</param>
    /// <param name="rider">The rider file.</param>
    /// <param name="request">Which week, from when, by which rules.</param>
    /// <returns>The review; null when the folder has no usable ride before the as-of date.</returns>
    public static ReviewDocument? Review(FolderContent folder, Rider rider, ReviewRequest request) =>
        Workbook.Open(folder, rider, request) is { } book ? Review(folder, book, request) : null;

    /// <summary>Reviews one week, with what its ride strips draw beside it.</summary>
    /// <param name="folder">What the folder holds.</param>
    /// <param name="rider">The rider file.</param>
    /// <param name="request">Which week, from when, by which rules.</param>
    /// <returns>The review and its traces; null when the folder has no usable ride before the as-of date.</returns>
    public static (ReviewDocument Document, ReviewTraces Traces)? ReviewWithTraces(FolderContent folder, Rider rider, ReviewRequest request)
    {
        if (Workbook.Open(folder, rider, request) is not { } book)
            return null;
        var sources = book.Rides.ToDictionary(r => r.File);
        return (Review(folder, book, request), new ReviewTraces(book.Week.Rides.ToImmutableDictionary(r => r.File, r => RideTracer.Trace(sources[r.File], r))));
    }

    /// <summary>Every ride before the as-of date.</summary>
    /// <param name="folder">What the folder holds.</param>
    /// <param name="rider">The rider file.</param>
    /// <param name="request">From when; the week is not looked at.</param>
    public static RidesDocument Rides(FolderContent folder, Rider rider, ReviewRequest request)
    {
        var book = Workbook.Open(folder, rider, ToTheEnd(request, rider));
        return new RidesDocument(
            "rideaudit-rides/1",
            book is null ? [] : [.. book.Figures.Select(f => RideEntries.Of(f) with { PowerCurveW = request.WithPowerCurves ? PowerCurves.Of(f) : null })],
            NoticeWriter.Write(folder, book));
    }

    /// <summary>Every week from the first ride's to the one that holds the day before the as-of date.</summary>
    /// <param name="folder">What the folder holds.</param>
    /// <param name="rider">The rider file.</param>
    /// <param name="request">From when; the week is not looked at.</param>
    public static WeeksDocument Weeks(FolderContent folder, Rider rider, ReviewRequest request)
    {
        var stop = Workbook.StopAtLastRide(folder, rider, request);
        var book = Workbook.Open(folder, rider, ToTheEnd(request with { AsOf = request.AsOf ?? stop }, rider));
        var weeks = book is null ? null : new PastWeeks(book, folder.Plan);
        return new WeeksDocument(
            "rideaudit-weeks/1",
            book is null ? [] : [.. book.Weeks.Select((w, i) => PlannedEntries.Add(WeekEntries.Of(w, book.Weeks[..i], weeks!.PlanOf(i)), book, rules: null))])
        {
            Notices = stop is { } last ? [NoticeWriter.Stopped(last)] : [],
        };
    }

    /// <summary>The rules in force for a rider.</summary>
    /// <param name="rider">The rider file; without planned hours the limits that need a tier are those of no tier.</param>
    /// <param name="book">The rules; null: the method’s.</param>
    public static RulesDocument Rules(Rider rider, RuleBook? book = null)
    {
        var plan = PlanInForce.For(rider, []);
        return new RulesDocument(
            "rideaudit-rules/1",
            [.. (book ?? RuleBook.Standard).All.Select(r => new RuleEntry(r.Id, r.LimitsOf(plan), r.Evidence, r.Source, r.Ask(plan)))]);
    }

    /// <summary>The document of an opened workbook.</summary>
    internal static ReviewDocument Review(FolderContent folder, Workbook book, ReviewRequest request)
    {
        var week = new WeekUnderReview(book.Week, new Past(book.Before), book.Plan);
        var weeks = new PastWeeks(book, folder.Plan);
        var findings = Timed("rules", () => Streaks.Count(request.Rules.Judge(week), request.Rules, weeks));
        var change = Timed("change", () => ChangeSearch.Find(week, findings, request.Rules));
        findings = Remedies.With(findings, change, week, request.Rules);
        var notices = NoticeWriter.Write(folder, book);
        var entry = WeekEntries.Of(book.Week, book.Before, book.Plan) with { Spans = [.. findings.SelectMany(f => f.Spans).Select(Span)] };
        entry = PlannedEntries.Add(entry, book, request.Rules);
        var plan = book.Plan.Rider.Plan;
        return new ReviewDocument
        {
            AsOf = book.AsOf,
            Rider = Rider(book.Plan, folder),
            Week = entry,
            History = History(weeks),
            RuleHistory = Timed("rules of the weeks before", () => RuleHistory.Write(weeks, findings, request.Rules)),
            Progress = Timed("trend", () => ProgressWriter.Write(book)),
            LastWeeks = LastWeeks.Of(book),
            NextEvent = LastWeeks.NextEvent(book.Calendar, book.AsOf),
            Rides = [.. book.Week.Rides.Select(r => RideEntries.Of(r, withStretches: true))],
            Findings = findings,
            SmallestChange = change,
            Thresholds = Timed("thresholds", () => ThresholdsWriter.Write(book.Figures, book.Week.EndsOn)),
            Notices = notices,
            Summary = SummaryWriter.Write(week, entry, findings, change, notices),
            BandCutsPercent = [plan.LowerBandCutPercent, plan.UpperBandCutPercent],
            HeartRateCutsPercent = HeartRateCuts(book),
            Note = request.Note ?? NoteOfWeek.Choose(folder.Notes, book.Week.StartsOn, IsLatest(folder, book.Week)),
        };
    }

    private static T Timed<T>(string phase, Func<T> work)
    {
        using var timed = Phase.Begin(phase);
        return work();
    }

    private static ImmutableArray<HistoryEntry> History(PastWeeks weeks)
    {
        var first = Math.Max(0, weeks.Count - MostHistoryWeeks);
        return [.. Enumerable.Range(first, weeks.Count - first).Select(week => WeekEntries.History(weeks[week]) with { PlannedHours = HoursAsked(weeks.PlanOf(week)) })];
    }

    private static double? HoursAsked(PlanInForce plan) => plan.AskedHours ?? plan.PlannedHours;

    private static ImmutableArray<double>? HeartRateCuts(Workbook book) =>
        book.Week.Rides.FirstOrDefault(r => r.MeasuredBy == MeasureSource.HeartRate)?.Cuts is { } cuts ? [cuts.LowerPercent, cuts.UpperPercent] : null;

    /// <summary>No week after it is over and ridden in: the one just begun may have rides already.</summary>
    private static bool IsLatest(FolderContent folder, WeekFacts week)
    {
        var later = week.StartsOn.PlusDays(14);
        return !folder.Recordings.Any(r => r.StartsAt.Date >= later) && !folder.LoggedRides.Any(r => r.Date is { } date && date >= later);
    }

    private static SpanEntry Span(HardSpan span) => new()
    {
        From = span.Earlier.EndsAt,
        To = span.Later.StartsAt,
        FromRide = span.Earlier.File,
        ToRide = span.Later.File,
        Hours = span.Hours,
        Verdict = span.Verdict,
    };

    private static ReviewRequest ToTheEnd(ReviewRequest request, Rider rider)
    {
        var asOf = request.AsOf ?? request.Today;
        return request with { AsOf = asOf, WeekOf = asOf.PlusDays(-1) };
    }

    private static RiderEntry Rider(PlanInForce plan, FolderContent folder) => new()
    {
        Label = plan.Rider.Label,
        Tier = plan.Tier,
        Experience = plan.Rider.Experience,
        TimeZone = folder.TimeZone,
        PlannedHours = HoursAsked(plan) is > 0 and var hours ? hours : null,
        PlannedHoursFromHistory = plan.PlannedHoursFromHistory,
    };
}
