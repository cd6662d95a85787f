using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;
using SkiaSharp;

namespace RideAudit.Report;

/// <summary>Draws on one page, in points from its top left corner.</summary>
/// <param name="canvas">The page.</param>
/// <param name="fonts">Its fonts.</param>
/// <param name="ledger">Told of every glyph; null when nobody asks.</param>
internal sealed class Ink(SKCanvas canvas, FontSet fonts, GlyphLedger? ledger = null)
{
    /// <summary>The page's fonts.</summary>
    public FontSet Fonts { get; } = fonts;

    /// <summary>The page itself, for the chart library.</summary>
    public SKCanvas Canvas { get; } = canvas;

    /// <summary>Text on a baseline, its start, middle or end at <paramref name="x"/>; returns its width.</summary>
    public float Text(string text, TextStyle style, float x, float baseline, Align align = Align.Start)
    {
        TextLine line = TextLine.Of(Fonts, text, style);
        line.Draw(this, x - (line.Width * (int)align / 2f), baseline);
        return line.Width;
    }

    /// <summary>Shaped glyphs.</summary>
    public void Glyphs(List<GlyphRun> runs, TextStyle style, float x, float baseline)
    {
        using var paint = new SKPaint { Color = style.Colour, IsAntialias = true };
        foreach (GlyphRun run in runs)
        {
            ledger?.Note(run.Face, run.Glyphs);
            using var font = new SKFont(ledger?.TypefaceOf(run.Face) ?? run.Face.Typeface, style.Size)
            {
                Subpixel = true,
                Hinting = SKFontHinting.None,
                LinearMetrics = true,
                SkewX = style.Slanted ? -0.2f : 0,
            };
            using var builder = new SKTextBlobBuilder();
            if (run.Glyphs.Length > 0)
            {
                builder.AddPositionedRun(run.Glyphs, font, run.Positions);
                using SKTextBlob? blob = builder.Build();
                if (blob is not null)
                    Canvas.DrawText(blob, x, baseline, paint);
            }

            x += run.Width;
        }
    }

    /// <summary>A straight line.</summary>
    public void Line(float x1, float y1, float x2, float y2, SKColor colour, float width, float dash = 0)
    {
        using var paint = new SKPaint { Color = colour, StrokeWidth = width, Style = SKPaintStyle.Stroke, IsAntialias = true };
        if (dash <= 0)
        {
            Canvas.DrawLine(x1, y1, x2, y2, paint);
            return;
        }

        using var effect = SKPathEffect.CreateDash([dash, dash], 0);
        using var builder = new SKPathBuilder();
        builder.MoveTo(x1, y1);
        builder.LineTo(x2, y2);
        using SKPath path = builder.Detach();
        paint.PathEffect = effect;
        Canvas.DrawPath(path, paint);
    }

    /// <summary>A filled rectangle.</summary>
    public void Fill(SKRect area, SKColor colour)
    {
        using var paint = new SKPaint { Color = colour, IsAntialias = true };
        Canvas.DrawRect(area, paint);
    }

    /// <summary>A rectangle's outline.</summary>
    public void Frame(SKRect area, SKColor colour, float width, float dash = 0)
    {
        Line(area.Left, area.Top, area.Right, area.Top, colour, width, dash);
        Line(area.Right, area.Top, area.Right, area.Bottom, colour, width, dash);
        Line(area.Left, area.Bottom, area.Right, area.Bottom, colour, width, dash);
        Line(area.Left, area.Top, area.Left, area.Bottom, colour, width, dash);
    }

    /// <summary>A line through points, broken where a point is not a number.</summary>
    public void Polyline(IReadOnlyList<SKPoint> points, SKColor colour, float width)
    {
        using var paint = new SKPaint
        {
            Color = colour,
            StrokeWidth = width,
            Style = SKPaintStyle.Stroke,
            IsAntialias = true,
            StrokeJoin = SKStrokeJoin.Round,
        };
        using var builder = new SKPathBuilder();
        bool open = false;
        foreach (SKPoint point in points)
        {
            bool known = float.IsFinite(point.Y);
            if (known && open)
                builder.LineTo(point);
            else if (known)
                builder.MoveTo(point);
            open = known;
        }

        using SKPath path = builder.Detach();
        Canvas.DrawPath(path, paint);
    }

    /// <summary>A filled shape.</summary>
    public void Shape(SKColor colour, params ReadOnlySpan<SKPoint> corners)
    {
        using var paint = new SKPaint { Color = colour, IsAntialias = true };
        using var builder = new SKPathBuilder();
        builder.MoveTo(corners[0]);
        foreach (SKPoint corner in corners[1..])
            builder.LineTo(corner);
        builder.Close();
        using SKPath path = builder.Detach();
        Canvas.DrawPath(path, paint);
    }

    /// <summary>A hairline across.</summary>
    public void Hairline(float x1, float x2, float y) => Line(x1, y, x2, y, Palette.Hairline, 0.6f);

    /// <summary>A link to a named place.</summary>
    public void Link(SKRect area, string target)
    {
        using SKData? _ = Canvas.DrawLinkDestinationAnnotation(area, target);
    }

    /// <summary>A link out of the document.</summary>
    public void LinkOut(SKRect area, string address)
    {
        using SKData? _ = Canvas.DrawUrlAnnotation(area, address);
    }

    /// <summary>Names a place.</summary>
    public void Anchor(float x, float y, string name)
    {
        using SKData? _ = Canvas.DrawNamedDestinationAnnotation(new SKPoint(x, y), name);
    }
}
