using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Rules;

namespace RideAudit.Report.Pages;

/// <summary>The spacing line of the card: fewer words, larger letters, the change drawn.</summary>
internal sealed class CardLine : Block
{
    private const float BlocksDepth = 180;
    private const float SpanDepth = 30;
    private readonly ReviewDocument _review;
    private readonly FontSet _fonts;
    private readonly float _dayWidth;
    private readonly float _hourWidth;
    private readonly float _unit;
    private readonly TextStyle _regular;
    private readonly TextStyle _strong;

    /// <param name="width">Width, pt.</param>
    /// <param name="size">Size of its text, pt.</param>
    public CardLine(ReviewDocument review, FontSet fonts, float width, float size)
    {
        (_review, _fonts) = (review, fonts);
        _dayWidth = width / 7;
        var scale = SpacingLine.ScaleOf(review);
        _hourWidth = (float)(_dayWidth / scale.Hours);
        _unit = (float)(BlocksDepth / scale.Tallest);
        _regular = new TextStyle(Weight.Regular, size, Palette.Quiet);
        _strong = new TextStyle(Weight.SemiBold, size, Palette.Ink);
    }

    /// <inheritdoc/>
    public override float Height => SpanDepth + ChangeMarks.Depth + _strong.Leading + BlocksDepth + (3 * _strong.Leading) + 12;

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        var baseline = y + SpanDepth + ChangeMarks.Depth + _strong.Leading + BlocksDepth;
        surface.Line(x, baseline - _unit, x + (7 * _dayWidth), baseline - _unit, Palette.Hairline, 1, 3);
        var places = new Dictionary<string, Area>(StringComparer.Ordinal);
        for (var day = 0; day < _review.Week.Days.Length; day++)
            DrawDay(surface, _review.Week.Days[day], x + (day * _dayWidth), baseline, places);
        surface.Line(x, baseline, x + (7 * _dayWidth), baseline, Palette.Ink, 1.2f);
        new ChangeMarks(_review, places, _hourWidth).Draw(surface, x, _dayWidth);
        DrawSpans(surface, places, y);
        Bands.Legend(surface, x + (7 * _dayWidth) - Bands.LegendWidth(_fonts, _regular), baseline + (3 * _strong.Leading) + 7, _regular);
        surface.Text("dashed: threshold power", _regular, x, baseline + (3 * _strong.Leading) + 7);
    }

    private void DrawDay(Surface surface, DayEntry day, float left, float baseline, Dictionary<string, Area> places)
    {
        float centre = left + (_dayWidth / 2), top = baseline;
        new PlannedBlocks(_hourWidth, _unit).Draw(surface, day, centre, baseline);
        RideEntry[] rides = [.. _review.Rides.Where(ride => day.Rides.Contains(ride.File))];
        var x = centre - (_hourWidth * (float)(rides.Sum(ride => ride.DurationSeconds) / 3600) / 2);
        foreach (var ride in rides)
        {
            var area = new RideBlock(ride, _hourWidth, _unit).Draw(surface, x, baseline);
            places[ride.File] = area;
            x = area.Right;
            top = Math.Min(top, area.Top);
        }

        if (rides.Length > 0)
        {
            var stress = Shown.Number(day.Stress);
            var half = (_strong.Measure(_fonts, stress) / 2) + 2;
            surface.Fill(new Area(centre - half, top - 4 - _strong.Size, centre + half, top - 2), Palette.Paper);
            surface.Text(stress, _strong, centre, top - 5, Align.Middle);
        }

        surface.Text(Shown.Weekday(day.Date)[..3], rides.Length > 0 ? _strong : _regular, centre, baseline + _strong.Leading, Align.Middle);
        if (rides.Length > 0)
            surface.Text(Shown.TableLength(day.Hours * 3600), _regular, centre, baseline + (2 * _strong.Leading), Align.Middle);
    }

    // Only the spans that a rule finds wanting: the card says what went wrong.
    private void DrawSpans(Surface surface, Dictionary<string, Area> places, float y)
    {
        foreach (var span in _review.Week.Spans.Where(span => span.Verdict is Verdict.Broken or Verdict.Watch))
        {
            if (!places.TryGetValue(span.ToRide, out var to))
                continue;
            var before = !places.TryGetValue(span.FromRide, out var from);
            float start = before ? to.Left - (_dayWidth / 2) : from.Right, line = y + SpanDepth - 6;
            surface.Line(start, line, to.Left, line, Palette.Rust, 2.2f, before ? 3 : 0);
            foreach (var end in new[] { start, to.Left })
                surface.Line(end, line - 5, end, line + 5, Palette.Rust, 2.2f);
            surface.Text(Shown.Hours(span.Hours, 0), _strong with { Colour = Palette.Rust }, (start + to.Left) / 2, line - 9, Align.Middle);
        }
    }
}
