using RideAudit.Cli.Terminal;
using RideAudit.Document;
using RideAudit.Document.Notes;
using RideAudit.Formatting;

namespace RideAudit.Cli.Output;

/// <summary>The review on one screen: page one in the same words.</summary>
internal static class Summary
{
    private const int WideEnoughForDetails = 120;

    /// <summary>Writes the summary.</summary>
    /// <param name="document">The review.</param>
    /// <param name="written">Files that were written, as typed.</param>
    public static void Write(Page page, ReviewDocument document, IReadOnlyList<string> written)
    {
        Head(page, document);
        page.Blank();
        WeekStrip.Write(page, document);
        Split(page, document);
        page.Text(Figures(document));
        if (document.Week.Planned is not null)
            page.Line([new("Planned and ridden", Tone.Strong)]);
        PlannedLines.Changed(page, document.Week);
        ToChange(page, document, details: page.TerminalWidth >= WideEnoughForDetails);
        Held(page, document);
        Notices(page, document);
        if (!document.Summary.Cautions.IsDefaultOrEmpty)
            page.Text(document.Summary.Cautions[0], Tone.Quiet);
        if (written.Count > 0)
            page.Text("Wrote " + string.Join(", ", written), Tone.Strong);
    }

    /// <summary>Who, which week, and the verdict.</summary>
    public static void Head(Page page, ReviewDocument document)
    {
        var dot = page.Marks.Dot;
        var week = document.Week;
        var line = $"Week of {Shown.FullDate(week.StartsOn)}";
        if (week.IsoWeek is { } iso)
            line += $"{dot}ISO week {Shown.Number(iso.Number)}";
        line += week.Finished ? ", finished" : ", unfinished";
        if (week.PlanWeek is { } number)
            line += week.PlanWeeks is { } of ? $"{dot}week {number} of {of}" : $"{dot}week {number}";
        if (week.Exception is { } exception)
            line += $"{dot}{Words.Of(exception)} week";
        page.Text(line, Tone.Quiet);
        page.Text(Rider(document.Rider, week.Planned?.Hours, dot), Tone.Quiet);
        page.Blank();
        page.Text(document.Summary.Headline, Tone.Strong);
        page.Text(document.Summary.Subline);
        if (document.Note is { } note)
        {
            page.Blank();
            page.Text(NoteReader.Plain(note), indent: 2);
        }
    }

    /// <summary>The week's sums in one sentence.</summary>
    public static string Figures(ReviewDocument document)
    {
        var week = document.Week;
        var ridden = (week.Planned?.Hours ?? document.Rider.PlannedHours) is { } planned ? $"{Shown.Number(week.Hours, 1)} of {Shown.Hours(planned)}" : Shown.Hours(week.Hours);
        var asked = week.LongRideAskedSeconds is { } length ? $" of {Shown.Length(length)}" : "";
        return $"{ridden}, stress {Shown.Number(week.Stress)}, chronic load {Shown.Number(week.ChronicLoad)}, "
            + $"ramp {Shown.Signed(week.RampPerWeek, 1)}, longest {Shown.Length(week.LongestRideSeconds)}{asked}";
    }

    private static string Rider(RiderEntry rider, double? plannedWeek, string dot)
    {
        var line = rider.Label;
        if (rider.Tier is { } tier)
            line += $"{dot}{Words.Of(tier)} volume";
        if (plannedWeek is { } ofWeek)
            line += $", {Shown.Hours(ofWeek)} planned this week";
        else if (rider.PlannedHours is { } hours)
            line += $", {Shown.Hours(hours)} planned{(rider.PlannedHoursFromHistory ? " (mean of the weeks before)" : "")}";
        return line;
    }

    private static void Split(Page page, ReviewDocument document)
    {
        if (document.Week.SplitByTime is not { } split)
            return;
        var intended = document.Week.IntendedLowShare is { } share
            ? $"  intended {Shown.Share(share)} low" + (document.Week.SplitTolerance is { } t ? $" ±{Shown.Joint}{Shown.Number(100 * t)}" : "")
            : "";
        var text = $"low {Shown.Share(split.Low)}, middle {Shown.Share(split.Middle)}, high {Shown.Share(split.High)}";
        var cells = Math.Max(10, page.Measure - 2 - Cells.Of(page.Marks.Show(text + intended)) - 1);
        var low = (int)Math.Round(split.Low * cells);
        var high = Math.Min(cells - low, (int)Math.Round(split.High * cells));
        var bands = page.Marks.Bands;
        page.Line(
        [
            new(new string(bands.Low, low), Tone.LowBand),
            new(new string(bands.Middle, cells - low - high), Tone.MiddleBand),
            new(new string(bands.High, high), Tone.HighBand),
            "  " + text,
            new(intended, Tone.Quiet),
        ]);
    }

    private static void ToChange(Page page, ReviewDocument document, bool details)
    {
        if (document.Summary.ToChange.IsDefaultOrEmpty)
            return;
        page.Blank();
        page.Line([new("To change", Tone.Strong)]);
        var number = 0;
        foreach (var advice in document.Summary.ToChange)
        {
            number++;
            var verdict = advice.Verdict;
            page.Hanging(new Piece($"{number} {page.Marks.Of(verdict)} ", Marks.ToneOf(verdict)), advice.Title);
            if (details)
                page.Text(advice.Detail, Tone.Quiet, indent: 4);
        }
    }

    // Two lines at most: the whole list is in the PDF and the text.
    private static void Held(Page page, ReviewDocument document)
    {
        var held = document.Summary.Held;
        if (held.IsDefaultOrEmpty)
            return;
        const string lead = "What held  ";
        var shown = held.Length;
        while (shown > 1 && Wrap.Lines(HeldText(page, held, shown), page.Measure - lead.Length).Count() > 2)
            shown--;
        page.Hanging(new Piece(lead, Tone.Strong), HeldText(page, held, shown));
    }

    private static string HeldText(Page page, IReadOnlyList<string> held, int shown)
    {
        var text = string.Join(page.Marks.Dot, held.Take(shown));
        return shown < held.Count ? $"{text}{page.Marks.Dot}{held.Count - shown} more" : text;
    }

    // What finds no room is counted.
    private static void Notices(Page page, ReviewDocument document)
    {
        var shown = document.ForOnePage();
        if (document.Notices.IsEmpty)
            return;
        foreach (var notice in shown)
            NoticeLine.Write(page, notice);
        var rest = document.Notices.Length - shown.Count;
        if (rest > 0)
            page.Text($"{Shown.Tally(rest, shown.Count > 0 ? "other notice" : "notice")} about the data: in the PDF, and with --text.", Tone.Quiet);
    }
}
