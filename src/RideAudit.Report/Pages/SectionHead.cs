using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;

namespace RideAudit.Report.Pages;

/// <summary>A section's heading.</summary>
/// <param name="text">The heading.</param>
/// <param name="width">Width, pt.</param>
internal sealed class SectionHead(FontSet fonts, string text, float width) : Block
{
    private readonly List<TextLine> _lines = LineBreaker.Balance(fonts, new Span(text, Styles.Section), width);

    /// <summary>Named place at the heading; null when nothing leads here.</summary>
    public string? Anchor { get; init; }

    /// <inheritdoc/>
    public override Tag? Tag => Drawing.Tag.Heading;

    /// <inheritdoc/>
    public override float Height => _lines.Sum(line => line.Leading) + 4;

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        if (Anchor is not null)
            surface.Anchor(x, y, Anchor);
        foreach (var line in _lines)
        {
            line.Draw(surface, x, y + line.Ascent);
            y += line.Leading;
        }
    }
}
