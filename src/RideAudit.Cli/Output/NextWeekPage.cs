using RideAudit.Cli.Terminal;
using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Rules;
using RideAudit.Weeks;

namespace RideAudit.Cli.Output;

/// <summary>A layout on one screen.</summary>
internal static class NextWeekPage
{
    private const int TextColumn = 28;

    /// <summary>Writes the layout.</summary>
    /// <param name="page">Where to.</param>
    /// <param name="document">The layout.</param>
    /// <param name="calendar">The calendar file that was written, as typed; null: none.</param>
    public static void Write(Page page, NextWeekDocument document, string? calendar)
    {
        page.Text(Title(page, document), Tone.Strong);
        page.Text($"{document.Rider.Label}{page.Marks.Dot}{Shown.Hours(document.Hours)}, about {Shown.Points(document.ExpectedStress)} of training stress", Tone.Quiet);
        page.Blank();
        foreach (var day in document.Days)
            Day(page, day);
        if (!document.Days.IsEmpty)
            page.Blank();
        foreach (var note in document.Notes)
            page.Text(note);
        Judged(page, document);
        page.Text(document.Cautions[0] + " " + document.Cautions[^2], Tone.Quiet);
        if (calendar is not null)
            page.Text("Wrote " + calendar, Tone.Strong);
    }

    private static string Title(Page page, NextWeekDocument document)
    {
        var title = $"A layout for the week of {Shown.FullDate(document.StartsOn)}";
        if (document.IsoWeek is { } iso)
            title += $"{page.Marks.Dot}ISO week {Shown.Number(iso.Number)}";
        return document.Exception is { } exception ? $"{title}{page.Marks.Dot}{Words.Of(exception)} week" : title;
    }

    private static void Day(Page page, LayoutDayEntry day)
    {
        var time = day.Minutes > 0 ? Shown.TableLength(day.Minutes * 60) : "";
        var tone = day.Kind is DayKind.High or DayKind.Threshold ? Tone.Strong : day.Minutes > 0 ? Tone.Plain : Tone.Quiet;
        var lead = $"{Wrap.Pad(Shown.ShortDay(day.Date), 8)}{Wrap.Pad(day.KindInWords, 11)}{Wrap.PadLeft(time, 7)}  ";
        page.Hanging(new Piece(lead, tone), day.Minutes > 0 || day.Exception is not null ? day.Sentence : "", column: TextColumn);
    }

    private static void Judged(Page page, NextWeekDocument document)
    {
        if (document.Findings.IsDefaultOrEmpty)
            return;
        var counts = new[] { Verdict.Broken, Verdict.Watch, Verdict.Kept, Verdict.NotJudged }
            .Select(v => (Verdict: v, Count: document.Findings.Count(f => f.Verdict == v)))
            .Where(c => c.Count > 0)
            .Select(c => $"{c.Count} {Words.Of(c.Verdict)}");
        page.Text($"Ridden exactly so, the rules would say: {string.Join(", ", counts)}.");
        foreach (var finding in document.Findings.Where(f => f.Verdict is Verdict.Broken or Verdict.Watch).OrderByDescending(f => f.Verdict))
            page.Hanging(new Piece(page.Marks.Of(finding.Verdict) + " ", Marks.ToneOf(finding.Verdict)), $"{finding.Rule}: {finding.Sentence}");
    }
}
