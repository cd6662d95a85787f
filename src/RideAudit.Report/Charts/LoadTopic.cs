using System.Collections.Immutable;
using RideAudit.Document;
using RideAudit.Report.Look;
using RideAudit.Report.Words;
using ScottPlot;
using SkiaSharp;
using Palette = RideAudit.Report.Look.Palette;

namespace RideAudit.Report.Charts;

/// <summary>Chronic load as a thin line: dotted while settling in, solid once settled.</summary>
/// <param name="title">The finding.</param>
/// <param name="caption">In words.</param>
internal sealed class LoadTopic(string title, string caption) : TrendTopic(title, caption)
{
    /// <inheritdoc/>
    public override void Draw(Ink ink, ReviewDocument review, SKRect area)
    {
        ImmutableArray<HistoryEntry> history = review.History;
        Scale scale = Scale.For(history.Select(week => week.ChronicLoad), 3);
        using var plot = new WeekPlot(history, scale.Low, scale.High, scale.Step);
        int settled = 0;
        while (settled < history.Length && history[settled].SettlingIn)
            settled++;
        AddLine(plot, history, 0, Math.Min(settled, history.Length - 1), WeekPlot.Dots);
        AddLine(plot, history, settled, history.Length - 1, LinePattern.Solid);
        plot.Draw(ink, area);
        if (history.IsEmpty)
            return;
        SKPoint last = plot.At(history.Length - 1, history[^1].ChronicLoad);
        ink.Shape(Palette.Ink, new(last.X - 2.2f, last.Y), new(last.X, last.Y - 2.2f), new(last.X + 2.2f, last.Y), new(last.X, last.Y + 2.2f));
        WeekPlot.Label(ink, Say.Number(history[^1].ChronicLoad, 1), last.X, last.Y - 5);
        if (settled > 0 && settled < history.Length)
            DrawSettled(ink, plot, settled, scale);
    }

    private static void AddLine(WeekPlot plot, ImmutableArray<HistoryEntry> history, int from, int to, LinePattern pattern)
    {
        if (to <= from)
            return;
        double[] weeks = [.. Enumerable.Range(from, to - from + 1).Select(week => (double)week)];
        double[] loads = [.. weeks.Select(week => history[(int)week].ChronicLoad)];
        ScottPlot.Plottables.Scatter line = plot.Plot.Add.ScatterLine(weeks, loads, WeekPlot.Of(Palette.Ink));
        line.LineWidth = 1.1f;
        line.LinePattern = pattern;
    }

    private static void DrawSettled(Ink ink, WeekPlot plot, int settled, Scale scale)
    {
        float x = plot.At(settled - 0.5, 0).X;
        ink.Line(x, plot.At(0, scale.High).Y, x, plot.At(0, scale.Low).Y, Palette.Quiet, 0.5f, 1.5f);
        ink.Text("settled from here", Styles.Tiny, x + 3, plot.At(0, scale.High).Y + 7);
    }
}
