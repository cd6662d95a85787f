using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Words;
using RideAudit.Units;

namespace RideAudit.Report.Pages;

/// <summary>The week's rides: a table and a strip each.</summary>
/// <param name="review">The review.</param>
/// <param name="traces">What its ride strips draw.</param>
/// <param name="fonts">Fonts.</param>
/// <param name="width">Width, pt.</param>
internal sealed class RidesSection(ReviewDocument review, ReviewTraces traces, FontSet fonts, float width)
{
    private const string Strips =
        "In the strips, tints part the bands, a dotted line is threshold power, bars on top are sustained stretches, brackets below best efforts.";

    /// <summary>The section's blocks.</summary>
    public IEnumerable<Block> Blocks()
    {
        yield return new SectionHead(fonts, "The rides", width) { SpaceBefore = 24, KeepWithNext = true, Outline = "The rides" };
        if (review.Rides.IsEmpty)
        {
            yield return new TextBlock(fonts, "No ride in this week.", Styles.Body, width);
            yield break;
        }

        string words = WeekInWords.Of(review.Week);
        if (words.Length > 0)
            yield return new TextBlock(fonts, words, Styles.Body, width) { KeepWithNext = true };
        yield return new TextBlock(fonts, Reading(), Styles.Small, width) { SpaceBefore = 3, KeepWithNext = true };
        foreach (Block block in new RideTable(review, fonts, width).Blocks())
            yield return block;
        yield return new TextBlock(fonts, Strips, Styles.Small, width) { SpaceBefore = 12, KeepWithNext = true };
        for (int i = 0; i < review.Rides.Length; i++)
            yield return new RideStrip(review.Rides[i], traces.Of(review.Rides[i].File), i, review.BandCutsPercent, fonts, width) { SpaceBefore = i == 0 ? 4 : 9, Outline = OutlineOf(review.Rides[i]) };
    }

    private static string OutlineOf(RideEntry ride) =>
        $"{Shown.DayAndDate(ride.StartsAt.Date)} {Shown.Time(ride.StartsAt.TimeOfDay)}{(ride.Kind == RideKind.None ? "" : ", " + Formatting.Words.Of(ride.Kind))}";

    private string Reading()
    {
        string cuts = string.Join(" and ", review.BandCutsPercent.Select(cut => Shown.Number(cut)));
        return $"Bands part at {cuts}{Shown.Joint}% of threshold power, on means over {Shown.Window(30)}. Norm. W is normalised power; ratio is that over threshold power; "
            + "drift is the fall of power over heart rate from the first half to the second. A dash: not measured, or without meaning for that ride.";
    }
}
