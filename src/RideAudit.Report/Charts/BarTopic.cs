using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Report.Drawing;
using RideAudit.Report.Look;

namespace RideAudit.Report.Charts;

/// <summary>One bar a week, thin, the reviewed week's in ink; perhaps a level asked for.</summary>
/// <param name="title">The finding.</param>
/// <param name="caption">In words.</param>
/// <param name="value">What is drawn of a week.</param>
/// <param name="decimals">Decimals of the last value's label.</param>
internal sealed class BarTopic(string title, string caption, Func<HistoryEntry, double> value, int decimals) : TrendTopic(title, caption)
{
    private const double Width = 0.3;

    /// <summary>A level to compare with; null without one.</summary>
    public double? Level { get; init; }

    /// <summary>Ticks wanted on the value axis.</summary>
    public int Ticks { get; init; } = 4;

    /// <inheritdoc/>
    public override void Draw(Surface surface, ReviewDocument review, Area area)
    {
        double[] values = [.. review.History.Select(value)];
        var scale = Scale.For(values.Append((Level ?? 0) * 1.05), Ticks);
        var plot = new WeekPlot(surface, area, review.History, scale);
        plot.DrawAxes();
        for (var week = 0; week < values.Length; week++)
            surface.Fill(plot.Bar(week, 0, values[week], Width), week == values.Length - 1 ? Palette.Ink : Palette.Middle);
        if (Level is { } level)
            plot.DrawLevel(level, Asked);
        if (scale.Low < 0)
            plot.DrawLevel(0, new Pen(Palette.Ink, 0.6f));
        if (values.Length == 0)
            return;
        var last = values[^1];
        var at = plot.At(values.Length - 1, last);
        var baseline = last < 0 ? at.Y + 8 : at.Y - 3;
        plot.Label(scale.Low < 0 ? Shown.Signed(last, decimals) : Shown.Number(last, decimals), at.X, baseline);
    }
}
