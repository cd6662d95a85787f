using System.Collections.Concurrent;
using RideAudit.Report.Drawing;
using RideAudit.Report.Fonts;
using SkiaSharp;

namespace RideAudit.Raster;

/// <summary>A page as pixels; links and named places have no meaning there.</summary>
/// <param name="canvas">The pixels, scaled to points.</param>
/// <param name="fonts">The fonts that text is set in.</param>
internal sealed class RasterPage(SKCanvas canvas, FontSet fonts) : Surface(fonts)
{
    private static readonly ConcurrentDictionary<Face, SKTypeface> Typefaces = new();

    /// <inheritdoc/>
    public override void Clipped(Area area, Action draw)
    {
        canvas.Save();
        canvas.ClipRect(new SKRect(area.Left, area.Top, area.Right, area.Bottom));
        draw();
        canvas.Restore();
    }

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
    protected override void Glyphs(GlyphRun run, TextStyle style, float x, float baseline)
    {
        using var paint = new SKPaint { Color = Of(style.Colour), IsAntialias = true };
        using var font = new SKFont(Typefaces.GetOrAdd(run.Face, Open), run.Size)
        {
            Subpixel = true,
            Hinting = SKFontHinting.None,
            LinearMetrics = true,
            SkewX = style.Slanted ? -TextStyle.Slant : 0,
        };
        using var builder = new SKTextBlobBuilder();
        ushort[] glyphs = [.. run.Glyphs.Select(glyph => (ushort)glyph.Id)];
        builder.AddPositionedRun(glyphs, font, [.. run.Glyphs.Select(glyph => new SKPoint(glyph.X, 0))]);
        using var blob = builder.Build();
        if (blob is not null)
            canvas.DrawText(blob, x, baseline, paint);
    }

    /// <inheritdoc/>
    protected override void Stroke(IReadOnlyList<Point[]> pieces, Pen pen)
    {
        using var paint = new SKPaint { Color = Of(pen.Colour), StrokeWidth = pen.Width, Style = SKPaintStyle.Stroke, IsAntialias = true };
        using var dashes = pen.Dash > 0 ? SKPathEffect.CreateDash([pen.Dash, pen.Gap], 0) : null;
        paint.PathEffect = dashes;
        paint.StrokeJoin = pen.Rounded ? SKStrokeJoin.Round : SKStrokeJoin.Miter;
        using var path = PathOf(pieces, closed: false);
        canvas.DrawPath(path, paint);
    }

    /// <inheritdoc/>
    protected override void Polygon(Point[] corners, Colour colour)
    {
        using var paint = new SKPaint { Color = Of(colour), IsAntialias = true };
        using var path = PathOf([corners], closed: true);
        canvas.DrawPath(path, paint);
    }

    private static SKTypeface Open(Face face)
    {
        using var data = SKData.CreateCopy(face.Bytes);
        return SKTypeface.FromData(data, face.Index) ?? throw new InvalidDataException($"{face.Name} cannot be drawn as pixels.");
    }

    private static SKColor Of(Colour colour) => new(colour.Red, colour.Green, colour.Blue);

    private static SKPath PathOf(IReadOnlyList<Point[]> pieces, bool closed)
    {
        using var builder = new SKPathBuilder();
        foreach (var piece in pieces)
        {
            builder.MoveTo(piece[0].X, piece[0].Y);
            foreach (var point in piece.AsSpan(1))
                builder.LineTo(point.X, point.Y);
            if (closed)
                builder.Close();
        }

        return builder.Detach();
    }
}
