using RideAudit.Report.Drawing;
using RideAudit.Report.Fonts;

namespace RideAudit.Report.Tests;

/// <summary>A page that only remembers the sizes of its text.</summary>
internal class TextSizes(List<float> sizes) : Surface(FontSet.OfThisMachine)
{
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

    protected override void Glyphs(GlyphRun run, TextStyle style, float x, float baseline) => sizes.Add(run.Size);

    protected override void Stroke(IReadOnlyList<Point[]> pieces, Pen pen)
    {
    }

    protected override void Polygon(Point[] corners, Colour colour)
    {
    }
}
