using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;
using RideAudit.Units;

namespace RideAudit.Report.Pages;

/// <summary>One row a ride, never a single one apart from the rest.</summary>
/// <param name="width">Width, pt.</param>
internal sealed class RideTable(ReviewDocument review, FontSet fonts, float width)
{
    private const int MostTogether = 8;
    private const int MostRoomyRows = 5;
    private const int AllColumns = 11;
    private const int StressColumn = 5;
    private const int FirstThatMayBeEmpty = 3;
    private const int FirstFigure = 2;
    private const float FiguresFrom = 186;
    private const float FullWidth = 493;
    private const float WidestStep = 62;

    private float Air => IsClose || review.Rides.Length > MostRoomyRows ? 1.6f : 3;

    /// <summary>Rows stand closer than they need to.</summary>
    public bool IsClose { get; init; }

    /// <summary>Every ride has its strip.</summary>
    public bool Appendix { get; init; }

    /// <summary>A ride has a strip on page three: it is hard or long.</summary>
    public static bool HasStrip(RideEntry ride) => ride.IsHard || ride.Kind == RideKind.Long;

    /// <summary>Head and rows.</summary>
    public IEnumerable<Block> Blocks()
    {
        var shown = ShownColumns();
        var all = Columns();
        Column[] columns = [.. Spread(shown.Select(column => all[column]))];
        var heads = RowBlock.Heads(fonts, columns, width);
        yield return new GapBlock(6) { KeepWithNext = true };
        yield return heads;
        for (var i = 0; i < review.Rides.Length; i++)
        {
            var atAnEnd = i == 0 || i == review.Rides.Length - 2 || (review.Rides.Length <= MostTogether && i < review.Rides.Length - 1);
            yield return new RowBlock(fonts, columns, Cells(i, shown), width) { Air = Air, Anchor = Appendix || HasStrip(review.Rides[i]) ? null : Places.Ride(i), RunningHead = heads, KeepWithNext = atAnEnd && review.Rides.Length > 1 };
        }

        yield return new HairlineBlock(width, 2);
    }

    /// <summary>A figure of a row is not known.</summary>
    public bool HasMissing => ShownColumns() is var shown && Enumerable.Range(0, review.Rides.Length).Any(ride => Cells(ride, shown).Any(cell => cell.Text == Formatting.Shown.Missing));

    private Span[] Cells(int ride, int[] shown)
    {
        var all = Row(review.Rides[ride], ride, Appendix || HasStrip(review.Rides[ride]));
        return [.. shown.Select(column => all[column])];
    }

    // A column of dashes says no more than its absence.
    private int[] ShownColumns() =>
        [.. Enumerable.Range(0, AllColumns).Where(column => column is < FirstThatMayBeEmpty or StressColumn || review.Rides.Any(ride => Row(ride, 0, false)[column].Text != Formatting.Shown.Missing))];

    // Figures are spread over the width whatever columns are left.
    private IEnumerable<Column> Spread(IEnumerable<Column> columns)
    {
        Column[] all = [.. columns];
        float from = FiguresFrom / FullWidth * width, step = Math.Min(WidestStep, (width - from) / Math.Max(1, all.Length - 1 - FirstFigure));
        return all.Select((column, place) => place < FirstFigure ? column : column with { X = from + ((place - FirstFigure) * step) });
    }

    private Column[] Columns()
    {
        var scale = width / FullWidth;
        (string Head, float X, float Width, Align Align)[] plain =
        [
            ("start", 0, 82, Align.Start), ("kind", 84, 62, Align.Start), ("time", 186, 0, Align.End), ("norm. W", 232, 0, Align.End),
            ("ratio", 268, 0, Align.End), ("stress", 304, 0, Align.End), ("low", 340, 0, Align.End), ("middle", 378, 0, Align.End),
            ("high", 412, 0, Align.End), ("bpm", 446, 0, Align.End), ("drift", 493, 0, Align.End),
        ];
        return [.. plain.Select(column => new Column(column.Head, column.X * scale, column.Width * scale, column.Align))];
    }

    private static Span[] Row(RideEntry ride, int index, bool hasStrip)
    {
        var total = Bands.Total(ride.BandSeconds);
        string Share(int band) => total == 0 ? Shown.Missing : Shown.Share(Bands.Seconds(ride.BandSeconds, band) / total);
        string[] texts =
        [
            $"{Shown.ShortDay(ride.StartsAt.Date)} {Shown.Time(ride.StartsAt.TimeOfDay)}", ride.Kind == RideKind.None ? "short" : Formatting.Words.Of(ride.Kind), Shown.TableLength(ride.DurationSeconds),
            Shown.Number(ride.NormalisedPowerW), Shown.Number(ride.IntensityRatio, 2), Shown.Number(ride.Stress), Share(0), Share(1), Share(2),
            Shown.Number(ride.MeanHeartRateBpm), ride.HeartRateDriftPercent is { } drift ? Shown.Signed(drift) + "\u00A0%" : Shown.Missing,
        ];
        Span[] spans = [.. texts.Select(text => new Span(text, Styles.SmallInk))];
        spans[0] = spans[0] with { Target = hasStrip ? Places.Ride(index) : null, Style = Styles.SmallStrong };
        return spans;
    }
}
