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
    private readonly List<TextLine> _lines;
    private readonly float _width;
    private readonly float _numberLine;

    public CautionFooter(IEnumerable<string> cautions, FontSet fonts, float width)
    {
        _width = width;
        _lines = LineBreaker.Break(fonts, [new Span(string.Join(' ', cautions), Styles.Tiny)], width);
        _numberLine = _lines[^1].Width > width - NumberRoom ? Styles.Tiny.Leading : 0;
    }

    /// <inheritdoc/>
    public override float Height => 5 + _lines.Sum(line => line.Leading) + _numberLine;

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        surface.Hairline(x, x + _width, y);
        y += 5;
        foreach (var line in _lines)
        {
            line.Draw(surface, x, y + line.Ascent);
            y += line.Leading;
        }
    }
}
