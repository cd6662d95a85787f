using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;
using RideAudit.Rules;

namespace RideAudit.Report.Pages;

/// <summary>A finding's verdict, in mark and word, beside its rule's name and sentence.</summary>
internal sealed class FindingHead : Block
{
    private const float Air = 5;
    private const float MarkRoom = 13;
    private readonly Finding finding;
    private readonly List<TextLine> lines;
    private readonly float width;
    private readonly float indent;

    public FindingHead(Finding finding, Span[] after, FontSet fonts, float width, float indent)
    {
        this.finding = finding;
        this.width = width;
        this.indent = indent;
        Span name = new(finding.Name + "  ", Styles.Strong);
        lines = LineBreaker.Break(fonts, [name, new Span(finding.Sentence + (after.Length > 0 ? "  " : ""), Styles.Body), .. after], width - indent);
    }

    /// <summary>What is said of the rule elsewhere leads here.</summary>
    public bool Anchored { get; init; } = true;

    /// <inheritdoc/>
    public override float Height => Air + lines.Sum(line => line.Leading) + 1;

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        if (Anchored)
            surface.Anchor(x, y, Places.Rule(finding.Rule));
        surface.Hairline(x, x + width, y);
        y += Air;
        float baseline = y + lines[0].Ascent;
        bool wanting = finding.Verdict is Verdict.Broken or Verdict.Watch;
        VerdictMark.Draw(surface, finding.Verdict, x, baseline, Styles.Body.Size);
        TextStyle style = (wanting ? Styles.Strong : Styles.Body) with { Colour = wanting ? Palette.Rust : Palette.Ink };
        surface.Text(Formatting.Words.Of(finding.Verdict), style, x + MarkRoom, baseline);
        foreach (TextLine line in lines)
        {
            line.Draw(surface, x + indent, y + line.Ascent);
            y += line.Leading;
        }
    }
}
