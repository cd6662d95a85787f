using RideAudit.Report.Drawing;
using RideAudit.Report.Fonts;

namespace RideAudit.Report.Tests;

/// <summary>A page that keeps what was drawn on it.</summary>
internal sealed class PageRecord(FontSet fonts) : Surface(fonts)
{
    /// <summary>Texts in the order drawn, without what font each letter took.</summary>
    public List<(string Text, float Left, float Right, float Baseline, float Size)> Texts { get; } = [];

    /// <summary>Filled shapes by their bounds.</summary>
    public List<(float Left, float Top, float Right, float Bottom, Colour Colour)> Shapes { get; } = [];

    /// <summary>Lines by their bounds.</summary>
    public List<(float Left, float Top, float Right, float Bottom, Pen Pen, float Middle, (Point From, Point To)[] Pieces)> Strokes { get; } = [];

    /// <inheritdoc/>
    public override void Clipped(Area area, Action draw) => draw();

    /// <inheritdoc/>
    public override void Link(Area area, string target)
    {
    }

    /// <inheritdoc/>
    public override void LinkOut(Area area, string address)
    {
    }

    /// <inheritdoc/>
    public override void Anchor(float x, float y, string name)
    {
    }

    /// <inheritdoc/>
    protected override void Glyphs(GlyphRun run, TextStyle style, float x, float baseline) =>
        Texts.Add((string.Concat(run.Glyphs.Select(glyph => char.ConvertFromUtf32(glyph.CodePoint))), x, x + run.Width, baseline, style.Size));

    /// <inheritdoc/>
    protected override void Stroke(IReadOnlyList<Point[]> pieces, Pen pen)
    {
        foreach (var piece in pieces)
        {
            float left = piece.Min(point => point.X), right = piece.Max(point => point.X);
            Strokes.Add((left, piece.Min(point => point.Y), right, piece.Max(point => point.Y), pen, (left + right) / 2, [.. piece.Zip(piece.Skip(1))]));
        }
    }

    /// <inheritdoc/>
    protected override void Polygon(Point[] corners, Colour colour) =>
        Shapes.Add((corners.Min(corner => corner.X), corners.Min(corner => corner.Y), corners.Max(corner => corner.X), corners.Max(corner => corner.Y), colour));
}
