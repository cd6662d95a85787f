using System.Collections.Immutable;
using RideAudit.Document;
using RideAudit.Figures;
using RideAudit.Formatting;
using RideAudit.Ingest;
using RideAudit.Rides;

namespace RideAudit.Review;

/// <summary>Collects what the reader should know about the data: files, repairs, assumptions.</summary>
internal static class NoticeWriter
{
    public static ImmutableArray<NoticeEntry> Write(FolderContent folder, Workbook? book)
    {
        var notices = ImmutableArray.CreateBuilder<NoticeEntry>();
        notices.AddRange(NoticeBound.Of(folder.Notices, book is null ? null : n => DateOf(n) is not null && Entry(n).IsNear(book.Week.StartsOn.PlusDays(-7 * NoticeEntry.WeeksLookedBack), book.Week.EndsOn)).Select(Entry));
        if (folder.TimeZoneIsTheMachines && folder.Recordings.Any(r => r.OffsetFrom == OffsetSource.MachineZone))
            notices.Add(Assumption($"No time zone in the rider file: this machine’s ({folder.TimeZone}) decides which day a ride belongs to."));
        if (book is null)
            return notices.ToImmutable();
        if (book.AsOfFromLastRide)
            notices.Add(Assumption($"No ride in the last four weeks: the last week ridden is judged, as of {Shown.Iso(book.AsOf)}."));
        if (book.Plan.PlannedHoursFromHistory)
            notices.Add(Assumption($"No planned hours in the rider file: {Shown.Hours(book.Plan.PlannedHours)} is the mean of the {Before(book.Plan.HistoryWeeks)} before."));
        Thresholds(book, notices);
        if (UncoveredHours.Sentence(book.Week) is { } uncovered)
            notices.Add(new NoticeEntry(null, "no stress", null, uncovered));
        foreach (var ride in book.Week.Rides)
            notices.AddRange(ride.Remarks.Select(remark => new NoticeEntry(ride.File, "repair", null, remark)));
        return notices.ToImmutable();
    }

    /// <summary>The rows end with the last week ridden.</summary>
    public static NoticeEntry Stopped(NodaTime.LocalDate asOf) =>
        Assumption($"No ride in the last four weeks: the weeks end with the last one ridden, as of {Shown.Iso(asOf)}; --as-of goes further.");

    private static void Thresholds(Workbook book, ImmutableArray<NoticeEntry>.Builder notices)
    {
        var sources = book.Week.Rides.Select(r => r.Threshold?.From).ToHashSet();
        if (sources.Contains(ThresholdSource.Estimate))
            notices.Add(Assumption($"Threshold power (FTP) is an estimate, {Shown.Percent(95)} of the best 20\u00A0min of the last 90 days; against critical power such estimates differ by 7 ± {Shown.Watts(13)} (Karsten et al. 2021). No rule that rests on it is worse than watch."));
        if (sources.Contains(ThresholdSource.Recording))
            notices.Add(Assumption("No threshold power in the rider file: the value stored in the recordings is used."));
        if (sources.Contains(ThresholdSource.RiderFileFirstEntry))
            notices.Add(Assumption("Rides before the rider file’s first threshold are measured against that first one: set its `from` earlier, or add the threshold of that time before it."));
        if (book.Week.Rides.Any(r => r.HeartRateLoad is not null && r.StressFrom == StressSource.HeartRate) && book.Plan.Rider.Sex == Plan.Sex.Unset)
            notices.Add(Assumption("Heart-rate load uses the mean of the constants for women and men, as the rider file does not say which."));
    }

    private static NoticeEntry Entry(FileNotice notice) => notice.OtherFiles > 0
        ? new NoticeEntry(null, notice.Problem, null, notice.Sentence, notice.Unusable) { OtherFiles = notice.OtherFiles }
        : new NoticeEntry(notice.File, notice.Problem, notice.Kept, notice.Sentence, notice.Unusable) { Date = DateOf(notice) };

    private static NodaTime.LocalDate? DateOf(FileNotice notice) => NameDates.In(notice.File)?.At.Date;

    private static NoticeEntry Assumption(string sentence) => new(null, "assumption", null, sentence);

    private static string Before(int weeks) => weeks == 1 ? "week" : Shown.Count(weeks, "week");
}
