using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Report.Drawing;
using RideAudit.Report.Look;

namespace RideAudit.Report.Charts;

/// <summary>Chronic load as a thin line: dotted while settling in, solid once settled.</summary>
/// <param name="title">The finding.</param>
/// <param name="caption">In words.</param>
internal sealed class LoadTopic(string title, string caption) : TrendTopic(title, caption)
{
    /// <inheritdoc/>
    public override void Draw(Surface surface, ReviewDocument review, Area area)
    {
        var history = review.History;
        var scale = Scale.For(history.Select(week => week.ChronicLoad), 3);
        var plot = new WeekPlot(surface, area, history, scale);
        plot.DrawAxes();
        if (history.IsEmpty)
            return;
        var settled = history.TakeWhile(week => week.SettlingIn).Count();
        Point[] points = [.. history.Select((week, place) => plot.At(place, week.ChronicLoad))];
        surface.Polyline(points.Take(settled + 1), new Pen(Palette.Ink, 1.1f, 1.2f) { Gap = 2 });
        surface.Polyline(points.Skip(settled), new Pen(Palette.Ink, 1.1f));
        var last = points[^1];
        surface.Shape(Palette.Ink, new(last.X - 2.2f, last.Y), new(last.X, last.Y - 2.2f), new(last.X + 2.2f, last.Y), new(last.X, last.Y + 2.2f));
        plot.Label(Shown.Number(history[^1].ChronicLoad, 1), last.X, last.Y - 5);
    }
}
