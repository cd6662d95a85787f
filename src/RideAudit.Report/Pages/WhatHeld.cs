using RideAudit.Document;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;

namespace RideAudit.Report.Pages;

/// <summary>What held, as much as there is room for; the rest is counted.</summary>
internal sealed class WhatHeld : Block
{
    /// <summary>The style of its head.</summary>
    public static readonly TextStyle Head = new(Weight.SemiBold, 10.5f, Palette.Ink);

    private const int LongestWholeItem = 30;
    private const int MostHeld = 6;
    private readonly List<TextLine> _lines;

    public WhatHeld(SummaryEntry summary, FontSet fonts, float width, Density density)
    {
        string[] kept = [.. summary.Held.Select(item => item.Length <= LongestWholeItem ? item.Replace(' ', '\u00A0') : item)];
        var count = Math.Min(kept.Length, MostHeld);
        do
        {
            var more = count < kept.Length ? $" · {kept.Length - count} more" : "";
            var text = kept.Length == 0 ? summary.Kept == 0 ? "no rule this week" : "nothing that was put to the test" : string.Join(" · ", kept.Take(count)) + more;
            _lines = LineBreaker.Break(fonts, [new Span("What held  ", Head), new Span(text, Styles.Body with { Size = 10 })], width);
            count--;
        }
        while (_lines.Count > density.HeldLines && count > 0);
    }

    /// <inheritdoc/>
    public override float Height => _lines.Sum(line => line.Leading);

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        foreach (var line in _lines)
        {
            line.Draw(surface, x, y + line.Ascent);
            y += line.Leading;
        }
    }
}
