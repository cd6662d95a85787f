using RideAudit.Document;
using RideAudit.Report.Words;
using ScottPlot;
using SkiaSharp;
using Palette = RideAudit.Report.Look.Palette;

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
    public override void Draw(Ink ink, ReviewDocument review, SKRect area)
    {
        double[] values = [.. review.History.Select(value)];
        Scale scale = Scale.For(values.Append((Level ?? 0) * 1.05), Ticks);
        using var plot = new WeekPlot(review.History, scale.Low, scale.High, scale.Step);
        plot.Plot.Add.Bars((Bar[])[.. values.Select((height, week) => WeekPlot.BarOf(week, 0, height, week == values.Length - 1 ? Palette.Ink : Palette.Middle, Width))]);
        if (Level is { } level)
            plot.Plot.Add.HorizontalLine(level, 0.8f, WeekPlot.Of(Palette.Ink), WeekPlot.Dashes);
        if (scale.Low < 0)
            plot.Plot.Add.HorizontalLine(0, 0.6f, WeekPlot.Of(Palette.Ink), LinePattern.Solid);
        plot.Draw(ink, area);
        if (values.Length == 0)
            return;
        double last = values[^1];
        SKPoint at = plot.At(values.Length - 1, last);
        float baseline = last < 0 ? at.Y + 8 : at.Y - 3;
        WeekPlot.Label(ink, scale.Low < 0 ? Say.Change(last, decimals) : Say.Number(last, decimals), at.X, baseline);
    }
}
