using RideAudit.Document;
using RideAudit.Report.Drawing;
using RideAudit.Report.Look;

namespace RideAudit.Report.Pages;

/// <summary>What the plan laid out for a day, open behind what was ridden: width is planned time, area planned stress.</summary>
/// <param name="hourWidth">Width of an hour, pt.</param>
/// <param name="unit">Height of threshold power, pt.</param>
internal sealed class PlannedBlocks(float hourWidth, float unit)
{
    private static readonly Pen Outline = new(Palette.Quiet, 0.7f);

    /// <summary>The sessions of a day that can be drawn: those with a length and a stress.</summary>
    public static IEnumerable<PlannedSessionEntry> Of(DayEntry day) => day.Planned.Where(session => session is { Minutes: > 0, IntensityRatio: not null });

    /// <summary>Height of a session that can be drawn, as a share of threshold's: intensity ratio squared.</summary>
    public static double HeightShare(PlannedSessionEntry session) => session.IntensityRatio!.Value * session.IntensityRatio.Value;

    /// <summary>Draws a day's sessions side by side around its middle.</summary>
    public void Draw(Surface surface, DayEntry day, float centre, float baseline)
    {
        PlannedSessionEntry[] sessions = [.. Of(day)];
        var left = centre - (sessions.Sum(Width) / 2);
        foreach (var session in sessions)
        {
            float top = baseline - (unit * (float)HeightShare(session)), right = left + Width(session);
            surface.Line(left, baseline, left, top, Outline);
            surface.Line(left, top, right, top, Outline);
            surface.Line(right, top, right, baseline, Outline);
            left = right;
        }
    }

    private float Width(PlannedSessionEntry session) => hourWidth * session.Minutes!.Value / 60;
}
