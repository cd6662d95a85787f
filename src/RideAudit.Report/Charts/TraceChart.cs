using System.Collections.Immutable;
using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Report.Drawing;
using RideAudit.Report.Look;

namespace RideAudit.Report.Charts;

/// <summary>A ride's power over the bands of its threshold, with heart rate in a lane beneath.</summary>
/// <param name="trace">Its samples.</param>
/// <param name="cuts">The bands' limits, % of threshold power.</param>
/// <param name="scale">Watts and minutes of all strips of the week.</param>
/// <param name="width">Width of the longest ride's strip, pt.</param>
/// <param name="depth">Height without the time axis, pt.</param>
/// <param name="held">The planned session that it was ridden for; null without one.</param>
internal sealed class TraceChart(RideEntry ride, RideTrace trace, ImmutableArray<double> cuts, StripScale scale, float width, float depth, HeldEntry? held)
{
    private const float AxisRoom = 36;
    private const float LeastLane = 21;
    private const float HeartShare = 0.36f;
    private const float LaneGap = 3;
    private const float PointsPerSample = 0.4f;
    private const float PointsPerBar = 1.2f;

    private float HeartDepth => depth * HeartShare;

    /// <summary>Whether there is a trace to draw.</summary>
    public static bool HasSomething(RideTrace trace) => !trace.Power30W.IsEmpty || !trace.HeartRateBpm.IsEmpty;

    /// <summary>Draws with the top left corner at a point.</summary>
    public void Draw(Surface surface, float x, float y)
    {
        var left = x + AxisRoom;
        var right = left + ((width - AxisRoom) * (float)(ride.DurationSeconds / scale.Seconds));
        var heart = !trace.HeartRateBpm.IsEmpty;
        var power = !trace.Power30W.IsEmpty;
        var powerBottom = y + depth - (heart && power ? HeartDepth + LaneGap : 0);
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
        var threshold = ride.ThresholdPowerW ?? 0;
        float Y(double watts) => area.Bottom - (area.Height * (float)(Math.Min(watts, scale.TopW) / scale.TopW));
        DrawBands(surface, area, Y, threshold);
        surface.Line(area.Left, area.Bottom, area.Right, area.Bottom, Palette.Hairline, 0.6f);
        if (threshold > 0)
        {
            surface.Line(area.Left, Y(threshold), area.Right, Y(threshold), Palette.Ink, 0.5f, 2);
            surface.Text(Shown.Watts(threshold), Styles.Tiny, area.Left - 4, Y(threshold) + 2.7f, Align.End);
        }

        var free = float.MinValue;
        foreach (var repeat in Repeats.Of(ride, held))
            free = DrawRepeat(surface, area, repeat, Shown.Number(repeat.Number), free);
    }

    private float DrawRepeat(Surface surface, Area area, Repeats.Repeat repeat, string number, float free)
    {
        float from = X(area, repeat.StartSecond), to = X(area, repeat.EndSecond);
        surface.Line(from, area.Top - 1, to, area.Top - 1, Palette.Ink, 0.9f);
        float half = Styles.Tiny.Measure(surface.Fonts, number) / 2, at = (from + to) / 2;
        if (at - half < free)
            return free;
        surface.Text(number, Styles.Tiny, at, area.Top - 3, Align.Middle);
        return at + half + 2;
    }

    // Page one's fills under the power, a run of one band at a time.
    private void DrawBands(Surface surface, Area area, Func<double, float> y, double threshold)
    {
        var samples = trace.Power30W;
        var bucket = Math.Max(1, (int)(samples.Length / Math.Max(1, area.Width / PointsPerBar)));
        for (var at = 0; at < samples.Length; at += bucket)
        {
            float[] known = [.. samples.AsSpan(at, Math.Min(bucket, samples.Length - at)).ToArray().Where(float.IsFinite)];
            if (known.Length == 0)
                continue;
            double watts = known.Average();
            float left = X(area, (double)at * trace.StepSeconds), right = Math.Min(area.Right, X(area, (double)(at + bucket) * trace.StepSeconds));
            Bands.FillPlain(surface, new Area(left, y(watts), right + 0.1f, area.Bottom), BandOf(watts, threshold));
        }
    }

    private int BandOf(double watts, double threshold) => threshold <= 0 ? 0 : cuts.Count(cut => watts >= cut / 100 * threshold);

    private void DrawHeart(Surface surface, Area area)
    {
        float[] known = [.. trace.HeartRateBpm.Where(float.IsFinite)];
        if (known.Length == 0)
            return;
        double low = Math.Floor((known.Min() - 1) / 10.0) * 10, high = Math.Max(low + 20, Math.Ceiling(known.Max() / 10.0) * 10);
        float Y(double bpm) => area.Bottom - (area.Height * (float)((bpm - low) / (high - low)));
        surface.Polyline(Points(trace.HeartRateBpm, area, Y), new Pen(Palette.Quiet, 0.7f));
        if (area.Height < LeastLane)
        {
            surface.Text($"{Shown.Number(low)}–{Shown.Number(high)}", Styles.Tiny, area.Left - 4, ((area.Top + area.Bottom) / 2) + 2.7f, Align.End);
            return;
        }

        surface.Text(Shown.Number(high), Styles.Tiny, area.Left - 4, area.Top + 4.5f, Align.End);
        surface.Text(Shown.Number(low), Styles.Tiny, area.Left - 4, area.Bottom - 1, Align.End);
    }

    private List<Point> Points(ImmutableArray<float> samples, Area area, Func<double, float> y)
    {
        var bucket = Math.Max(1, (int)(samples.Length / (area.Width / PointsPerSample)));
        var points = new List<Point>((samples.Length / bucket) + 1);
        for (var at = 0; at < samples.Length; at += bucket)
        {
            float[] known = [.. samples.AsSpan(at, Math.Min(bucket, samples.Length - at)).ToArray().Where(float.IsFinite)];
            var x = X(area, (double)at * trace.StepSeconds);
            points.Add(new Point(Math.Min(x, area.Right), known.Length == 0 ? float.NaN : y(known.Average())));
        }

        return points;
    }

    private void DrawTime(Surface surface, float left, float right, float y)
    {
        var area = new Area(left, y, right, y);
        foreach (var pause in trace.PauseSeconds)
            surface.Line(X(area, pause), y - 3, X(area, pause), y, Palette.Quiet, 0.5f);
        surface.Line(left, y, right, y, Palette.Hairline, 0.6f);
        var step = TickStep(scale.Seconds);
        for (var second = 0; second <= ride.DurationSeconds; second += step)
        {
            var x = X(area, second);
            surface.Line(x, y, x, y + 2.5f, Palette.Quiet, 0.5f);
            var align = second == 0 ? Align.Start : x > right - 22 ? Align.End : Align.Middle;
            surface.Text(second == 0 ? "0" : Shown.Length(second), Styles.Tiny, x, y + 9.5f, align);
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
