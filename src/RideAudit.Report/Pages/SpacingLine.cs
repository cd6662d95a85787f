using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Words;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Report.Pages;

/// <summary>The week on one baseline: each ride a block whose width is time, height intensity ratio squared, area training stress.</summary>
/// <remarks>Bands inside a block are sorted.</remarks>
internal sealed class SpacingLine : Block
{
    private const float KeyWidth = 66;
    private const float DeepSpans = 40;
    private const float NoSpans = 6;
    private const float CaptionDepth = 46;
    private const float OtherDepth = 12;
    private const float LabelDepth = 15;
    private readonly ReviewDocument _review;
    private readonly FontSet _fonts;
    private readonly float _width;
    private readonly float _depth;
    private readonly float _captions;
    private readonly float _dayWidth;
    private readonly float _hourWidth;
    private readonly float _unit;

    /// <param name="width">Width, pt.</param>
    /// <param name="depth">Height, captions and spans included, pt.</param>
    public SpacingLine(ReviewDocument review, FontSet fonts, float width, float depth)
    {
        _review = review;
        _fonts = fonts;
        _width = width;
        _depth = depth;
        _dayWidth = (width - KeyWidth) / 7;
        var scale = ScaleOf(review);
        _hourWidth = (float)(_dayWidth / scale.Hours);
        var spans = review.Week.Spans.IsEmpty ? NoSpans : DeepSpans;
        _captions = CaptionDepth + (review.Week.Days.Any(day => day.OtherActivityHours > 0 && !day.Rides.IsEmpty) ? OtherDepth : 0);
        var arrows = ChangeMarks.Moves(review) ? ChangeMarks.Depth : 0;
        _unit = (float)((depth - spans - _captions - LabelDepth - arrows) / scale.Tallest);
    }

    /// <summary>The scale of the week as ridden and as planned.</summary>
    public static WeekScale ScaleOf(ReviewDocument review) => WeekScale.Of(
        review.Week.Days.Select(day => Math.Max(day.Hours, PlannedBlocks.Of(day).Sum(session => session.Minutes!.Value) / 60.0)),
        review.Rides.Select(RideBlock.HeightShare).Concat(review.Week.Days.SelectMany(PlannedBlocks.Of).Select(PlannedBlocks.HeightShare)));

    /// <inheritdoc/>
    public override Tag? Tag => Drawing.Tag.Figure;

    /// <inheritdoc/>
    public override string? Alternative => WeekInWords.Days(_review);

    /// <inheritdoc/>
    public override float Height => _depth;

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        var baseline = y + _depth - _captions;
        if (!_review.Rides.IsEmpty)
            surface.Line(x, baseline - _unit, x + _width, baseline - _unit, Palette.Hairline, 0.8f, 2);
        var places = new Dictionary<string, Area>(StringComparer.Ordinal);
        var labels = new DayLabels(_fonts, Styles.Strong);
        for (var day = 0; day < _review.Week.Days.Length; day++)
            DrawDay(surface, _review.Week.Days[day], x + (day * _dayWidth), baseline, places, labels);
        surface.Line(x, baseline, x + (7 * _dayWidth), baseline, Palette.Ink, 0.8f);
        if (!_review.Rides.IsEmpty)
            DrawKey(surface, x + _width - KeyWidth, baseline);
        new ChangeMarks(_review, places, _hourWidth, labels.Areas).Draw(surface, x, _dayWidth);
        labels.Draw(surface);
        new SpanRow(_review.Week.Spans, places, _fonts).Draw(surface, x, x + (7 * _dayWidth), y);
    }

    private IEnumerable<RideEntry> RidesOf(DayEntry day) => _review.Rides.Where(ride => day.Rides.Contains(ride.File));

    private void DrawDay(Surface surface, DayEntry day, float left, float baseline, Dictionary<string, Area> places, DayLabels labels)
    {
        RideEntry[] rides = [.. RidesOf(day)];
        new PlannedBlocks(_hourWidth, _unit).Draw(surface, day, left + (_dayWidth / 2), baseline);
        var x = left + ((_dayWidth - (_hourWidth * (float)(rides.Sum(ride => ride.DurationSeconds) / 3600.0))) / 2);
        var top = baseline;
        foreach (var ride in rides)
        {
            var block = new RideBlock(ride, _hourWidth, _unit);
            var area = block.Draw(surface, x, baseline);
            places[ride.File] = area;
            if (x > left + 1 && !ReferenceEquals(ride, rides[0]))
                surface.Line(x, baseline, x, area.Top, Palette.Paper, 1.2f);
            x = area.Right;
            top = Math.Min(top, area.Top);
        }

        var centre = left + (_dayWidth / 2);
        if (rides.Length > 0)
            labels.Add(Shown.Number(day.Stress), centre, top - 4);
        DrawCaption(surface, day, rides, centre, baseline);
    }

    private static void DrawCaption(Surface surface, DayEntry day, RideEntry[] rides, float centre, float baseline)
    {
        var ridden = rides.Length > 0;
        surface.Text(Shown.ShortDay(day.Date), ridden ? Styles.Strong : Styles.Quiet, centre, baseline + 13, Align.Middle);
        surface.Text(Kind(day, rides), ridden ? Styles.Body : Styles.Quiet, centre, baseline + 25.5f, Align.Middle);
        if (ridden)
            surface.Text(Shown.Length(rides.Sum(ride => ride.DurationSeconds)), Styles.Quiet, centre, baseline + 38, Align.Middle);
        if (day.OtherActivityHours > 0)
            surface.Text($"other {Shown.Hours(day.OtherActivityHours)}", Styles.Small, centre, baseline + (ridden ? 38 + OtherDepth : 38), Align.Middle);
    }

    // A day of one short easy ride counts as recovery whatever its ride is called: it then says that it means the day.
    private static string Kind(DayEntry day, RideEntry[] rides) =>
        day.Kind == DayKind.Recovery && rides.Any(ride => ride.Kind is not (RideKind.Recovery or RideKind.None)) ? "recovery day" : day.KindInWords;

    private void DrawKey(Surface surface, float left, float baseline)
    {
        var right = left + KeyWidth;
        var area = new Area(right - _hourWidth, baseline - _unit, right, baseline);
        surface.Frame(area, Palette.Quiet, 0.6f, 1.5f);
        surface.Text("100", Styles.Quiet, right, baseline - _unit - 4, Align.End);
        surface.Text("key: 1 h at", Styles.Small, right, baseline + 13, Align.End);
        surface.Text("threshold", Styles.Small, right, baseline + 25.5f, Align.End);
        surface.Text("power", Styles.Small, right, baseline + 38, Align.End);
    }
}
