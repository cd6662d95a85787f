using System.Collections.Immutable;
using RideAudit.Document;
using RideAudit.Report.Drawing;
using RideAudit.Report.Look;
using RideAudit.Report.Words;

namespace RideAudit.Report.Charts;

/// <summary>A ride's power over the bands of its threshold, with heart rate in a lane beneath.</summary>
/// <param name="ride">The ride.</param>
/// <param name="trace">Its samples.</param>
/// <param name="cuts">The bands' limits, % of threshold power.</param>
/// <param name="width">Width, pt.</param>
/// <param name="depth">Height without the time axis, pt.</param>
internal sealed class TraceChart(RideEntry ride, RideTrace trace, ImmutableArray<double> cuts, float width, float depth)
{
    private const float AxisRoom = 30;
    private const float HeartDepth = 24;
    private const float LaneGap = 5;
    private const float PointsPerSample = 0.4f;
    private const double LongestMarkedShare = 0.7;
    private static readonly double[] Tints = [0, 0.35, 0.75];
    private static readonly int[] MarkedWindows = [60, 300, 1200];

    /// <summary>Whether there is a trace to draw.</summary>
    public static bool HasSomething(RideTrace trace) => !trace.Power30W.IsEmpty || !trace.HeartRateBpm.IsEmpty;

    /// <summary>Draws with the top left corner at a point.</summary>
    public void Draw(Surface surface, float x, float y)
    {
        float left = x + AxisRoom;
        float right = x + width;
        bool heart = !trace.HeartRateBpm.IsEmpty;
        bool power = !trace.Power30W.IsEmpty;
        float powerBottom = y + depth - (heart && power ? HeartDepth + LaneGap : 0);
        if (power)
            DrawPower(surface, new Area(left, y + 7, right, powerBottom));
        if (heart)
            DrawHeart(surface, new Area(left, power ? y + depth - HeartDepth : y + 7, right, y + depth));
        DrawTime(surface, left, right, y + depth);
    }

    private float X(Area area, double second) =>
        area.Left + (area.Width * (float)(second / Math.Max(1, ride.DurationSeconds)));

    private void DrawPower(Surface surface, Area area)
    {
        double threshold = ride.ThresholdPowerW ?? 0;
        double top = Math.Max(threshold * 1.15, trace.Power30W.Where(float.IsFinite).DefaultIfEmpty(0).Max() * 1.04);
        float Y(double watts) => area.Bottom - (area.Height * (float)(Math.Min(watts, top) / top));
        if (threshold > 0)
        {
            DrawBands(surface, area, Y, threshold, top);
            surface.Line(area.Left, Y(threshold), area.Right, Y(threshold), Palette.Quiet, 0.5f, 2);
            surface.Text(Say.Number(threshold), Styles.Tiny, area.Left - 4, Y(threshold) + 2.7f, Align.End);
        }

        surface.Text("W", Styles.Tiny, area.Left - 4, area.Bottom, Align.End);
        foreach (StretchEntry stretch in ride.Stretches.OrderBy(stretch => stretch.SharePercent))
            DrawStretch(surface, area, stretch);
        surface.Polyline(Points(trace.Power30W, area, Y), new Pen(Palette.Ink, 0.7f));
        float free = area.Left;
        foreach (BestPowerEntry best in ride.BestPowers.Where(best => MarkedWindows.Contains(best.Seconds)).OrderBy(best => best.StartSecond))
            free = DrawBest(surface, area, best, free);
    }

    private float DrawBest(Surface surface, Area area, BestPowerEntry best, float free)
    {
        float from = X(area, best.StartSecond), to = X(area, best.StartSecond + best.Seconds);
        float y = area.Bottom - 3;
        string label = Say.Window(best.Seconds);
        float width = Styles.Tiny.Measure(surface.Fonts, label);
        float at = Math.Clamp(from, area.Left, area.Right - width);
        if (best.Seconds >= ride.DurationSeconds * LongestMarkedShare || at < free)
            return free;
        surface.Line(from, y, to, y, Palette.Ink, 0.6f);
        surface.Line(from, y - 2, from, y, Palette.Ink, 0.6f);
        surface.Line(to, y - 2, to, y, Palette.Ink, 0.6f);
        surface.Text(label, Styles.Tiny, at, y - 3.5f);
        return Math.Max(to, at + width) + 6;
    }

