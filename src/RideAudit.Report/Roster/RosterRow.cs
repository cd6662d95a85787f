using RideAudit.Document;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Pages;
using RideAudit.Report.Text;
using RideAudit.Report.Words;

namespace RideAudit.Report.Roster;

/// <summary>One rider: the need, the label, why, what is known besides, and the last four weeks beside them.</summary>
internal sealed class RosterRow : Block
{
    private const float Air = 4;
    private const float NumberEnd = 14;
    private const float TextAt = 22;
    private const float MarkRoom = 12;
    private const float Gap = 14;
    private const int MostFactLines = 3;
    private readonly RosterEntry _rider;
    private readonly int _place;
    private readonly float _width;
    private readonly float _needWidth;
    private readonly List<TextLine> _label;
    private readonly List<TextLine> _lines;

    /// <param name="place">Place in the order, 0 first.</param>
    /// <param name="width">Width, pt.</param>
    public RosterRow(RosterDocument roster, int place, FontSet fonts, float width)
    {
        (_rider, _place, _width) = (roster.Riders[place], place, width);
        _needWidth = MarkRoom + RosterWords.NeedStyle(_rider).Measure(fonts, Formatting.Words.Of(_rider.Need)) + 8;
        var room = width - TextAt - (_rider.Weeks.IsEmpty ? 0 : SmallLine.Width + Gap);
        _label = LineBreaker.Break(fonts, Name(_rider, fonts, room - _needWidth), room - _needWidth);
        _lines = [.. LineBreaker.Break(fonts, [new Span(_rider.Why, Styles.SmallInk)], room)];
        foreach (var fact in _rider.Facts)
            _lines.AddRange(LineBreaker.Clip(fonts, new Span(fact, Styles.Small), room, MostFactLines));
    }

    /// <summary>The lines of the label and the review's file.</summary>
    public IReadOnlyList<TextLine> Label => _label;

    /// <inheritdoc/>
    public override float Height => (2 * Air) + Math.Max(_label.Concat(_lines).Sum(line => line.Leading), _rider.Weeks.IsEmpty ? 0 : SmallLine.Depth);

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        surface.Anchor(x, y, Places.Rider(_place));
        surface.Hairline(x, x + _width, y);
        y += Air;
        var baseline = y + Styles.Body.Ascent;
        surface.Text(Formatting.Shown.Number(_place + 1), Styles.Quiet, x + NumberEnd, baseline, Align.End);
        RosterWords.DrawNeed(surface, _rider, x + TextAt, x + TextAt + MarkRoom, baseline);
        new SmallLine(_rider.Weeks).Draw(surface, x + _width - SmallLine.Width, y);
        foreach (var line in _label)
            y = Line(surface, line, x + TextAt + _needWidth, y);
        foreach (var line in _lines)
            y = Line(surface, line, x + TextAt, y);
    }

    private static float Line(Surface surface, TextLine line, float x, float y)
    {
        line.Draw(surface, x, y + line.Ascent);
        return y + line.Leading;
    }

    private static IEnumerable<Span> Name(RosterEntry rider, FontSet fonts, float width)
    {
        var target = rider.ReviewFile is { } file ? Uri.EscapeDataString(file) : null;
        yield return new Span(rider.Label, Styles.Strong) { Address = target };
        if (rider.ReviewFile is null)
            yield break;
        var style = Styles.Small with { Colour = Palette.High };
        var fits = style.Measure(fonts, rider.ReviewFile) <= width;
        yield return new Span("  ", style);
        yield return new Span(fits ? rider.ReviewFile.Replace(' ', '\u00A0') : rider.ReviewFile, style) { Address = target };
    }
}
