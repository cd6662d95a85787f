using RideAudit.Report.Drawing;
using RideAudit.Report.Fonts;
using RideAudit.Report.Text;

namespace RideAudit.Report.Flow;

/// <summary>A paragraph.</summary>
internal sealed class TextBlock : Block
{
    private readonly List<TextLine> _lines;

    /// <param name="spans">The text.</param>
    /// <param name="width">Width, pt.</param>
    public TextBlock(FontSet fonts, IEnumerable<Span> spans, float width) => _lines = LineBreaker.Break(fonts, spans, width);

    /// <summary>A paragraph in one style.</summary>
    public TextBlock(FontSet fonts, string text, TextStyle style, float width)
        : this(fonts, [new Span(text, style)], width)
    {
    }

    /// <summary>A paragraph that is broken already.</summary>
    public TextBlock(List<TextLine> lines) => _lines = lines;

    /// <summary>Distance of the text from the left edge, pt.</summary>
    public float Indent { get; init; }

    /// <summary>Named place at the block's top; null when nothing leads here.</summary>
    public string? Anchor { get; init; }

    /// <summary>The lines.</summary>
    public IReadOnlyList<TextLine> Lines => _lines;

    /// <inheritdoc/>
    public override float Height => _lines.Sum(line => line.Leading);

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        if (Anchor is not null)
            surface.Anchor(x, y, Anchor);
        foreach (var line in _lines)
        {
            line.Draw(surface, x + Indent, y + line.Ascent);
            y += line.Leading;
        }
    }
}
