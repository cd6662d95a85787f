using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Report.Charts;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Report.Pages;

/// <summary>The week's rides: a table and a strip each.</summary>
/// <param name="traces">What its ride strips draw.</param>
/// <param name="width">Width, pt.</param>
/// <param name="appendix">The other rides' strips follow in the appendix.</param>
internal sealed class RidesSection(ReviewDocument review, ReviewTraces traces, FontSet fonts, float width, bool appendix)
{
    private const float ShallowStrip = 41;

    /// <summary>The paper is a short one: everything stands closer.</summary>
    public bool IsShort { get; init; }

    /// <summary>Depth of a strip of a hard or long ride, pt.</summary>
    public float StripDepth { get; init; } = ShallowStrip;

    private StripScale Scale => StripScale.Of(review, traces);

    /// <summary>The table, and strips of hard and long rides.</summary>
    public IEnumerable<Block> Blocks()
    {
        yield return new SectionHead(fonts, "The rides", width) { SpaceBefore = 12, KeepWithNext = true, Outline = "The rides" };
        if (review.Rides.IsEmpty)
        {
            yield return new TextBlock(fonts, "No ride in this week.", Styles.Body, width);
            yield break;
        }

        var table = new RideTable(review, fonts, width) { Appendix = appendix, IsClose = IsShort || StripDepth <= ShallowStrip };
        foreach (var block in table.Blocks())
            yield return block;
        if (Reading(table.HasMissing) is { Length: > 0 } reading)
            yield return new TextBlock(fonts, reading, Styles.Tiny, width) { SpaceBefore = 2 };
        foreach (var ride in review.Rides)
        {
            if (DataWords.Of(ride) is { } said)
                yield return new TextBlock(fonts, $"{Shown.ShortDay(ride.StartsAt.Date)} {Shown.Time(ride.StartsAt.TimeOfDay)}: {said}", Styles.SmallInk, width) { SpaceBefore = 1 };
        }

        int[] shown = [.. Enumerable.Range(0, review.Rides.Length).Where(IsShown)];
        if (shown.Length == 0)
            yield break;
        RideTrace[] drawn = [.. shown.Select(ride => traces.Of(review.Rides[ride].File)).OfType<RideTrace>().Where(TraceChart.HasSomething)];
        if (drawn.Length > 0)
            yield return new StripKey(Scale, fonts, width, drawn.Any(trace => !trace.HeartRateBpm.IsEmpty), drawn.Any(trace => !trace.PauseSeconds.IsEmpty)) { SpaceBefore = 5, KeepWithNext = true };
        foreach (var ride in shown)
            yield return Strip(ride, StripDepth);
    }

    /// <summary>Strips of the other rides.</summary>
    public IEnumerable<Block> Rest()
    {
        int[] others = [.. Enumerable.Range(0, review.Rides.Length).Where(ride => !IsShown(ride))];
        if (others.Length == 0)
            yield break;
        yield return new SectionHead(fonts, "The other rides", width) { SpaceBefore = 20, KeepWithNext = true, Outline = "The other rides" };
        foreach (var ride in others)
            yield return Strip(ride, ShallowStrip);
    }

    private bool IsShown(int ride) => RideTable.HasStrip(review.Rides[ride]);

    private RideStrip Strip(int ride, float depth) => new(review.Rides[ride], traces.Of(review.Rides[ride].File), ride, review.BandCutsPercent, Scale, fonts, width, depth, HeldOf(review.Rides[ride]))
    {
        SpaceBefore = 3,
        Outline = OutlineOf(review.Rides[ride]),
    };

    // Of several rides for one session the one whose repeats were found.
    private HeldEntry? HeldOf(RideEntry ride) => review.Week.PlannedAndRidden.FirstOrDefault(h => h.Repeats.Any(r => r.File == ride.File));

    private static string OutlineOf(RideEntry ride) =>
        $"{Shown.DayAndDate(ride.StartsAt.Date)} {Shown.Time(ride.StartsAt.TimeOfDay)}{(ride.Kind == RideKind.None ? "" : ", " + Formatting.Words.Of(ride.Kind))}";

    private string Reading(bool hasMissing)
    {
        var parts = new List<string>();
        if (review.Rides.Any(ride => ride.IntensityRatio is not null))
            parts.Add("Ratio: normalised over threshold power.");
        if (review.Rides.Any(ride => ride.HeartRateDriftPercent is not null))
            parts.Add("Drift: fall of power over heart rate from the first half to the second.");
        if (hasMissing)
            parts.Add(review.Rides.Any(ride => ride.Stress is null) ? $"{Shown.Missing}: not measured; stress unknown." : $"{Shown.Missing}: not measured.");
        if (review.Week.Days.Any(day => day.Kind == DayKind.Recovery && review.Rides.Any(ride => day.Rides.Contains(ride.File) && ride.Kind is not (RideKind.Recovery or RideKind.None))))
            parts.Add("Recovery day: one short easy ride.");
        return string.Join(' ', parts);
    }
}
