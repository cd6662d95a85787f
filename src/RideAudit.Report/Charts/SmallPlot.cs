using System.Collections.Immutable;
using NodaTime;
using RideAudit.Formatting;
using RideAudit.Report.Drawing;
using RideAudit.Report.Look;

namespace RideAudit.Report.Charts;

/// <summary>A few dated figures, small: points joined by a thin line, the first and last of each series labelled, no axis that is not needed.</summary>
/// <param name="unit">Unit of the figures.</param>
/// <param name="decimals">Decimals of a label.</param>
/// <param name="series">The series; empty ones are left out.</param>
internal sealed class SmallPlot(string unit, int decimals, ImmutableArray<SmallPlot.Series> series)
{
    private const int MostDots = 40;
    private const float DateDepth = 11;
    private const float Dot = 1.3f;
    private const float LabelRoom = 13;

    /// <summary>A figure holds until the next.</summary>
    public bool Steps { get; init; }

    /// <summary>Too little is there to draw: no series has two points.</summary>
    public bool IsEmpty => series.All(one => one.Points.Length < 2);

    /// <summary>Draws in an area, labels included.</summary>
    public void Draw(Surface surface, Area area)
    {
        (LocalDate Date, double Value)[] all = [.. series.SelectMany(one => one.Points)];
        if (IsEmpty)
        {
            surface.Hairline(area.Left, area.Right, area.Bottom - DateDepth);
            return;
        }

        LocalDate first = all.Min(point => point.Date), last = all.Max(point => point.Date);
        double low = all.Min(point => point.Value), high = all.Max(point => point.Value);
        var room = series.Max(one => Styles.Tiny.Measure(surface.Fonts, one.Name)) + 5;
        var data = new Area(area.Left + 2, area.Top + LabelRoom, area.Right - room, area.Bottom - DateDepth - 4);
        float X(LocalDate date) => first == last ? data.Left : data.Left + (data.Width * Period.DaysBetween(first, date) / Period.DaysBetween(first, last));
        float Y(double value) => high > low ? data.Bottom - (data.Height * (float)((value - low) / (high - low))) : (data.Top + data.Bottom) / 2;
        surface.Hairline(area.Left, area.Right, area.Bottom - DateDepth);
        surface.Text(Shown.ShortDate(first), Styles.Tiny, area.Left, area.Bottom - 2);
        if (last != first)
            surface.Text(Shown.ShortDate(last), Styles.Tiny, area.Right, area.Bottom - 2, Align.End);
        Series[] drawn = [.. series.Where(one => one.Points.Length > 0).OrderBy(one => Y(one.Points[^1].Value))];
        var names = Baselines([.. drawn.Select(one => Y(one.Points[^1].Value) + 2.5f)], data.Bottom);
        for (var place = 0; place < drawn.Length; place++)
        {
            var one = drawn[place];
            Point[] points = [.. one.Points.Select(point => new Point(X(point.Date), Y(point.Value)))];
            surface.Polyline(Steps ? Stepped(points) : points, new Pen(Palette.Middle, 0.8f));
            foreach (var point in points.Length > MostDots ? [] : points)
                surface.Fill(new Area(point.X - Dot, point.Y - Dot, point.X + Dot, point.Y + Dot), Palette.High);
            surface.Text(one.Name, Styles.Tiny, area.Right, names[place], Align.End);
        }

        if (series.Count(one => one.Points.Length > 0) == 1)
            LabelEnds(surface, area, series.First(one => one.Points.Length > 0));
    }

    // Names stand beside their series' ends, moved up where they would leave the plot and apart where they would touch.
    private static float[] Baselines(float[] wanted, float lowest)
    {
        for (var place = wanted.Length - 1; place >= 0; place--)
            wanted[place] = Math.Min(wanted[place], lowest - ((wanted.Length - 1 - place) * Styles.Tiny.Size));
        for (var place = 1; place < wanted.Length; place++)
            wanted[place] = Math.Max(wanted[place], wanted[place - 1] + Styles.Tiny.Size);
        return wanted;
    }

    // Above the points, where none can be touched.
    private void LabelEnds(Surface surface, Area area, Series one)
    {
        var style = Styles.Tiny with { Colour = Palette.Ink };
        var baseline = area.Top + Styles.Tiny.Ascent;
        surface.Text(Shown.Quantity(one.Points[^1].Value, unit, decimals), style, area.Right, baseline, Align.End);
        if (one.Points[0].Value != one.Points[^1].Value)
            surface.Text(Shown.Quantity(one.Points[0].Value, unit, decimals), style, area.Left, baseline);
    }

    private static IEnumerable<Point> Stepped(Point[] points)
    {
        for (var i = 0; i < points.Length; i++)
        {
            if (i > 0)
                yield return new Point(points[i].X, points[i - 1].Y);
            yield return points[i];
        }
    }

    /// <summary>Dated figures under one name.</summary>
    /// <param name="Name">Stands at the series' end; empty for a single one.</param>
    /// <param name="Points">Oldest first.</param>
    internal readonly record struct Series(string Name, ImmutableArray<(LocalDate Date, double Value)> Points);
}
