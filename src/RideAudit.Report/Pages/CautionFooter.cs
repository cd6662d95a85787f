using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;

namespace RideAudit.Report.Pages;

/// <summary>The cautions at the foot of page one.</summary>
internal sealed class CautionFooter : Block
{
    private const float NumberRoom = 40;
    private readonly List<TextLine> lines;
    private readonly float width;
    private readonly float numberLine;

    public CautionFooter(IEnumerable<string> cautions, FontSet fonts, float width)
    {
        this.width = width;
        lines = LineBreaker.Break(fonts, [new Span(string.Join(' ', cautions), Styles.Tiny)], width);
        numberLine = lines[^1].Width > width - NumberRoom ? Styles.Tiny.Leading : 0;
    }

    /// <inheritdoc/>
    public override float Height => 5 + lines.Sum(line => line.Leading) + numberLine;

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        surface.Hairline(x, x + width, y);
        y += 5;
        foreach (TextLine line in lines)
        {
            line.Draw(surface, x, y + line.Ascent);
            y += line.Leading;
        }
    }
}
