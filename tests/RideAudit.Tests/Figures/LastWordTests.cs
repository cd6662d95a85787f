using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Rides;
using RideAudit.Units;
using static RideAudit.Tests.Support.Made;

namespace RideAudit.Tests.Figures;

/// <summary>Kinds from a rating, and the rider's and the coach's word: common practice, no source. Threshold power 250 W.</summary>
public sealed class LastWordTests
{
    [Theory]
    [InlineData(60, 7, RideKind.High)]
    [InlineData(60, 6.5, RideKind.Threshold)]
    [InlineData(60, 5, RideKind.Threshold)]
    [InlineData(60, 4, RideKind.Endurance)]
    [InlineData(60, 2, RideKind.Recovery)]
    [InlineData(76, 2, RideKind.Endurance)]
    [InlineData(143, 2, RideKind.Long)]
    [InlineData(143, 4, RideKind.Long)]
    [InlineData(143, 7, RideKind.High)]
    [InlineData(9, 7, RideKind.None)]
    public void From_a_rating_alone_the_kind_is_rated(double minutes, double rating, RideKind expected)
    {
        var figures = FiguresOf(Logged(minutes) with { Rating = rating });
        Assert.Equal(expected, figures.Kind);
        Assert.Equal(expected == RideKind.None ? KindSource.None : KindSource.Rating, figures.KindFrom);
        Assert.Equal(expected == RideKind.Long, figures.LongEnough);
        Assert.Equal(MeasureSource.None, figures.MeasuredBy);
    }

    [Fact]
    public void Power_comes_before_a_rating() =>
        Assert.Equal((RideKind.Endurance, KindSource.Power), KindOf(Ride(Flat(3600, 160)) with { Rating = 6 }));

    [Fact]
    public void The_word_comes_before_everything()
    {
        var said = Ride(Flat(3600, 160)) with { Rating = 6, GivenKind = RideKind.High };
        Assert.Equal((RideKind.High, KindSource.Word), KindOf(said));
        Assert.Equal((RideKind.Threshold, KindSource.Word), KindOf(Logged(60) with { GivenKind = RideKind.Threshold }));
        Assert.Equal((RideKind.High, KindSource.Word), KindOf(Logged(8) with { GivenKind = RideKind.High }));
    }

    [Fact]
    public void A_long_ride_by_someones_word_is_long_enough_and_another_kind_takes_nothing_away()
    {
        Assert.True(FiguresOf(Logged(120) with { GivenKind = RideKind.Long }).LongEnough);
        Assert.True(FiguresOf(Ride(Flat(9000, 160)) with { GivenKind = RideKind.Threshold }).LongEnough);
        Assert.False(FiguresOf(Logged(180) with { GivenKind = RideKind.Threshold }).LongEnough);
    }

    [Theory]
    [InlineData(160, 3600, 7, "Rated 7 of 10, which is hard for an endurance ride.")]
    [InlineData(140, 3600, 8.5, "Rated 8.5 of 10, which is hard for a recovery ride.")]
    [InlineData(300, 3600, 3, "Rated 3 of 10, which is easy for a high ride.")]
    [InlineData(140, 3600, 7, "Rated 7 of 10, which is hard for a recovery ride.")]
    [InlineData(160, 3600, 6, null)]
    [InlineData(300, 3600, 4, null)]
    [InlineData(160, 9000, 9, null)]
    public void A_rating_and_a_kind_that_contradict_each_other_are_remarked_on(double watts, int seconds, double rating, string? remark)
    {
        var figures = FiguresOf(Ride(Flat(seconds, watts)) with { Rating = rating });
        Assert.Equal(remark is null ? Array.Empty<string>() : [remark], figures.Remarks.ToArray());
    }

    [Fact]
    public void The_note_of_the_log_stays_with_the_ride() =>
        Assert.Equal("Legs like wood.", FiguresOf(Logged(60) with { Note = "Legs like wood." }).Note);

    [Fact]
    public void The_limits_of_ratings_can_be_set() =>
        Assert.Equal(RideKind.Threshold, FiguresOf(Logged(60) with { Rating = 7 }, limits: new Limits { RatingHigh = 8 }).Kind);

    private static (RideKind Kind, KindSource From) KindOf(Ride ride) => (FiguresOf(ride).Kind, FiguresOf(ride).KindFrom);

    private static Ride Logged(double minutes) => Ride(Flat(1, 0)) with
    {
        Grid = SampleGrid.Empty,
        TimerSeconds = minutes * 60,
        ElapsedSeconds = minutes * 60,
        Logged = new LoggedFigures(null, null, null),
    };
}
