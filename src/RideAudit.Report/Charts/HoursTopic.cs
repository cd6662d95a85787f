using RideAudit.Document;
using RideAudit.Report.Look;
using RideAudit.Report.Words;
using ScottPlot;
using SkiaSharp;
using Palette = RideAudit.Report.Look.Palette;

namespace RideAudit.Report.Charts;

/// <summary>Hours by band, the planned hours as a line, exceptions lettered.</summary>
/// <param name="title">The finding.</param>
/// <param name="caption">In words.</param>
internal sealed class HoursTopic(string title, string caption) : TrendTopic(title, caption)
{
    private const double Width = 0.62;

    /// <inheritdoc/>
    public override void Draw(Ink ink, ReviewDocument review, SKRect area)
    {
        double planned = review.Rider.PlannedHours ?? 0;
        Scale scale = Scale.For(review.History.Select(week => week.Hours).Append(planned * 1.1), 4);
        using var plot = new WeekPlot(review.History, scale.Low, scale.High, scale.Step);
        var bars = new List<Bar>();
        for (int week = 0; week < review.History.Length; week++)
            bars.AddRange(Stack(review.History[week], week));
        plot.Plot.Add.Bars(bars);
        if (planned > 0)
            plot.Plot.Add.HorizontalLine(planned, 0.8f, WeekPlot.Of(Palette.Ink), WeekPlot.Dashes);
        plot.Draw(ink, area);
        DrawOver(ink, review, plot);
    }

    private static IEnumerable<Bar> Stack(HistoryEntry week, int place)
    {
        double from = 0;
        for (int band = 0; band < 3; band++)
        {
            double to = from + (Bands.Seconds(week.BandSeconds, band) / 3600.0);
            if (to > from)
                yield return WeekPlot.BarOf(place, from, to, band switch { 0 => Palette.Low, 1 => Palette.Middle, _ => Palette.High }, Width);
            from = to;
        }
    }

    private static void DrawOver(Ink ink, ReviewDocument review, WeekPlot plot)
    {
        for (int place = 0; place < review.History.Length; place++)
        {
            HistoryEntry week = review.History[place];
            double low = week.BandSeconds.Low / 3600.0, banded = Bands.Total(week.BandSeconds) / 3600.0;
            SKRect Area(double from, double to) => new(
                plot.At(place - (Width / 2), to).X, plot.At(place, to).Y, plot.At(place + (Width / 2), from).X, plot.At(place, from).Y);
            if (week.BandSeconds.Middle > 0)
                Bands.Fill(ink, Area(low, low + (week.BandSeconds.Middle / 3600.0)), 1);
            if (week.Hours - banded > 0.05)
                ink.Frame(Area(banded, week.Hours), Palette.Quiet, 0.5f);
            string letter = week.Exception is { } exception ? Formatting.Words.Of(exception)[..1].ToUpperInvariant() : "";
            string hours = place == review.History.Length - 1 ? Say.Number(week.Hours, 1) : "";
            string label = string.Join('\u00A0', new[] { letter, hours }.Where(part => part.Length > 0));
            if (label.Length > 0)
                WeekPlot.Label(ink, label, plot.At(place, 0).X, plot.At(place, week.Hours).Y - 3);
        }
    }
}
