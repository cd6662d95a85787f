using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Report.Drawing;
using RideAudit.Report.Look;

namespace RideAudit.Report.Charts;

/// <summary>Hours by band, the planned hours as a line, exceptions lettered.</summary>
/// <param name="title">The finding.</param>
/// <param name="caption">In words.</param>
internal sealed class HoursTopic(string title, string caption) : TrendTopic(title, caption)
{
    private const double Width = 0.62;
    private const double StrokeWidth = 0.8;
    private const double LeastUnbanded = 0.05;

    /// <summary>A week has hours that are in no band: they are drawn open.</summary>
    public static bool HasUnbanded(HistoryEntry week) => week.Hours - (Bands.Total(week.BandSeconds) / 3600.0) > LeastUnbanded;

    /// <inheritdoc/>
    public override void Draw(Surface surface, ReviewDocument review, Area area)
    {
        var scale = Scale.For(review.History.SelectMany(week => new[] { week.Hours, (week.PlannedHours ?? 0) * 1.1 }), 4);
        var plot = new WeekPlot(surface, area, review.History, scale);
        plot.DrawAxes();
        for (var week = 0; week < review.History.Length; week++)
            DrawStack(surface, plot, review.History[week], week);
        for (var week = 0; week < review.History.Length; week++)
            DrawPlanned(surface, plot, review.History[week], week);
        for (var week = 0; week < review.History.Length; week++)
            DrawLabel(plot, review.History[week], week, week == review.History.Length - 1);
    }

    private static void DrawStack(Surface surface, WeekPlot plot, HistoryEntry week, int place)
    {
        double from = 0;
        for (var band = 0; band < Bands.Names.Length; band++)
        {
            var to = from + (Bands.Seconds(week.BandSeconds, band) / 3600.0);
            Bands.Fill(surface, plot.Bar(place, from, to, Width), band);
            from = to;
        }

        if (HasUnbanded(week))
            surface.Frame(plot.Bar(place, from, week.Hours, Width), Palette.Quiet, 0.5f);
    }

    // What the plan asked of that very week: a stroke across its bar, on paper so that it shows on dark.
    private static void DrawPlanned(Surface surface, WeekPlot plot, HistoryEntry week, int place)
    {
        if (week.PlannedHours is not > 0)
            return;
        var stroke = plot.Bar(place, 0, week.PlannedHours.Value, StrokeWidth);
        surface.Line(stroke.Left, stroke.Top, stroke.Right, stroke.Top, Palette.Paper, 2.6f);
        surface.Line(stroke.Left, stroke.Top, stroke.Right, stroke.Top, Palette.Ink, 1.1f);
    }

    private static void DrawLabel(WeekPlot plot, HistoryEntry week, int place, bool reviewed)
    {
        var letter = week.Exception is { } exception ? Formatting.Words.Of(exception)[..1].ToUpperInvariant() : "";
        var hours = reviewed ? Shown.Number(week.Hours, 1) : "";
        var label = string.Join('\u00A0', new[] { letter, hours }.Where(part => part.Length > 0));
        var at = plot.At(place, Math.Max(week.Hours, week.PlannedHours ?? 0));
        if (label.Length > 0)
            plot.Label(label, at.X, at.Y - 3);
    }
}
