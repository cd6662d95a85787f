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
    private readonly List<TextLine> _headline;
    private readonly List<TextLine> _subline;
    private readonly Rules.Verdict _worst;

    public VerdictBlock(ReviewDocument review, FontSet fonts, float width)
    {
        var summary = review.Summary;
        TextStyle style = new(Weight.SemiBold, LargeSize, Palette.Ink);
        _headline = Headline(summary.Headline, style, fonts, width);
        if (_headline.Count > 2)
            _headline = Headline(summary.Headline, style with { Size = SmallSize }, fonts, width);
        _subline = LineBreaker.Break(fonts, Subline(review), width - MarkRoom);
        _worst = summary.Broken > 0 ? Rules.Verdict.Broken
            : summary.Watch > 0 ? Rules.Verdict.Watch
            : summary.Kept > 0 ? Rules.Verdict.Kept
            : Rules.Verdict.NotJudged;
    }

    /// <inheritdoc/>
    public override Tag? Tag => null;

    /// <inheritdoc/>
    public override float Height => _headline.Sum(HeadlineLeading) + 5 + _subline.Sum(line => line.Leading);

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        surface.Tagged(Drawing.Tag.Title, null, () => DrawHeadline(surface, x, y));
        surface.Tagged(Drawing.Tag.Paragraph, null, () => DrawSubline(surface, x, y + _headline.Sum(HeadlineLeading) + 5));
    }

    private void DrawHeadline(Surface surface, float x, float y)
    {
        foreach (var line in _headline)
        {
            line.Draw(surface, x, y + line.Ascent);
            y += HeadlineLeading(line);
        }
    }

    private void DrawSubline(Surface surface, float x, float y)
    {
        VerdictMark.Draw(surface, _worst, x, y + _subline[0].Ascent, SublineSize);
        foreach (var line in _subline)
        {
            line.Draw(surface, x + MarkRoom, y + line.Ascent);
            y += line.Leading;
        }
    }

    // The smallest change is what to take away: it stands out from the counts around it.
    private static Span[] Subline(ReviewDocument review)
    {
        var (text, quiet) = (review.Summary.Subline, Styles.Quiet with { Size = SublineSize });
        var change = review.SmallestChange is { Changes.IsEmpty: false } smallest ? smallest.Sentence : "";
        var at = change.Length == 0 ? -1 : text.IndexOf(change, StringComparison.Ordinal);
        return at < 0 ? [new Span(text, quiet)]
            : [new Span(text[..at], quiet), new Span(change, quiet with { Weight = Weight.SemiBold, Colour = Palette.Ink }), new Span(text[(at + change.Length)..], quiet)];
    }

    /// <summary>A headline broken after a comma where that parts it well, else into even lines.</summary>
    public static List<TextLine> Headline(string text, TextStyle style, FontSet fonts, float width)
    {
        var balanced = LineBreaker.Balance(fonts, new Span(text, style), width);
        if (balanced.Count != 2)
            return balanced;
        List<TextLine>? best = null;
        for (var comma = text.IndexOf(", ", StringComparison.Ordinal); comma > 0; comma = text.IndexOf(", ", comma + 1, StringComparison.Ordinal))
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
