using System.Collections.Immutable;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Rides;
using RideAudit.Tests.Support;

namespace RideAudit.Tests.Figures;

public class KeptFiguresTests
{
    private static readonly ImmutableArray<Ride> Rides =
    [
        Made.Ride(Made.Blocks((1200, 180), (900, 255), (600, 120)), Made.Blocks((1200, 130), (1500, 160)), file: "a.fit"),
        Made.Ride(null, Made.Blocks((3000, 140), (600, 171)), Made.Noon.Plus(NodaTime.Duration.FromDays(1)), "b.fit"),
    ];

    public static TheoryData<string> Answers => ["none", "power", "heart rate", "rest", "maximum", "sex", "cut", "limit"];

    [Theory]
    [MemberData(nameof(Answers))]
    public void Whatever_is_answered_anew_the_figures_are_those_that_all_computing_gives(string answer)
    {
        var kept = new KeptFigures();
        var (rider, limits) = (Made.Rider(250, 165, Sex.Unset, 48, 188), new Limits());
        kept.Build(Rides, rider, limits);
        (rider, limits) = answer switch
        {
            "power" => (Made.Rider(230, 165), limits),
            "heart rate" => (Made.Rider(250, 158), limits),
            "rest" => (Made.Rider(250, 165, rest: 60), limits),
            "maximum" => (Made.Rider(250, 165, max: 200), limits),
            "sex" => (Made.Rider(250, 165, Sex.Female), limits),
            "cut" => (rider with { Plan = rider.Plan with { LowerBandCutPercent = 68 } }, limits),
            "limit" => (rider, limits with { HighSharePercent = 95 }),
            _ => (rider, limits),
        };

        var again = kept.Build(Rides, rider, limits);

        Assert.Equal(Text(FigureBuilder.Build(Rides, rider, limits)), Text(again));
    }

    [Fact]
    public void What_nothing_has_changed_for_is_the_same_object()
    {
        var kept = new KeptFigures();

        var first = kept.Build(Rides, Made.Rider(), new Limits());
        var second = kept.Build(Rides, Made.Rider(), new Limits());

        Assert.All(first.Zip(second), pair => Assert.Same(pair.First, pair.Second));
    }

    [Fact]
    public void Rides_joined_anew_from_the_same_recordings_are_not_computed_again()
    {
        var kept = new KeptFigures();
        var recordings = Rides.Select(Recorded).ToArray();

        var first = kept.Build(RideJoiner.Join(recordings), Made.Rider(), new Limits());
        var second = kept.Build(RideJoiner.Join(recordings), Made.Rider(), new Limits());

        Assert.Equal(2, first.Length);
        Assert.All(first.Zip(second), pair => Assert.Same(pair.First, pair.Second));
    }

    [Fact]
    public void A_rating_that_came_later_is_seen()
    {
        var kept = new KeptFigures();
        kept.Build(Rides, Made.Rider(), new Limits());

        var again = kept.Build([.. Rides.Select(r => r with { Rating = 6 })], Made.Rider(), new Limits());

        Assert.All(again, f => Assert.Equal(6, f.Rating));
    }

    [Fact]
    public void A_ride_of_the_same_samples_made_of_other_parts_is_another()
    {
        var kept = new KeptFigures();
        var first = kept.Build(Rides, Made.Rider(), new Limits());

        var parts = kept.Build([.. Rides.Select(r => r with { Parts = [.. r.Parts, "other.fit"] })], Made.Rider(), new Limits());
        var remarks = kept.Build([.. Rides.Select(r => r with { Parts = [.. r.Parts, "other.fit"], Remarks = ["Joined."] })], Made.Rider(), new Limits());

        Assert.All(first.Zip(parts), pair => Assert.NotSame(pair.First, pair.Second));
        Assert.All(parts.Zip(remarks), pair => Assert.NotSame(pair.First, pair.Second));
    }

    private static Recording Recorded(Ride ride) => new()
    {
        File = ride.File,
        Sport = ride.Sport,
        Start = ride.StartsAt.ToInstant(),
        Offset = ride.StartsAt.Offset,
        Grid = ride.Grid,
        TimerSeconds = ride.TimerSeconds,
        ElapsedSeconds = ride.ElapsedSeconds,
    };

    private static string Text(ImmutableArray<RideFigures> figures) => string.Join('\n', figures.Select(f => $"{f} {string.Join(' ', f.Bests)}"));
}
