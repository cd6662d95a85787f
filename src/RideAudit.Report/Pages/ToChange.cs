using System.Globalization;
using RideAudit.Document;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;

namespace RideAudit.Report.Pages;

/// <summary>What to change, most serious first, and what held. Why stands on page two: nothing is said twice.</summary>
internal sealed class ToChange : Block
{
    private const float Indent = 17;
    private const int LongestWholeItem = 30;
    private const int MostHeld = 6;
    private static readonly TextStyle Title = new(Weight.SemiBold, 11.5f, Palette.Ink);
    private static readonly TextStyle Number = new(Weight.SemiBold, 11.5f, Palette.Rust);
    private static readonly TextStyle Head = new(Weight.SemiBold, 10.5f, Palette.Ink);
    private readonly List<List<TextLine>> _items = [];
    private readonly List<TextLine> _held;
    private readonly float _headDepth;
    private readonly float _gap;
    private readonly float _width;

    public ToChange(ReviewDocument review, FontSet fonts, float width, Density density, bool linked)
    {
        var summary = review.Summary;
        _width = width;
        _headDepth = density.Compact ? 16 : 18;
        _gap = density.Compact ? 4 : 6;
        foreach (var advice in summary.ToChange)
            _items.Add(LineBreaker.Clip(fonts, new Span(advice.Title, Title, linked ? Places.Rule(advice.Rule) : null), width - Indent, density.TitleLines));
        _held = Held(summary, fonts, width, density.HeldLines);
    }

    /// <inheritdoc/>
    public override float Height =>
        (_items.Count == 0 ? 0 : _headDepth + _items.Sum(item => Depth(item) + _gap) + 8) + Depth(_held);

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        if (_items.Count > 0)
        {
            surface.Text("To change", Head, x, y + 10);
            y += _headDepth;
        }

        for (var i = 0; i < _items.Count; i++)
        {
            surface.Text((i + 1).ToString(CultureInfo.InvariantCulture), Number, x, y + Number.Ascent);
            y = Lines(surface, _items[i], x + Indent, y) + _gap;
        }

        if (_items.Count > 0)
        {
            surface.Hairline(x, x + _width, y + 1);
            y += 8;
        }

        Lines(surface, _held, x, y);
    }

    private static List<TextLine> Held(SummaryEntry summary, FontSet fonts, float width, int mostLines)
    {
        string[] kept = [.. summary.Held.Select(item => item.Length <= LongestWholeItem ? item.Replace(' ', '\u00A0') : item)];
        List<TextLine> lines;
        var count = Math.Min(kept.Length, MostHeld);
        do
        {
            var more = count < kept.Length ? $" · {kept.Length - count} more" : "";
            var text = kept.Length == 0 ? summary.Kept == 0 ? "no rule this week" : "nothing that was put to the test" : string.Join(" · ", kept.Take(count)) + more;
            lines = LineBreaker.Break(fonts, [new Span("What held  ", Head), new Span(text, Styles.Body with { Size = 10 })], width);
            count--;
        }
        while (lines.Count > mostLines && count > 0);
        return lines;
    }

    private static float Depth(List<TextLine> lines) => lines.Sum(line => line.Leading);

    private static float Lines(Surface surface, List<TextLine> lines, float x, float y)
    {
        foreach (var line in lines)
        {
            line.Draw(surface, x, y + line.Ascent);
            y += line.Leading;
        }

        return y;
    }
}
