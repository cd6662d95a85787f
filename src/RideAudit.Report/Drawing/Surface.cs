using RideAudit.Report.Fonts;

namespace RideAudit.Report.Drawing;

/// <summary>One page to draw on, in points from its top left corner, x to the right and y down: all that is shown goes through here.</summary>
/// <remarks>
/// <para>
/// What is drawn says what, not how: text in a <see cref="TextStyle"/>, straight lines, filled shapes, hatching, links and named places.
/// A maker turns that into one kind of file: <c>PdfPage</c> and <c>SvgPage</c> in managed code, the same bytes on every system, and a
/// rasteriser in a project of its own for pictures. Later things cover earlier ones. Paths are straight; nothing is transparent.
/// </para>
/// <code>
/// surface.Text("Tue 9", Styles.Strong, x, baseline, Align.Middle);
/// surface.Line(left, y, right, y, Palette.Ink, 0.8f);
/// surface.Fill(new Area(left, top, right, bottom), Palette.Low);
/// surface.Hatch(area, 3.2f, new Pen(Palette.Low, 0.5f));
/// surface.Clipped(area, () => surface.Polyline(points, pen));
/// surface.Anchor(x, y, "ride-1");
/// surface.Link(area, "ride-1");
/// </code>
/// <para>A maker implements the members below the line; each is told finished glyphs, pieces of line or corners, never text to be set.</para>
/// </remarks>
/// <param name="fonts">The fonts that text is set in.</param>
internal abstract class Surface(FontSet fonts)
{
    /// <summary>The fonts that text is set in.</summary>
    public FontSet Fonts { get; } = fonts;

    /// <summary>Text on a baseline, its start, middle or end at <paramref name="x"/>; returns its width, pt.</summary>
    public float Text(string text, TextStyle style, float x, float baseline, Align align = Align.Start)
    {
        var runs = Fonts.Shape(text, style.Weight, style.Size);
        var width = runs.Sum(run => run.Width);
        Text(runs, style, x - (width * (int)align / 2f), baseline);
        return width;
    }

    /// <summary>Text that is set already.</summary>
    public void Text(IEnumerable<GlyphRun> runs, TextStyle style, float x, float baseline)
    {
        foreach (var run in runs)
        {
            if (run.Glyphs.Count > 0)
                Glyphs(run, style, x, baseline);
            x += run.Width;
        }
    }

    /// <summary>A straight line.</summary>
    public void Line(float x1, float y1, float x2, float y2, Colour colour, float width, float dash = 0) =>
        Line(x1, y1, x2, y2, new Pen(colour, width, dash));

    /// <summary>A straight line.</summary>
    public void Line(float x1, float y1, float x2, float y2, Pen pen) => Stroke([[new Point(x1, y1), new Point(x2, y2)]], pen);

    /// <summary>A filled rectangle.</summary>
    public void Fill(Area area, Colour colour) => Shape(
        colour, new Point(area.Left, area.Top), new Point(area.Right, area.Top), new Point(area.Right, area.Bottom), new Point(area.Left, area.Bottom));

    /// <summary>A filled shape of straight sides.</summary>
    public void Shape(Colour colour, params Point[] corners) => Polygon(corners, colour);

    /// <summary>A rectangle's outline.</summary>
    public void Frame(Area area, Colour colour, float width, float dash = 0)
    {
        Line(area.Left, area.Top, area.Right, area.Top, colour, width, dash);
        Line(area.Right, area.Top, area.Right, area.Bottom, colour, width, dash);
        Line(area.Left, area.Bottom, area.Right, area.Bottom, colour, width, dash);
        Line(area.Left, area.Top, area.Left, area.Bottom, colour, width, dash);
    }

    /// <summary>A line through points, broken where a point's height is not a number.</summary>
    public void Polyline(IEnumerable<Point> points, Pen pen)
    {
        var pieces = new List<List<Point>>();
        var open = false;
        foreach (var point in points)
        {
            var known = float.IsFinite(point.Y);
            if (known && !open)
                pieces.Add([]);
            if (known)
                pieces[^1].Add(point);
            open = known;
        }

        Point[][] drawn = [.. pieces.Where(piece => piece.Count > 1).Select(piece => piece.ToArray())];
        if (drawn.Length > 0)
            Stroke(drawn, pen with { Rounded = true });
    }

    /// <summary>Parallel lines that rise to the right, inside an area.</summary>
    /// <param name="step">Distance of the lines along the baseline, pt.</param>
    /// <param name="pen">The lines.</param>
    public void Hatch(Area area, float step, Pen pen)
    {
        var lines = new List<Point[]>();
        for (var x = area.Left - area.Height + step; x < area.Right; x += step)
            lines.Add([new Point(x, area.Bottom), new Point(x + area.Height, area.Top)]);
        if (lines.Count > 0)
            Clipped(area, () => Stroke(lines, pen));
    }

    /// <summary>Draws something of which a reader who does not see the page is told what it is; makers without a structure just draw it.</summary>
    /// <param name="tag">What it is.</param>
    /// <param name="alternative">The text that stands for a figure; null for what is text itself.</param>
    /// <param name="draw">Draws it; tags nothing in it.</param>
    public virtual void Tagged(Tag tag, string? alternative, Action draw) => draw();

    // Makers implement what follows.

    /// <summary>Draws with everything outside an area left out.</summary>
    public abstract void Clipped(Area area, Action draw);

    /// <summary>Makes an area lead to a named place of the document.</summary>
    public abstract void Link(Area area, string target);

    /// <summary>Makes an area lead to an address, perhaps relative to the document's.</summary>
    public abstract void LinkOut(Area area, string address);

    /// <summary>Names a place of the document.</summary>
    public abstract void Anchor(float x, float y, string name);

    /// <summary>Draws placed glyphs, the run's start at a point of the baseline.</summary>
    protected abstract void Glyphs(GlyphRun run, TextStyle style, float x, float baseline);

    /// <summary>Draws a line of one or more pieces of two or more points each.</summary>
    protected abstract void Stroke(IReadOnlyList<Point[]> pieces, Pen pen);

    /// <summary>Fills a shape of three or more corners.</summary>
    protected abstract void Polygon(Point[] corners, Colour colour);
}
