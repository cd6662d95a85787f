using RideAudit.Document;
using RideAudit.Report.Drawing;
using RideAudit.Report.Look;
using RideAudit.Rules.Changes;

namespace RideAudit.Report.Pages;

/// <summary>The smallest change, drawn on the spacing line: an open block on the day a ride would move to and an arrow to it; a ride that would change in place is outlined as it would be.</summary>
/// <param name="places">Where the week's rides stand.</param>
/// <param name="hourWidth">Width of an hour, pt.</param>
internal sealed class ChangeMarks(ReviewDocument review, IReadOnlyDictionary<string, Area> places, float hourWidth)
{
    /// <summary>Room that arrows take above the blocks and their labels, pt.</summary>
    public const float Depth = 18;

    private const float LabelDepth = 20;
    private const float Head = 3.4f;
    private const float Beside = 3;
    private static readonly Pen Outline = new(Palette.Ink, 1.1f, 2.6f) { Gap = 1.8f };
    private static readonly Pen Arrow = new(Palette.Ink, 1.1f);

    /// <summary>A change moves a ride to another day.</summary>
    public static bool Moves(ReviewDocument review) => review.SmallestChange is { } change && change.Changes.Any(one => one.From != one.To);

    /// <summary>Draws every change.</summary>
    /// <param name="surface">The page.</param>
    /// <param name="dayLeft">Left edge of the first day, pt.</param>
    /// <param name="dayWidth">Width of a day, pt.</param>
    public void Draw(Surface surface, float dayLeft, float dayWidth)
    {
        if (review.SmallestChange is not { } change)
            return;
        var moved = 0;
        foreach (var one in change.Changes)
        {
            if (!places.TryGetValue(one.Ride, out var ride))
                continue;
            if (one.From == one.To)
                DrawInPlace(surface, one, ride);
            else
                DrawMove(surface, ride, Target(one, ride, dayLeft, dayWidth), moved++);
        }
    }

    private void DrawInPlace(Surface surface, RideChange change, Area ride)
    {
        if (change.Kind == ChangeKind.LeaveOut)
            DrawOut(surface, ride);
        else if (change.Minutes is { } minutes)
            Frame(surface, ride with { Right = ride.Left + (hourWidth * (float)(minutes / 60)) });
        else
            DrawDown(surface, (ride.Left + ride.Right) / 2, ride.Top + 3, ride.Top + (ride.Height * 0.45f));
    }

    private Area Target(RideChange change, Area ride, float dayLeft, float dayWidth)
    {
        var day = review.Week.Days.ToList().FindIndex(candidate => candidate.Date == change.To);
        var left = dayLeft + (day * dayWidth);
        var taken = review.Week.Days[day].Rides.Where(places.ContainsKey).Select(file => places[file].Right).DefaultIfEmpty(0).Max();
        var leaves = review.SmallestChange!.Changes.Any(other => other.From == change.To && other.To != change.To);
        var start = taken > 0 && !leaves ? taken + Beside : left + ((dayWidth - ride.Width) / 2);
        start = Math.Min(start, dayLeft + (7 * dayWidth) - ride.Width);
        return new Area(start, ride.Top, start + ride.Width, ride.Bottom);
    }

    private void DrawMove(Surface surface, Area ride, Area target, int nth)
    {
        float from = (ride.Left + ride.Right) / 2, to = (target.Left + target.Right) / 2;
        var between = places.Values.Where(block => block.Right > Math.Min(from, to) && block.Left < Math.Max(from, to)).Min(block => block.Top);
        var level = between - LabelDepth - (nth * 5);
        float shift = nth == 0 ? 0 : to > from ? 4 : -4;
        Frame(surface, target);
        surface.Polyline([new Point(from + shift, between - LabelDepth + 4), new Point(from + shift, level), new Point(to, level), new Point(to, target.Top - 4)], Arrow);
        HeadAt(surface, to, target.Top - 1.5f);
    }

    private static void DrawOut(Surface surface, Area ride)
    {
        surface.Line(ride.Left - 2, ride.Bottom - 2, ride.Right + 2, ride.Top + 2, new Pen(Palette.Paper, 3.4f));
        surface.Line(ride.Left - 2, ride.Bottom - 2, ride.Right + 2, ride.Top + 2, Arrow);
    }

    private static void DrawDown(Surface surface, float x, float top, float foot)
    {
        surface.Line(x, top, x, foot - Head, new Pen(Palette.Paper, 3.4f));
        surface.Line(x, top, x, foot - Head, Arrow);
        HeadAt(surface, x, foot);
    }

    private static void HeadAt(Surface surface, float x, float foot) =>
        surface.Shape(Palette.Ink, new Point(x, foot), new Point(x - Head + 0.6f, foot - (1.7f * Head)), new Point(x + Head - 0.6f, foot - (1.7f * Head)));

    private static void Frame(Surface surface, Area area)
    {
        surface.Line(area.Left, area.Bottom, area.Left, area.Top, Outline);
        surface.Line(area.Left, area.Top, area.Right, area.Top, Outline);
        surface.Line(area.Right, area.Top, area.Right, area.Bottom, Outline);
    }
}
