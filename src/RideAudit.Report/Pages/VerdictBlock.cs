using RideAudit.Document;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;

namespace RideAudit.Report.Pages;

/// <summary>The week's verdict: a sentence to be read across the room, and a line of counts with its mark.</summary>
internal sealed class VerdictBlock : Block
{
    private const float LargeSize = 25;
    private const float SmallSize = 20;
    private const float SublineSize = 10.5f;
    private const float MarkRoom = 13;
    private const float LeastShare = 0.5f;
    private readonly List<TextLine> headline;
    private readonly List<TextLine> subline;
    private readonly Rules.Verdict worst;

    public VerdictBlock(SummaryEntry summary, FontSet fonts, float width)
    {
        TextStyle style = new(Weight.SemiBold, LargeSize, Palette.Ink);
        headline = Headline(summary.Headline, style, fonts, width);
        if (headline.Count > 2)
            headline = Headline(summary.Headline, style with { Size = SmallSize }, fonts, width);
        subline = LineBreaker.Break(fonts, [new Span(summary.Subline, Styles.Quiet with { Size = SublineSize })], width - MarkRoom);
        worst = summary.Broken > 0 ? Rules.Verdict.Broken
            : summary.Watch > 0 ? Rules.Verdict.Watch
            : summary.Kept > 0 ? Rules.Verdict.Kept
            : Rules.Verdict.NotJudged;
    }

    /// <inheritdoc/>
    public override float Height => headline.Sum(HeadlineLeading) + 5 + subline.Sum(line => line.Leading);

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        foreach (TextLine line in headline)
        {
            line.Draw(surface, x, y + line.Ascent);
            y += HeadlineLeading(line);
        }

        y += 5;
        VerdictMark.Draw(surface, worst, x, y + subline[0].Ascent, SublineSize);
        foreach (TextLine line in subline)
        {
            line.Draw(surface, x + MarkRoom, y + line.Ascent);
            y += line.Leading;
        }
    }

    private static List<TextLine> Headline(string text, TextStyle style, FontSet fonts, float width)
    {
        List<TextLine> balanced = LineBreaker.Balance(fonts, new Span(text, style), width);
        if (balanced.Count != 2)
            return balanced;
        List<TextLine>? best = null;
        for (int comma = text.IndexOf(", ", StringComparison.Ordinal); comma > 0; comma = text.IndexOf(", ", comma + 1, StringComparison.Ordinal))
        {
            List<TextLine> parted = [TextLine.Of(fonts, text[..(comma + 1)], style), TextLine.Of(fonts, text[(comma + 2)..], style)];
            if (Widest(parted) <= width && parted.Min(line => line.Width) > Widest(parted) * LeastShare && (best is null || Widest(parted) < Widest(best)))
                best = parted;
        }

        return best ?? balanced;
    }

    private static float Widest(List<TextLine> lines) => lines.Max(line => line.Width);

    private static float HeadlineLeading(TextLine line) => line.Ascent * 1.22f;
}
