using RideAudit.Report.Drawing;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;

namespace RideAudit.Report.Flow;

/// <summary>A row of a table; texts at the start of a cell wrap, figures stay on one line.</summary>
internal sealed class RowBlock : Block
{
    private readonly List<(Column Column, List<TextLine> Lines)> _cells = [];

    /// <param name="columns">The table's columns.</param>
    /// <param name="texts">One text a column.</param>
    /// <param name="width">The table's width, for the rule above the row.</param>
    public RowBlock(FontSet fonts, IReadOnlyList<Column> columns, IReadOnlyList<Span> texts, float width)
    {
        Width = width;
        for (var i = 0; i < columns.Count; i++)
        {
            var lines = columns[i].Align == Align.Start
                ? LineBreaker.Break(fonts, [texts[i]], columns[i].Width)
                : [TextLine.Of(fonts, [texts[i]])];
            _cells.Add((columns[i], lines));
        }
    }

    /// <summary>Named place at the row's top; null when nothing leads here.</summary>
    public string? Anchor { get; init; }

    /// <summary>White space above and below the texts, pt.</summary>
    public float Air { get; init; } = 3;

    /// <summary>A rule above the row.</summary>
    public bool Ruled { get; init; } = true;

    /// <inheritdoc/>
    public override float Height => _cells.Max(cell => cell.Lines.Sum(line => line.Leading)) + (2 * Air);

    private float Width { get; }

    /// <summary>The row of heads of a table.</summary>
    public static RowBlock Heads(FontSet fonts, IReadOnlyList<Column> columns, float width) =>
        new(fonts, columns, [.. columns.Select(column => new Span(column.Head, Styles.Small))], width) { Ruled = false, KeepWithNext = true };

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        if (Anchor is not null)
            surface.Anchor(x, y, Anchor);
        if (Ruled)
            surface.Hairline(x, x + Width, y);
        foreach ((var column, var lines) in _cells)
        {
            var baseline = y + Air;
            foreach (var line in lines)
            {
                line.Draw(surface, x + column.X - (line.Width * (int)column.Align / 2f), baseline + line.Ascent);
                baseline += line.Leading;
            }
        }
    }
}
