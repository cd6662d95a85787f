using RideAudit.Cli.Terminal;

namespace RideAudit.Cli.Output;

/// <summary>A table for reading: columns are left out, last priority first, until it fits the terminal.</summary>
internal static class TextTable
{
    private const int Gap = 2;
    private const int LeastElastic = 18;

    /// <summary>Writes a heading, a rule and the rows.</summary>
    /// <typeparam name="T">What a row is made from.</typeparam>
    /// <param name="columns">The columns in order.</param>
    public static void Write<T>(Page page, IReadOnlyList<Column<T>> columns, IReadOnlyList<T> rows)
    {
        var cells = rows.Select(r => columns.Select(c => Shown(page, c.Cell(r))).ToArray()).ToArray();
        var widths = columns.Select((c, i) => cells.Select(r => Cells.Of(r[i].Text)).Append(Cells.Of(c.Header)).Max()).ToArray();
        var kept = Fit(columns, widths, page.Measure);
        page.Line([.. Join(columns, widths, kept, page, i => new Piece(columns[i].Header, Tone.Strong))]);
        page.Line([new Piece(new string(page.Marks.Rule, kept.Sum(i => widths[i]) + Gap * (kept.Count - 1)), Tone.Quiet)]);
        foreach (var row in cells)
            page.Line([.. Join(columns, widths, kept, page, i => row[i])]);
    }

    private static Piece Shown(Page page, Piece piece) => piece with { Text = page.Marks.Show(piece.Text) };

    private static List<int> Fit<T>(IReadOnlyList<Column<T>> columns, int[] widths, int width)
    {
        var kept = Enumerable.Range(0, columns.Count).ToList();
        while (Least(columns, widths, kept) > width && kept.Any(i => columns[i].Priority > 0))
            kept.Remove(kept.MaxBy(i => columns[i].Priority));
        var elastic = kept.FindIndex(i => columns[i].Elastic);
        if (elastic >= 0)
        {
            var column = kept[elastic];
            var others = kept.Where(i => i != column).Sum(i => widths[i]) + Gap * (kept.Count - 1);
            widths[column] = Math.Min(widths[column], Math.Max(LeastElastic, width - others));
        }
        return kept;
    }

    private static int Least<T>(IReadOnlyList<Column<T>> columns, int[] widths, List<int> kept) =>
        kept.Sum(i => columns[i].Elastic ? Math.Min(widths[i], LeastElastic) : widths[i]) + Gap * (kept.Count - 1);

    private static IEnumerable<Piece> Join<T>(IReadOnlyList<Column<T>> columns, int[] widths, List<int> kept, Page page, Func<int, Piece> cell)
    {
        foreach (var i in kept)
        {
            var piece = cell(i);
            var text = columns[i].Elastic ? Wrap.Shorten(piece.Text, widths[i], page.Marks.Dots) : piece.Text;
            text = columns[i].Right ? Wrap.PadLeft(text, widths[i]) : Wrap.Pad(text, widths[i]);
            yield return piece with { Text = i == kept[^1] ? text : text + new string(' ', Gap) };
        }
    }
}
