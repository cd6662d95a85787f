using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Text;

namespace RideAudit.Report.Pages;

/// <summary>One thing to change, on the card: its number, what to do, and why.</summary>
internal sealed class CardAdvice : Block
{
    private const float Indent = 26;
    private readonly int place;
    private readonly TextStyle number;
    private readonly List<TextLine> lines;

    /// <param name="review">The review.</param>
    /// <param name="place">Which thing, 0 first.</param>
    /// <param name="fonts">Fonts.</param>
    /// <param name="width">Width, pt.</param>
    /// <param name="number">The number's style.</param>
    /// <param name="title">The style of what to do.</param>
    /// <param name="detail">The style of why.</param>
    public CardAdvice(ReviewDocument review, int place, FontSet fonts, float width, TextStyle number, TextStyle title, TextStyle detail)
    {
        this.place = place;
        this.number = number;
        ChangeAdvice advice = review.Summary.ToChange[place];
        string why = review.Findings.FirstOrDefault(finding => finding.Rule == advice.Rule)?.Sentence ?? advice.Detail;
        lines = [.. LineBreaker.Break(fonts, [new Span(advice.Title, title)], width - Indent), .. LineBreaker.Break(fonts, [new Span(why, detail)], width - Indent)];
    }

    /// <inheritdoc/>
    public override float Height => lines.Sum(line => line.Leading);

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        surface.Text(Shown.Number(place + 1), number, x, y + number.Ascent);
        foreach (TextLine line in lines)
        {
            line.Draw(surface, x + Indent, y + line.Ascent);
            y += line.Leading;
        }
    }
}
