using RideAudit.Document;
using RideAudit.Report.Drawing;
using RideAudit.Report.Look;
using RideAudit.Rules.Changes;

namespace RideAudit.Report.Pages;

/// <summary>The smallest change, drawn on the spacing line: an open block on the day a ride would move to and an arrow to it; a ride that would change in place is outlined as it would be.</summary>
/// <param name="places">Where the week's rides stand.</param>
/// <param name="hourWidth">Width of an hour, pt.</param>
/// <param name="labels">The tops of the days’ labels: no arrow runs into one.</param>
internal sealed class ChangeMarks(ReviewDocument review, IReadOnlyDictionary<string, Area> places, float hourWidth, IReadOnlyList<Area> labels)
{
    /// <summary>Room that arrows take above the blocks and their labels, pt.</summary>
    public const float Depth = 18;

    private const float Clear = 3;
    private const float Rise = 4;
    private const float Head = 3.4f;
    private const float Beside = 3;
    private static readonly Pen Outline = new(Palette.Ink, 1.1f, 2.6f) { Gap = 1.8f };
    private static readonly Pen Arrow = new(Palette.Ink, 1.1f);

    /// <summary>A change moves a ride to another day.</summary>
    public static bool Moves(ReviewDocument review) => review.SmallestChange is { } change && change.Changes.Any(one => one.From != one.To);

    /// <summary>How the change is drawn, in words; null without one.</summary>
    public static string? Words(ReviewDocument review)
    {
        if (review.SmallestChange is not { Changes.IsEmpty: false } change)
            return null;
        string[] marks = [.. change.Changes.Select(Mark).Distinct()];
        return $"{Formatting.Shown.List(marks)}: the smallest change";
    }

    private static string Mark(RideChange change) => change switch
    {
        _ when change.From != change.To => "dashed, with an arrow",
        { Kind: ChangeKind.LeaveOut } => "struck through",
        { Minutes: not null } => "dashed",
        _ => "arrow down",
    };

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
        // It stays in its day’s column, over what was ridden there if need be: beside it, it would stand on the next day.
        start = Math.Max(left, Math.Min(start, left + dayWidth - ride.Width));
        return new Area(start, ride.Top, start + ride.Width, ride.Bottom);
    }

    private void DrawMove(Surface surface, Area ride, Area target, int nth)
    {
        float from = (ride.Left + ride.Right) / 2, to = (target.Left + target.Right) / 2;
        var between = places.Values.Where(block => block.Right > Math.Min(from, to) && block.Left < Math.Max(from, to)).Min(block => block.Top);
        between = labels.Where(label => label.Right > Math.Min(from, to) - 1 && label.Left < Math.Max(from, to) + 1).Select(label => label.Top).Append(between).Min() - Clear;
        var level = between - Rise - (nth * 5);
        float shift = nth == 0 ? 0 : to > from ? 4 : -4;
        var foot = Above(new Area(to - Head, target.Top, to + Head, target.Top), target.Top) - 1.5f;
        Frame(surface, target);
        surface.Polyline([new Point(from + shift, Math.Min(between, Above(ride, ride.Top) - Clear + 1)), new Point(from + shift, level), new Point(to, level), new Point(to, foot - 2.5f)], Arrow);
        HeadAt(surface, to, foot);
    }

    // The lowest an arrow may reach over a stretch of the line: above what stands there and above its label.
    private float Above(Area stretch, float top) =>
        labels.Where(label => label.Right > stretch.Left && label.Left < stretch.Right).Select(label => label.Top).Append(top).Min();

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
