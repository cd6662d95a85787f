using RideAudit.Report.Drawing;

namespace RideAudit.Report.Look;

/// <summary>The quiet rules of the pages.</summary>
internal static class Hairlines
{
    private const float Width = 0.6f;

    /// <summary>A thin rule across.</summary>
    public static void Hairline(this Surface surface, float x1, float x2, float y) => surface.Line(x1, y, x2, y, Palette.Hairline, Width);
}
