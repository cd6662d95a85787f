using System.Collections.Immutable;
using RideAudit.Document;
using RideAudit.Report.Look;
using RideAudit.Report.Text;
using RideAudit.Report.Words;
using SkiaSharp;

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
    private static readonly int[] MarkedWindows = [60, 300, 1200];

    /// <summary>Whether there is a trace to draw.</summary>
    public static bool HasSomething(RideTrace trace) => !trace.Power30W.IsEmpty || !trace.HeartRateBpm.IsEmpty;

    /// <summary>Draws with the top left corner at a point.</summary>
    public void Draw(Ink ink, float x, float y)
    {
        float left = x + AxisRoom;
        float right = x + width;
        bool heart = !trace.HeartRateBpm.IsEmpty;
        bool power = !trace.Power30W.IsEmpty;
        float powerBottom = y + depth - (heart && power ? HeartDepth + LaneGap : 0);
        if (power)
            DrawPower(ink, new SKRect(left, y + 7, right, powerBottom));
        if (heart)
            DrawHeart(ink, new SKRect(left, power ? y + depth - HeartDepth : y + 7, right, y + depth));
        DrawTime(ink, left, right, y + depth);
    }

    private float X(SKRect area, double second) =>
        area.Left + (area.Width * (float)(second / Math.Max(1, ride.DurationSeconds)));

    private void DrawPower(Ink ink, SKRect area)
    {
        double threshold = ride.ThresholdPowerW ?? 0;
        double top = Math.Max(threshold * 1.15, trace.Power30W.Where(float.IsFinite).DefaultIfEmpty(0).Max() * 1.04);
        float Y(double watts) => area.Bottom - (area.Height * (float)(Math.Min(watts, top) / top));
        if (threshold > 0)
        {
            DrawBands(ink, area, Y, threshold, top);
            ink.Line(area.Left, Y(threshold), area.Right, Y(threshold), Palette.Quiet, 0.5f, 2);
            ink.Text(Say.Number(threshold), Styles.Tiny, area.Left - 4, Y(threshold) + 2.7f, Align.End);
        }

        ink.Text("W", Styles.Tiny, area.Left - 4, area.Bottom, Align.End);
        foreach (StretchEntry stretch in ride.Stretches.OrderBy(stretch => stretch.SharePercent))
            DrawStretch(ink, area, stretch);
        ink.Polyline(Points(trace.Power30W, area, Y), Palette.Ink, 0.7f);
        float free = area.Left;
        foreach (BestPowerEntry best in ride.BestPowers.Where(best => MarkedWindows.Contains(best.Seconds)).OrderBy(best => best.StartSecond))
            free = DrawBest(ink, area, best, free);
    }

    private float DrawBest(Ink ink, SKRect area, BestPowerEntry best, float free)
    {
        float from = X(area, best.StartSecond), to = X(area, best.StartSecond + best.Seconds);
        float y = area.Bottom - 3;
        string label = Say.Window(best.Seconds);
        float width = Shaper.Measure(ink.Fonts, label, Styles.Tiny);
        float at = Math.Clamp(from, area.Left, area.Right - width);
        if (best.Seconds >= ride.DurationSeconds * LongestMarkedShare || at < free)
            return free;
        ink.Line(from, y, to, y, Palette.Ink, 0.6f);
        ink.Line(from, y - 2, from, y, Palette.Ink, 0.6f);
        ink.Line(to, y - 2, to, y, Palette.Ink, 0.6f);
        ink.Text(label, Styles.Tiny, at, y - 3.5f);
        return Math.Max(to, at + width) + 6;
    }

    private void DrawBands(Ink ink, SKRect area, Func<double, float> y, double threshold, double top)
    {
        double[] limits = [0, .. cuts.Select(cut => Math.Min(top, cut / 100 * threshold)), top];
        byte[] tints = [0, 90, 190];
        for (int band = 0; band + 1 < limits.Length && band < tints.Length; band++)
            ink.Fill(new SKRect(area.Left, y(limits[band + 1]), area.Right, y(limits[band])), Tint(tints[band]));
        ink.Line(area.Left, area.Bottom, area.Right, area.Bottom, Palette.Hairline, 0.6f);
    }

    private static SKColor Tint(byte strength)
    {
        byte Mix(byte from, byte to) => (byte)(from + ((to - from) * strength / 255));
        return new SKColor(Mix(255, Palette.Low.Red), Mix(255, Palette.Low.Green), Mix(255, Palette.Low.Blue));
    }

    private void DrawStretch(Ink ink, SKRect area, StretchEntry stretch)
    {
        float from = X(area, stretch.StartSecond), to = X(area, stretch.EndSecond);
        float y = area.Top - (stretch.SharePercent >= cuts[^1] ? 2 : 5);
        ink.Line(from, y, to, y, stretch.SharePercent >= cuts[^1] ? Palette.High : Palette.Middle, 2);
    }

    private void DrawHeart(Ink ink, SKRect area)
    {
        float[] known = [.. trace.HeartRateBpm.Where(float.IsFinite)];
        if (known.Length == 0)
            return;
        double low = Math.Floor(known.Min() / 10.0) * 10, high = Math.Max(low + 20, Math.Ceiling(known.Max() / 10.0) * 10);
        float Y(double bpm) => area.Bottom - (area.Height * (float)((bpm - low) / (high - low)));
        ink.Polyline(Points(trace.HeartRateBpm, area, Y), Palette.Quiet, 0.7f);
        ink.Text(Say.Number(high), Styles.Tiny, area.Left - 4, area.Top + 4, Align.End);
        ink.Text(Say.Number(low), Styles.Tiny, area.Left - 4, area.Bottom, Align.End);
        ink.Text("bpm", Styles.Tiny, area.Left - 4, ((area.Top + 4 + area.Bottom) / 2), Align.End);
    }

    private List<SKPoint> Points(ImmutableArray<float> samples, SKRect area, Func<double, float> y)
    {
        int bucket = Math.Max(1, (int)(samples.Length / (area.Width / PointsPerSample)));
        var points = new List<SKPoint>((samples.Length / bucket) + 1);
        for (int at = 0; at < samples.Length; at += bucket)
        {
            float[] known = [.. samples.AsSpan(at, Math.Min(bucket, samples.Length - at)).ToArray().Where(float.IsFinite)];
            float x = X(area, (double)at * trace.StepSeconds);
            points.Add(new SKPoint(Math.Min(x, area.Right), known.Length == 0 ? float.NaN : y(known.Average())));
        }

        return points;
    }

    private void DrawTime(Ink ink, float left, float right, float y)
    {
        var area = new SKRect(left, y, right, y);
        foreach (int pause in trace.PauseSeconds)
            ink.Line(X(area, pause), y - 3, X(area, pause), y + 1, Palette.Rust, 0.8f);
        ink.Line(left, y, right, y, Palette.Hairline, 0.6f);
        int step = TickStep(ride.DurationSeconds);
        for (int second = 0; second <= ride.DurationSeconds; second += step)
        {
            float x = X(area, second);
            ink.Line(x, y, x, y + 2.5f, Palette.Quiet, 0.5f);
            Align align = second == 0 ? Align.Start : x > right - 22 ? Align.End : Align.Middle;
            ink.Text(second == 0 ? "0" : Say.Length(second), Styles.Tiny, x, y + 9.5f, align);
        }
    }

    private static int TickStep(double duration) => duration switch
    {
        <= 1200 => 300,
        <= 3600 => 600,
        <= 7200 => 1200,
        <= 14400 => 1800,
        <= 36000 => 3600,
        _ => 7200,
    };
}
