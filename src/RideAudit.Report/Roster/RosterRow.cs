using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;
using RideAudit.Report.Words;

namespace RideAudit.Report.Roster;

/// <summary>One rider: the need, the label, the week's figures, and why in a line beneath.</summary>
internal sealed class RosterRow : Block
{
    private const float Air = 2.5f;
    private const float BarDepth = 7;
    private readonly RosterEntry _rider;
    private readonly RosterColumns _columns;
    private readonly int _number;
    private readonly List<TextLine> _label;
    private readonly List<TextLine> _why;
    private readonly List<TextLine> _counts;

    /// <param name="number">Place in the order, 1 first.</param>
    public RosterRow(RosterEntry rider, int number, RosterColumns columns, FontSet fonts)
    {
        _rider = rider;
        _number = number;
        _columns = columns;
        _label = LineBreaker.Break(fonts, Name(rider, fonts, columns.LabelWidth), columns.LabelWidth);
        _why = LineBreaker.Break(fonts, Why(rider), columns.WhyWidth);
        var text = RosterWords.Counts(rider);
        _counts = text.Length == 0 ? [] : LineBreaker.Break(fonts, [new Span(text, Styles.Tiny)], RosterColumns.NeedWidth);
    }

    /// <summary>The lines of the label and the review's file.</summary>
    public IReadOnlyList<TextLine> Label => _label;

    /// <inheritdoc/>
    public override float Height
    {
        get
        {
            var left = Styles.Body.Leading + _counts.Sum(line => line.Leading);
            return Air + Math.Max(left, _label.Concat(_why).Sum(line => line.Leading)) + Air;
        }
    }

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        surface.Hairline(x, x + _columns.Width, y);
        y += Air;
        var baseline = y + Styles.Body.Ascent;
        DrawNeed(surface, x, y, baseline);
        DrawFigures(surface, x, baseline);
        foreach (var line in _label.Concat(_why))
        {
            line.Draw(surface, x + RosterColumns.Label, y + line.Ascent);
            y += line.Leading;
        }
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

    private static IEnumerable<Span> Why(RosterEntry rider)
    {
        yield return new Span(rider.Why, Styles.SmallInk);
        if (rider.FilesNotUsed is > 0 and var files)
            yield return new Span($"  {Shown.Tally(files, "file")} not used.", Styles.Small);
    }

    private void DrawNeed(Surface surface, float x, float y, float baseline)
    {
        surface.Text(Shown.Number(_number), Styles.Quiet, x + RosterColumns.Number, baseline, Align.End);
        VerdictMark.Draw(surface, RosterWords.Mark(_rider.Need), x + RosterColumns.Mark, baseline, Styles.Body.Size);
        var wanting = _rider.Need is RosterNeed.Broken or RosterNeed.Watch;
        var style = (wanting ? Styles.Strong : Styles.Body) with { Colour = wanting ? Palette.Rust : Palette.Ink };
        surface.Text(Formatting.Words.Of(_rider.Need), style, x + RosterColumns.Need, baseline);
        var under = y + Styles.Body.Leading;
        foreach (var line in _counts)
        {
            line.Draw(surface, x + RosterColumns.Need, under + line.Ascent);
            under += line.Leading;
        }
    }

    private void DrawFigures(Surface surface, float x, float baseline)
    {
        surface.Text(RosterWords.Hours(_rider), Styles.Body, x + _columns.Hours, baseline, Align.End);
        surface.Text(Shown.Number(_rider.Stress), Styles.Body, x + _columns.Stress, baseline, Align.End);
        surface.Text(_rider.LowShare is { } share ? Shown.Share(share) : Shown.Missing, Styles.Body, x + _columns.Low, baseline, Align.End);
        surface.Text(_rider.RampPerWeek is { } ramp ? Shown.Signed(ramp) : Shown.Missing, Styles.Body, x + _columns.Ramp, baseline, Align.End);
        if (_rider.LowShare is { } low)
            DrawBar(surface, low, x + _columns.BarStart, baseline);
    }

    private static void DrawBar(Surface surface, double low, float left, float baseline)
    {
        var area = new Area(left, baseline - BarDepth, left + RosterColumns.Bar, baseline);
        var cut = left + (RosterColumns.Bar * (float)Math.Clamp(low, 0, 1));
        Bands.Fill(surface, new Area(left, area.Top, cut, area.Bottom), 0);
        surface.Frame(area, Palette.Quiet, 0.5f);
    }
}
