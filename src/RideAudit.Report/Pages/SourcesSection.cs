using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;
using RideAudit.Report.Words;

namespace RideAudit.Report.Pages;

/// <summary>The numbered sources, the method in five lines, and what should be known of the data.</summary>
/// <param name="marks">The sources.</param>
/// <param name="width">Width, pt.</param>
/// <param name="appendix">The notices, every source and the method stand in full further on.</param>
internal sealed class SourcesSection(ReviewDocument review, SourceMarks marks, FontSet fonts, float width, bool appendix)
{
    private const int MostNotices = 4;
    private static readonly TextStyle TinyStrong = Styles.SmallStrong with { Size = Styles.Tiny.Size };

    /// <summary>The section's blocks.</summary>
    public IEnumerable<Block> Blocks()
    {
        if (!appendix)
        {
            foreach (var notice in Notices())
                yield return notice;
        }

        var practice = marks.AnyPractice ? $"{SourceMarks.Practice}{Shown.Joint}common practice, no source. " : "";
        yield return Paragraph("Sources", practice + string.Join(' ', marks.Numbered), 6);
        yield return Paragraph("The method", string.Join(' ', Method()), 2);
    }

    private TextBlock Paragraph(string head, string text, float gap) =>
        new(fonts, [new Span(head + "  ", TinyStrong), new Span(text, Styles.Tiny)], width) { SpaceBefore = gap, Outline = head };

    private IEnumerable<Block> Notices()
    {
        var scripts = fonts.Lacking([review.Rider.Label, review.Note ?? "", .. review.Rides.Select(ride => ride.File)]).Select(writing => writing.Advice);
        NoticeEntry[] worst = [.. review.Notices.Where(notice => !IsToldOfARide(notice)).OrderByDescending(notice => notice.Unusable)];
        var told = worst.Take(MostNotices).Select(notice => notice.File is { } file ? $"{file}: {notice.Sentence}" : notice.Sentence);
        string[] all = [.. scripts, .. told, .. worst.Length > MostNotices ? [$"{Shown.Tally(worst.Length - MostNotices, "other notice")}: in the appendix (--appendix)."] : Array.Empty<string>()];
        if (all.Length > 0)
            yield return Paragraph("The data", string.Join(' ', all), 6);
    }

    // A strip says what is remarked of its ride.
    private bool IsToldOfARide(NoticeEntry notice) =>
        review.Rides.Any(ride => ride.File == notice.File && RideTable.HasStrip(ride) && ride.Remarks.Contains(notice.Sentence));

    private IEnumerable<string> Method()
    {
        if (DataWords.Cuts(review) is { Length: > 0 } cuts)
            yield return $"Bands: {cuts}.";
        yield return $"Stress: hours × ratio squared ×{Shown.Joint}100; without power from heart rate or rating.";
        yield return "A hard ride holds sustained time near or above threshold; a day takes its hardest ride.";
        yield return $"Chronic load: daily stress in a mean that fades over 42{Shown.Joint}days; ramp: its change in the week.";
        yield return $"As of {Shown.FullDate(review.AsOf)}.";
    }
}
