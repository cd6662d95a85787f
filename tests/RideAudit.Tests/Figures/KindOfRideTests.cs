using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Units;
using static RideAudit.Tests.Support.Made;

namespace RideAudit.Tests.Figures;

/// <summary>Kinds of rides: common practice, no source. Threshold power 250 W, threshold heart rate 160 bpm; every case worked out by hand.</summary>
public sealed class KindOfRideTests
{
    [Theory]
    // Sustained at or above 105 % (262.5 W) for five minutes as shown: 4 min 30 s is 5 min.
    [InlineData(300, 263, 3300, 150, RideKind.High)]
    [InlineData(270, 263, 3300, 150, RideKind.High)]
    [InlineData(269, 263, 3300, 150, RideKind.Endurance)]
    [InlineData(600, 262, 3000, 150, RideKind.Threshold)]
    // Sustained at or above 84 % (210 W) for ten minutes as shown, and a tenth of the powered time in whole per cent.
    [InlineData(600, 210, 3000, 150, RideKind.Threshold)]
    [InlineData(600, 209, 3000, 150, RideKind.Endurance)]
    [InlineData(570, 210, 3000, 150, RideKind.Threshold)]
    [InlineData(569, 210, 3000, 150, RideKind.Endurance)]
    [InlineData(600, 210, 5700, 150, RideKind.Threshold)]
    [InlineData(600, 210, 5750, 150, RideKind.Endurance)]
    public void A_hard_part_and_an_easy_part_make_the_kind(int hardSeconds, double hardW, int easySeconds, double easyW, RideKind expected)
    {
        // A pause between the parts keeps their means apart.
        var ride = Ride(Blocks((hardSeconds, hardW), (easySeconds, easyW)), pausesBefore: hardSeconds);
        Assert.Equal((expected, KindSource.Power), (FiguresOf(ride).Kind, FiguresOf(ride).KindFrom));
    }

    [Theory]
    [InlineData(5, 24, 180, RideKind.High)]
    [InlineData(4, 24, 180, RideKind.Endurance)]
    [InlineData(5, 23, 180, RideKind.Endurance)]
    [InlineData(5, 24, 150, RideKind.Endurance)]
    public void Five_bouts_of_two_minutes_in_all_make_a_ride_of_ratio_075_high(int bouts, int seconds, double easyW, RideKind expected)
    {
        // An hour. At 400 W the 5 s mean is at or above 300 W from the third second to the second after the end: as long as the effort.
        // Ratio 0.79 with five of them, 0.78 with four, 0.71 around 150 W.
        var figures = FiguresOf(Ride(Blocks([(3600 - bouts * (500 + seconds), easyW), .. Enumerable.Repeat(new[] { (seconds, 400.0), (500, easyW) }, bouts).SelectMany(b => b)])));
        Assert.Equal((expected, bouts, (double)(bouts * seconds)), (figures.Kind, figures.BoutCount, figures.BoutSeconds));
    }

    [Theory]
    [InlineData(1800, 199, RideKind.Threshold)]
    [InlineData(1800, 198.7, RideKind.Endurance)]
    [InlineData(1770, 200, RideKind.Threshold)]
    [InlineData(1769, 200, RideKind.Endurance)]
    [InlineData(8550, 160, RideKind.Long)]
    [InlineData(8549, 160, RideKind.Endurance)]
    [InlineData(4529, 150, RideKind.Recovery)]
    [InlineData(4530, 150, RideKind.Endurance)]
    [InlineData(4500, 151.2, RideKind.Recovery)]
    [InlineData(4500, 151.3, RideKind.Endurance)]
    [InlineData(570, 150, RideKind.Recovery)]
    [InlineData(569, 150, RideKind.None)]
    [InlineData(569, 300, RideKind.None)]
    public void An_even_ride_is_told_by_its_length_and_power_as_shown(int seconds, double watts, RideKind expected) =>
        Assert.Equal(expected, FiguresOf(Ride(Flat(seconds, watts))).Kind);

