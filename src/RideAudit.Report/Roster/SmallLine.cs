using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Report.Drawing;
using RideAudit.Report.Look;
using RideAudit.Weeks;

namespace RideAudit.Report.Roster;

/// <summary>A rider's last weeks as small spacing lines, one scale for all of them.</summary>
/// <param name="weeks">The weeks.</param>
internal sealed class SmallLine(IReadOnlyList<SmallWeek> weeks)
{
    /// <summary>Width of four weeks, pt.</summary>
    public const float Width = (4 * WeekWidth) + (3 * Gap);

    /// <summary>Depth, dates included, pt.</summary>
    public const float Depth = BlocksDepth + DateDepth;

    /// <summary>Depth without dates, pt: the blocks, and the bars under them.</summary>
    public const float UndatedDepth = BlocksDepth + 3;

    private const float WeekWidth = 42;
    private const float Gap = 7;
    private const float BlocksDepth = 25;
    private const float DateDepth = 13;
    private const double UnknownShare = 0.5;

    /// <summary>Draws the weeks, the last one at the right.</summary>
    /// <param name="surface">The page.</param>
    /// <param name="x">Left edge of the room for four weeks.</param>
    /// <param name="y">Top.</param>
    /// <param name="dated">With each week's first day under it.</param>
    public void Draw(Surface surface, float x, float y, bool dated = true)
    {
        SmallWeek.Day[] ridden = [.. weeks.SelectMany(week => week.Days).Where(day => day.Hours > 0)];
        var scale = WeekScale.Of(ridden.Select(day => day.Hours), ridden.Select(Share));
        var hour = (float)(WeekWidth / 7 / scale.Hours);
        var unit = (float)(BlocksDepth / scale.Tallest);
        for (var i = 0; i < weeks.Count; i++)
        {
            var left = x + Width - ((weeks.Count - i) * (WeekWidth + Gap)) + Gap;
            DrawWeek(surface, weeks[i], left, y + BlocksDepth, hour, unit);
            if (dated)
                surface.Text(Shown.ShortDate(weeks[i].StartsOn), Styles.Tiny, left + (WeekWidth / 2), y + BlocksDepth + 10, Align.Middle);
        }
    }

    private static void DrawWeek(Surface surface, SmallWeek week, float left, float baseline, float hour, float unit)
    {
        const float Day = WeekWidth / 7;
        for (var i = 0; i < week.Days.Length; i++)
        {
            var day = week.Days[i];
            float middle = left + (Day * (i + 0.5f)), half = (float)day.Hours * hour / 2;
            if (day.Hours > 0)
                DrawDay(surface, day, new Area(middle - half, baseline - ((float)Share(day) * unit), middle + half, baseline));
            if (day.Exception is not null and not ExceptionKind.Lighter)
                surface.Line(left + (Day * i), baseline + 1.6f, left + (Day * (i + 1)), baseline + 1.6f, Palette.Quiet, 1.8f);
        }

        surface.Line(left, baseline, left + WeekWidth, baseline, Palette.Ink, 0.6f);
    }

    private static void DrawDay(Surface surface, SmallWeek.Day day, Area area)
    {
        if (day.Stress is null || day.Kind is DayKind.Unrated or null)
            surface.Frame(area, Palette.Quiet, 0.5f);
        else
            Bands.FillPlain(surface, area, day.Kind switch { DayKind.High => 2, DayKind.Threshold => 1, _ => 0 });
    }

    // Stress is hours × ratio squared × 100: its share of an hour at threshold is the block's height.
    private static double Share(SmallWeek.Day day) => day.Stress is { } stress ? stress / day.Hours / 100 : UnknownShare;
}
