using RideAudit.Report.Drawing;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;

namespace RideAudit.Report.Tests.Fridge;

/// <summary>A surface that remembers open blocks, each drawn as left side, top and right side, and what was filled.</summary>
/// <param name="fonts">Fonts.</param>
internal sealed class Outlines(FontSet fonts) : Surface(fonts)
{
    private readonly List<(Point From, Point To, Pen Pen)> _lines = [];

    public List<Colour> Filled { get; } = [];

    public List<(double Width, double Height, bool IsStrong)> Blocks =>
        [.. _lines.Where((l, i) => l.From.Y == l.To.Y && l.Pen.Dash == 0 && i > 0 && i + 1 < _lines.Count && IsUpright(i - 1) && IsUpright(i + 1))
            .Select(l => ((double)(l.To.X - l.From.X), (double)(Baseline - l.From.Y), l.Pen.Colour == Palette.Ink))];

    private float Baseline => _lines.SelectMany(l => new[] { l.From.Y, l.To.Y }).Max();

    public override void Clipped(Area area, Action draw) => draw();

    public override void Link(Area area, string target)
    {
    }

    public override void LinkOut(Area area, string address)
    {
    }

    public override void Anchor(float x, float y, string name)
    {
    }

    protected override void Glyphs(GlyphRun run, TextStyle style, float x, float baseline)
    {
    }

    protected override void Stroke(IReadOnlyList<Point[]> pieces, Pen pen) => _lines.AddRange(pieces.Select(p => (p[0], p[1], pen)));

    protected override void Polygon(Point[] corners, Colour colour) => Filled.Add(colour);

    private bool IsUpright(int line) => _lines[line].From.X == _lines[line].To.X;
}
