using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;
using RideAudit.Rules;

namespace RideAudit.Report.Pages;

/// <summary>The spacing line of the card: fewer words, larger letters, the change drawn.</summary>
internal sealed class CardLine : Block
{
    private const float BlocksDepth = 180;
    private const float RestDepth = 24;
    private const float SpanDepth = 30;
    private const float MarkRoom = 14;
    private const float Between = 6;
    private readonly ReviewDocument _review;
    private readonly FontSet _fonts;
    private readonly float _dayWidth;
    private readonly float _hourWidth;
    private readonly float _unit;
    private readonly TextStyle _regular;
    private readonly TextStyle _strong;
    private readonly bool _isNarrow;
    private readonly List<TextLine> _key;

    /// <param name="width">Width, pt.</param>
    /// <param name="size">Size of its text, pt.</param>
    public CardLine(ReviewDocument review, FontSet fonts, float width, float size)
    {
        (_review, _fonts) = (review, fonts);
        _dayWidth = width / 7;
        var scale = SpacingLine.ScaleOf(review);
        _hourWidth = (float)(_dayWidth / scale.Hours);
        _unit = (float)((review.Rides.IsEmpty ? RestDepth : BlocksDepth) / scale.Tallest);
        _regular = new TextStyle(Weight.Regular, size, Palette.Quiet);
        _strong = new TextStyle(Weight.SemiBold, size, Palette.Ink);
        _isNarrow = review.Week.Days.Any(day => _regular.Measure(fonts, Length(day)) > _dayWidth - Between);
        _key = review.Rides.IsEmpty ? [] : LineBreaker.Break(fonts, [new Span(Key(review), _regular)], width - Bands.LegendWidth(fonts, _regular) - (3 * Between));
    }

    /// <inheritdoc/>
    public override float Height => Over + _strong.Leading + Blocks + (Captions * _strong.Leading) + (_key.Count == 0 ? 0 : 10 + _key.Sum(line => line.Leading));

    private float Blocks => _review.Rides.IsEmpty ? RestDepth : BlocksDepth;

    private float Over => (Wanting.Any() ? SpanDepth : 0) + (ChangeMarks.Moves(_review) ? ChangeMarks.Depth : 0);

    private int Captions => _review.Rides.IsEmpty ? 1 : _isNarrow ? 3 : 2;

    // Only the spans that a rule finds wanting: the card says what went wrong.
    private IEnumerable<SpanEntry> Wanting => _review.Week.Spans.Where(span => span.Verdict is Verdict.Broken or Verdict.Watch);

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        var baseline = y + Over + _strong.Leading + Blocks;
        if (!_review.Rides.IsEmpty)
            surface.Line(x, baseline - _unit, x + (7 * _dayWidth), baseline - _unit, Palette.Hairline, 1, 3);
        var labels = new DayLabels(_fonts, _strong);
        var places = new Dictionary<string, Area>(StringComparer.Ordinal);
        for (var day = 0; day < _review.Week.Days.Length; day++)
            DrawDay(surface, _review.Week.Days[day], x + (day * _dayWidth), baseline, places, labels);
        surface.Line(x, baseline, x + (7 * _dayWidth), baseline, Palette.Ink, 1.2f);
        new ChangeMarks(_review, places, _hourWidth, labels.Areas).Draw(surface, x, _dayWidth);
        labels.Draw(surface);
        DrawSpans(surface, places, x, y);
        DrawKey(surface, x, baseline + (Captions * _strong.Leading) + 10);
    }

    private static string Key(ReviewDocument review) => string.Join("; ", new[]
    {
        "dotted line: threshold power",
        review.Week.Days.SelectMany(PlannedBlocks.Of).Any() ? "outline: planned" : null,
        ChangeMarks.Words(review),
    }.OfType<string>());

    private static string Length(DayEntry day) => Shown.TableLength(day.Hours * 3600);

    private void DrawKey(Surface surface, float x, float y)
    {
        if (_key.Count == 0)
            return;
        Bands.Legend(surface, x + (7 * _dayWidth) - Bands.LegendWidth(_fonts, _regular), y + _regular.Ascent, _regular);
        foreach (var line in _key)
        {
            line.Draw(surface, x, y + line.Ascent);
            y += line.Leading;
        }
    }

    private void DrawDay(Surface surface, DayEntry day, float left, float baseline, Dictionary<string, Area> places, DayLabels labels)
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
            labels.Add(Shown.Number(day.Stress), centre, top - 5);

        surface.Text(Shown.Weekday(day.Date)[..3], rides.Length > 0 ? _strong : _regular, centre, baseline + _strong.Leading, Align.Middle);
        if (rides.Length > 0)
            DrawLength(surface, day, centre, baseline + (2 * _strong.Leading));
    }

    // Hours over minutes where a day is too narrow for both.
    private void DrawLength(Surface surface, DayEntry day, float centre, float baseline)
    {
        string[] parts = _isNarrow && Length(day).Split(['\u00A0', ' ']) is [var hours, var h, var minutes, var min] ? [$"{hours}\u00A0{h}", $"{minutes}\u00A0{min}"] : [Length(day)];
        foreach (var part in parts)
        {
            surface.Text(part, _regular, centre, baseline, Align.Middle);
            baseline += _strong.Leading;
        }
    }

    private void DrawSpans(Surface surface, Dictionary<string, Area> places, float x, float y)
    {
        foreach (var span in Wanting)
        {
            if (!places.TryGetValue(span.ToRide, out var to))
                continue;
            var before = !places.TryGetValue(span.FromRide, out var from);
            float start = before ? to.Left - (_dayWidth / 2) : from.Right, line = y + SpanDepth - 6;
            surface.Line(start, line, to.Left, line, Palette.Rust, 2.2f, before ? 3 : 0);
            foreach (var end in new[] { start, to.Left })
                surface.Line(end, line - 5, end, line + 5, Palette.Rust, 2.2f);
            var hours = TextLine.Of(_fonts, Shown.Hours(span.Hours, 0), _strong with { Colour = Palette.Rust });
            var at = Math.Clamp((start + to.Left - hours.Width - MarkRoom) / 2, x, x + (7 * _dayWidth) - hours.Width - MarkRoom);
            VerdictMark.Draw(surface, span.Verdict, at, line - 9, _strong.Size);
            hours.Draw(surface, at + MarkRoom, line - 9);
        }
    }
}