    [Theory]
    // 200 W is middle, and below the threshold share.
    [InlineData(3349, RideKind.Long, true)]
    [InlineData(3351, RideKind.Endurance, true)]
    [InlineData(4049, RideKind.Endurance, true)]
    [InlineData(4051, RideKind.Endurance, false)]
    public void A_long_ride_is_two_thirds_low_and_a_ride_that_is_long_enough_six_tenths(int middleSeconds, RideKind kind, bool longEnough)
    {
        var figures = FiguresOf(Ride(Blocks((middleSeconds, 200), (10_000 - middleSeconds, 150)), pausesBefore: middleSeconds));
        Assert.Equal((kind, longEnough), (figures.Kind, figures.LongEnough));
    }

    [Fact]
    public void A_threshold_ride_of_three_hours_is_long_enough()
    {
        var figures = FiguresOf(Ride(Blocks((2160, 225), (8640, 160)), pausesBefore: 2160));
        Assert.Equal((RideKind.Threshold, true), (figures.Kind, figures.LongEnough));
    }

    [Fact]
    public void The_plan_says_how_long_a_long_ride_is()
    {
        var figures = FiguresOf(Ride(Flat(5400, 160)), limits: new Limits { LongRideHours = 1.5 });
        Assert.Equal((RideKind.Long, true), (figures.Kind, figures.LongEnough));
    }

    [Theory]
    // 160 bpm is threshold heart rate, 92 % is 147.2, 75 % is 120.
    [InlineData(450, 160, 3000, 118, RideKind.High)]
    [InlineData(449, 160, 3000, 118, RideKind.Endurance)]
    [InlineData(690, 148, 3000, 118, RideKind.Threshold)]
    [InlineData(689, 148, 3000, 118, RideKind.Endurance)]
    [InlineData(1200, 147, 3000, 118, RideKind.Endurance)]
    [InlineData(0, 0, 4529, 120, RideKind.Recovery)]
    [InlineData(0, 0, 4530, 120, RideKind.Endurance)]
    [InlineData(0, 0, 4500, 121, RideKind.Endurance)]
    [InlineData(0, 0, 9000, 130, RideKind.Long)]
    [InlineData(0, 0, 569, 190, RideKind.None)]
    public void From_heart_rate_alone_the_kind_is_told_by_shares_of_threshold_heart_rate(
        int hardSeconds, double hardBpm, int easySeconds, double easyBpm, RideKind expected)
    {
        var figures = FiguresOf(Ride(null, Blocks((hardSeconds, hardBpm), (easySeconds, easyBpm))), Rider(heartRate: 160));
        Assert.Equal(expected, figures.Kind);
        Assert.Equal(expected == RideKind.None ? KindSource.None : KindSource.HeartRate, figures.KindFrom);
        Assert.Equal(expected == RideKind.Long, figures.LongEnough);
    }

    [Fact]
    public void The_ride_says_which_cuts_its_bands_have()
    {
        Assert.Equal(new BandCuts(76, 106), FiguresOf(Ride(Flat(3600, 150))).Cuts);
        Assert.Equal(new BandCuts(90, 100), FiguresOf(Ride(null, Flat(3600, 150)), Rider(heartRate: 160)).Cuts);
        Assert.Null(FiguresOf(Ride(null, Flat(3600, 150))).Cuts);
    }

    [Fact]
    public void With_neither_power_nor_threshold_heart_rate_a_ride_is_unrated()
    {
        Assert.Equal((RideKind.Unrated, KindSource.None), (FiguresOf(Ride(null, Flat(3600, 150))).Kind, FiguresOf(Ride(null, Flat(3600, 150))).KindFrom));
        Assert.Equal(RideKind.Unrated, FiguresOf(Ride(Flat(3600, 200)), new Rider()).Kind);
    }

    [Theory]
    [InlineData(569, RideKind.None)]
    [InlineData(570, RideKind.Unrated)]
    public void A_ride_of_nine_minutes_has_no_kind_whatever_is_not_known_of_it(int seconds, RideKind expected) =>
        Assert.Equal(expected, FiguresOf(Ride(null, Flat(seconds, 150))).Kind);

    [Fact]
    public void A_normalised_power_of_exactly_60_percent_is_recovery_at_every_threshold()
    {
        for (var threshold = 100; threshold <= 400; threshold++)
            Assert.Equal(RideKind.Recovery, FiguresOf(Ride(Flat(1200, 0.6 * threshold)), Rider(threshold)).Kind);
    }
}