    private void DrawBands(Surface surface, Area area, Func<double, float> y, double threshold, double top)
    {
        double[] limits = [0, .. cuts.Select(cut => Math.Min(top, cut / 100 * threshold)), top];
        for (int band = 0; band + 1 < limits.Length && band < Tints.Length; band++)
            surface.Fill(new Area(area.Left, y(limits[band + 1]), area.Right, y(limits[band])), Palette.Low.Tint(Tints[band]));
        surface.Line(area.Left, area.Bottom, area.Right, area.Bottom, Palette.Hairline, 0.6f);
    }

    private void DrawStretch(Surface surface, Area area, StretchEntry stretch)
    {
        float from = X(area, stretch.StartSecond), to = X(area, stretch.EndSecond);
        float y = area.Top - (stretch.SharePercent >= cuts[^1] ? 2 : 5);
        surface.Line(from, y, to, y, stretch.SharePercent >= cuts[^1] ? Palette.High : Palette.Middle, 2);
    }

    private void DrawHeart(Surface surface, Area area)
    {
        float[] known = [.. trace.HeartRateBpm.Where(float.IsFinite)];
        if (known.Length == 0)
            return;
        double low = Math.Floor(known.Min() / 10.0) * 10, high = Math.Max(low + 20, Math.Ceiling(known.Max() / 10.0) * 10);
        float Y(double bpm) => area.Bottom - (area.Height * (float)((bpm - low) / (high - low)));
        surface.Polyline(Points(trace.HeartRateBpm, area, Y), new Pen(Palette.Quiet, 0.7f));
        surface.Text(Say.Number(high), Styles.Tiny, area.Left - 4, area.Top + 4, Align.End);
        surface.Text(Say.Number(low), Styles.Tiny, area.Left - 4, area.Bottom, Align.End);
        surface.Text("bpm", Styles.Tiny, area.Left - 4, ((area.Top + 4 + area.Bottom) / 2), Align.End);
    }

    private List<Point> Points(ImmutableArray<float> samples, Area area, Func<double, float> y)
    {
        int bucket = Math.Max(1, (int)(samples.Length / (area.Width / PointsPerSample)));
        var points = new List<Point>((samples.Length / bucket) + 1);
        for (int at = 0; at < samples.Length; at += bucket)
        {
            float[] known = [.. samples.AsSpan(at, Math.Min(bucket, samples.Length - at)).ToArray().Where(float.IsFinite)];
            float x = X(area, (double)at * trace.StepSeconds);
            points.Add(new Point(Math.Min(x, area.Right), known.Length == 0 ? float.NaN : y(known.Average())));
        }

        return points;
    }

    private void DrawTime(Surface surface, float left, float right, float y)
    {
        var area = new Area(left, y, right, y);
        foreach (int pause in trace.PauseSeconds)
            surface.Line(X(area, pause), y - 3, X(area, pause), y + 1, Palette.Rust, 0.8f);
        surface.Line(left, y, right, y, Palette.Hairline, 0.6f);
        int step = TickStep(ride.DurationSeconds);
        for (int second = 0; second <= ride.DurationSeconds; second += step)
        {
            float x = X(area, second);
            surface.Line(x, y, x, y + 2.5f, Palette.Quiet, 0.5f);
            Align align = second == 0 ? Align.Start : x > right - 22 ? Align.End : Align.Middle;
            surface.Text(second == 0 ? "0" : Say.Length(second), Styles.Tiny, x, y + 9.5f, align);
        }
    }

    private static int TickStep(long duration) => duration switch
    {
        <= 1200 => 300,
        <= 3600 => 600,
        <= 7200 => 1200,
        <= 14400 => 1800,
        <= 36000 => 3600,
        _ => 7200,
    };
}
