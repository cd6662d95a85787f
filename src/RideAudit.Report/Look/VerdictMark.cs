using RideAudit.Report.Drawing;
using RideAudit.Rules;

namespace RideAudit.Report.Look;

/// <summary>A verdict's mark: its shape, not its colour, tells it apart.</summary>
internal static class VerdictMark
{
    /// <summary>Side of the mark, pt, for text of a size.</summary>
    public static float Side(float textSize) => textSize * 0.74f;

    /// <summary>A cross for broken, a triangle for watch, a tick for kept, a dash for not judged; on a baseline.</summary>
    public static void Draw(Surface surface, Verdict verdict, float x, float baseline, float textSize)
    {
        var side = Side(textSize);
        var top = baseline - side;
        var stroke = side * 0.2f;
        switch (verdict)
        {
            case Verdict.Broken:
                surface.Line(x, top, x + side, baseline, Palette.Rust, stroke);
                surface.Line(x + side, top, x, baseline, Palette.Rust, stroke);
                break;
            case Verdict.Watch:
                Point[] outline = [new(x + (side / 2), top), new(x + side, baseline), new(x, baseline), new(x + (side / 2), top), new(x + side, baseline)];
                surface.Polyline(outline, new Pen(Palette.Rust, stroke * 0.75f));
                break;
            case Verdict.Kept:
                Point[] tick = [new(x, top + (side * 0.55f)), new(x + (side * 0.36f), baseline - (side * 0.08f)), new(x + side, top + (side * 0.06f))];
                surface.Polyline(tick, new Pen(Palette.High, stroke));
                break;
            default:
                surface.Line(x, top + (side * 0.55f), x + side, top + (side * 0.55f), Palette.Quiet, stroke);
                break;
        }
    }
}
