using NodaTime;
using RideAudit.Cli.Terminal;
using RideAudit.Document;
using RideAudit.Formatting;

namespace RideAudit.Cli.Output;

/// <summary>The seven days side by side, with the spans between hard rides above them.</summary>
internal static class WeekStrip
{
    private const int Cell = 11;

    /// <summary>Writes spans, days, kinds, times and stress.</summary>
    public static void Write(Page page, ReviewDocument document)
    {
        var days = document.Week.Days;
        Spans(page, document.Week);
        Row(page, days, d => new Piece(Shown.ShortDay(d.Date), Ridden(d) ? Tone.Strong : Tone.Quiet));
        Row(page, days, d => new Piece(d.KindInWords, d.IsHard ? Tone.Strong : Ridden(d) ? Tone.Plain : Tone.Quiet));
        Row(page, days, d => d.Hours > 0 ? Shown.TableLength(d.Hours * 3600) : "");
        Row(page, days, d => d.Hours <= 0 ? "" : d.Stress is { } stress ? Shown.Points(stress) : "– points");
    }

    private static bool Ridden(DayEntry day) => day.Hours > 0;

    private static void Row(Page page, IReadOnlyList<DayEntry> days, Func<DayEntry, Piece> cell) =>
        page.Line([.. days.Select(cell).Select(p => p with { Text = Wrap.Pad(page.Marks.Show(p.Text), Cell) })]);

    private static void Spans(Page page, WeekEntry week)
    {
        if (week.Spans.IsDefaultOrEmpty)
            return;
        var pieces = new List<Piece>();
        var column = 0;
        foreach (var span in week.Spans)
        {
            var from = Math.Max(column, Column(week, span.From));
            var to = Math.Min(7 * Cell, Math.Max(from + 8, Column(week, span.To)));
            if (to - from < 8)
                continue;
            pieces.Add(new string(' ', from - column));
            pieces.Add(new Piece(Drawn(page, span, to - from), span.Verdict switch { Rules.Verdict.Broken => Tone.Broken, Rules.Verdict.Watch => Tone.Watch, _ => Tone.Quiet }));
            column = to;
        }
        page.Line([.. pieces]);
    }

    private static string Drawn(Page page, SpanEntry span, int cells)
    {
        var (left, right) = page.Marks.SpanEnds;
        var mark = span.Verdict is Rules.Verdict.Broken or Rules.Verdict.Watch ? page.Marks.Of(span.Verdict) + " " : "";
        var label = $"{mark}{Shown.Hours(span.Hours, 0)}";
        if (label.Length + 4 <= cells)
            label = $" {label} ";
        var room = Math.Max(0, cells - 2 - label.Length);
        return $"{left}{new string(page.Marks.Rule, room / 2)}{label}{new string(page.Marks.Rule, room - room / 2)}{right}";
    }

    // A day's cell is its 24 hours; the day before the week stands at the left edge.
    private static int Column(WeekEntry week, OffsetDateTime at)
    {
        var days = Period.DaysBetween(week.StartsOn, at.Date) + at.TimeOfDay.NanosecondOfDay / (double)NodaConstants.NanosecondsPerDay;
        return (int)Math.Clamp(Math.Round(days * Cell), 0, 7 * Cell);
    }
}
