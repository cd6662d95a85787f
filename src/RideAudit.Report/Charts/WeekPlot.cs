using System.Collections.Immutable;
using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Report.Drawing;
using RideAudit.Report.Look;

namespace RideAudit.Report.Charts;

/// <summary>A plot with one place a week, the reviewed week last, on a page.</summary>
/// <param name="surface">The page.</param>
/// <param name="area">Where on it, axis labels included.</param>
/// <param name="history">Weeks, oldest first.</param>
/// <param name="scale">The value axis.</param>
internal sealed class WeekPlot(Surface surface, Area area, ImmutableArray<HistoryEntry> history, Scale scale)
{
    private const float WidestPlace = 46;
    private const float LabelPitch = 38;
    private const float LeftRoom = 30;
    private const float BottomRoom = 13;
    private const float TopRoom = 5;
    private const double AirBefore = 0.65;
    private const double AirAfter = 0.35;
    private readonly Area _data = new(
        area.Left + LeftRoom, area.Top + TopRoom, Math.Min(area.Right, area.Left + LeftRoom + (WidestPlace * history.Length)), area.Bottom - BottomRoom);
    private readonly double _first = -AirBefore;
    private readonly double _last = history.Length - AirAfter;

    /// <summary>Where a value of a week stands; weeks are counted from 0, oldest first.</summary>
    public Point At(double week, double value) => new(
        (float)(_data.Left + (_data.Width * (week - _first) / (_last - _first))),
        (float)(_data.Bottom - (_data.Height * (value - scale.Low) / (scale.High - scale.Low))));

    /// <summary>A bar's area.</summary>
    /// <param name="from">Value at its foot.</param>
    /// <param name="to">Value at its head.</param>
    /// <param name="width">Width as a share of a week's place.</param>
    public Area Bar(double week, double from, double to, double width)
    {
        Point foot = At(week - (width / 2), Math.Min(from, to)), head = At(week + (width / 2), Math.Max(from, to));
        return new Area(foot.X, head.Y, head.X, foot.Y);
    }

    /// <summary>Draws the grid and the labels of both axes.</summary>
    public void DrawAxes()
    {
        foreach (var value in scale.Ticks)
        {
            var y = At(0, value).Y;
            surface.Line(_data.Left, y, _data.Right, y, Palette.Hairline, 0.5f);
            surface.Text(Shown.Number(value, scale.Decimals), Styles.Tiny, _data.Left - 6, y + 2.7f, Align.End);
        }

        var every = Math.Max(1, (int)Math.Ceiling(LabelPitch * (_last - _first) / _data.Width));
        for (var week = history.Length - 1; week >= 0; week -= every)
        {
            var date = Shown.ShortDate(history[week].StartsOn);
            surface.Text(date, Styles.Tiny, Inside(At(week, 0).X, Styles.Tiny.Measure(surface.Fonts, date) / 2), area.Bottom - 3, Align.Middle);
        }
    }

    /// <summary>A line across at a level.</summary>
    public void DrawLevel(double value, Pen pen) => surface.Line(_data.Left, At(0, value).Y, _data.Right, At(0, value).Y, pen);

    /// <summary>A value beside its mark, on a patch of paper so that no line runs through it.</summary>
    public void Label(string text, float x, float baseline)
    {
        var style = Styles.Tiny with { Colour = Palette.Ink };
        var half = (style.Measure(surface.Fonts, text) / 2) + 1;
        x = Inside(x, half);
        surface.Fill(new Area(x - half, baseline - style.Size + 1, x + half, baseline + 1), Palette.Paper);
        surface.Text(text, style, x, baseline, Align.Middle);
    }

    // The last week's labels may be wider than its place: they stay inside the area.
    private float Inside(float middle, float half) => Math.Min(middle, area.Right - half);
}
