using System.Globalization;
using RideAudit.Document;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;

namespace RideAudit.Report.Pages;

/// <summary>What to change, most serious first and largest. Why stands on page two: nothing is said twice.</summary>
internal sealed class ToChange : Block
{
    private const float Indent = 19;
    private const float FirstSize = 14;
    private static readonly TextStyle Title = new(Weight.SemiBold, 11.5f, Palette.Ink);
    private readonly List<(List<TextLine> Lines, TextStyle Number)> _items = [];
    private readonly float _headDepth;
    private readonly float _gap;

    public ToChange(ReviewDocument review, FontSet fonts, float width, Density density, bool linked)
    {
        _headDepth = density.Compact ? 16 : 18;
        _gap = density.Compact ? 4 : 6;
        foreach (var advice in review.Summary.ToChange)
        {
            var title = _items.Count == 0 ? Title with { Size = FirstSize } : Title;
            var lines = LineBreaker.Clip(fonts, new Span(advice.Title, title, linked ? Places.Rule(advice.Rule) : null), width - Indent, density.TitleLines);
            _items.Add((lines, title with { Colour = Palette.Rust }));
        }
    }

    /// <inheritdoc/>
    public override float Height => _headDepth + _items.Sum(item => Depth(item.Lines)) + (_gap * (_items.Count - 1));

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        surface.Text("To change", WhatHeld.Head, x, y + 10);
        y += _headDepth;
        for (var i = 0; i < _items.Count; i++)
        {
            (var lines, var number) = _items[i];
            surface.Text((i + 1).ToString(CultureInfo.InvariantCulture), number, x, y + lines[0].Ascent);
            foreach (var line in lines)
            {
                line.Draw(surface, x + Indent, y + line.Ascent);
                y += line.Leading;
            }

            y += _gap;
        }
    }

    private static float Depth(List<TextLine> lines) => lines.Sum(line => line.Leading);
}
