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
    private readonly int _place;
    private readonly TextStyle _number;
    private readonly List<TextLine> _lines;

    /// <param name="place">Which thing, 0 first.</param>
    /// <param name="width">Width, pt.</param>
    /// <param name="number">The number's style.</param>
    /// <param name="title">The style of what to do.</param>
    /// <param name="detail">The style of why.</param>
    public CardAdvice(ReviewDocument review, int place, FontSet fonts, float width, TextStyle number, TextStyle title, TextStyle detail)
    {
        _place = place;
        _number = number;
        var advice = review.Summary.ToChange[place];
        var why = review.Findings.FirstOrDefault(finding => finding.Rule == advice.Rule)?.Sentence ?? advice.Detail;
        _lines = [.. LineBreaker.Break(fonts, [new Span(advice.Title, title)], width - Indent), .. LineBreaker.Break(fonts, [new Span(why, detail)], width - Indent)];
    }

    /// <inheritdoc/>
    public override float Height => _lines.Sum(line => line.Leading);

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        surface.Text(Shown.Number(_place + 1), _number, x, y + _number.Ascent);
        foreach (var line in _lines)
        {
            line.Draw(surface, x + Indent, y + line.Ascent);
            y += line.Leading;
        }
    }
}
