using RideAudit.Plan;
using RideAudit.Units;
using static RideAudit.Tests.Support.Made;

namespace RideAudit.Tests.Figures;

/// <summary>Kinds of rides: common practice, no source. Threshold power 250 W, threshold heart rate 160 bpm; every case worked out by hand.</summary>
public sealed class KindOfRideTests
{
    [Theory]
    // Sustained at or above 91 % (227.5 W): ten minutes and a twentieth of the powered time.
    [InlineData(600, 228, 3000, 150, RideKind.High)]
    [InlineData(599, 228, 3001, 150, RideKind.Endurance)]
    [InlineData(600, 228, 11_400, 150, RideKind.High)]
    [InlineData(600, 228, 11_401, 150, RideKind.Long)]
    // At or above 106 % (265 W): six minutes and a twentieth.
    [InlineData(360, 265, 3240, 150, RideKind.High)]
    [InlineData(359, 265, 3241, 150, RideKind.Endurance)]
    // Sustained at or above 84 % (210 W): ten minutes and a tenth.
    [InlineData(600, 210, 5400, 150, RideKind.Threshold)]
    [InlineData(599, 210, 5401, 150, RideKind.Endurance)]
    [InlineData(600, 210, 5401, 150, RideKind.Endurance)]
    // A quarter at or above 76 % (190 W) of a ride of half an hour.
    [InlineData(450, 200, 1350, 150, RideKind.Threshold)]
    [InlineData(449, 200, 1350, 150, RideKind.Endurance)]
    [InlineData(450, 200, 1349, 150, RideKind.Endurance)]
    public void A_hard_part_and_an_easy_part_make_the_kind(int hardSeconds, double hardW, int easySeconds, double easyW, RideKind expected)
    {
        // A pause between the parts keeps their 30 s means apart.
        var ride = Ride(Blocks((hardSeconds, hardW), (easySeconds, easyW)), pausesBefore: hardSeconds);
        Assert.Equal(expected, FiguresOf(ride).Kind);
    }

    [Theory]
    [InlineData(9000, 150, RideKind.Long)]
    [InlineData(8999, 150, RideKind.Endurance)]
    [InlineData(4500, 150, RideKind.Recovery)]
    [InlineData(4501, 150, RideKind.Endurance)]
    [InlineData(4500, 151, RideKind.Endurance)]
    [InlineData(600, 150, RideKind.Recovery)]
    [InlineData(599, 150, RideKind.None)]
    [InlineData(599, 300, RideKind.None)]
    public void An_even_ride_is_told_by_its_length_and_power(int seconds, double watts, RideKind expected) =>
        Assert.Equal(expected, FiguresOf(Ride(Flat(seconds, watts))).Kind);

    [Fact]
    public void A_long_ride_must_be_three_quarters_low()
    {
        // 200 W is middle and below the threshold share: 24.9 % of 10,000 s leaves a long ride, 25 % makes a threshold ride.
        Assert.Equal(RideKind.Long, FiguresOf(Ride(Blocks((2499, 200), (7501, 150)), pausesBefore: 2499)).Kind);
        Assert.Equal(RideKind.Threshold, FiguresOf(Ride(Blocks((2500, 200), (7500, 150)), pausesBefore: 2500)).Kind);
    }

    [Fact]
    public void The_plan_says_how_long_a_long_ride_is() =>
        Assert.Equal(RideKind.Long, FiguresOf(Ride(Flat(5400, 160)), limits: new Limits { LongRideHours = 1.5 }).Kind);

    [Theory]
    // 95 % of 160 bpm is 152, 90 % is 144, 75 % is 120.
    [InlineData(600, 152, 3000, 110, RideKind.High)]
    [InlineData(599, 152, 3000, 118, RideKind.Endurance)]
    [InlineData(600, 144, 3000, 110, RideKind.Threshold)]
    [InlineData(599, 144, 3000, 118, RideKind.Endurance)]
    [InlineData(0, 0, 4500, 120, RideKind.Recovery)]
    [InlineData(0, 0, 4501, 120, RideKind.Endurance)]
    [InlineData(0, 0, 4500, 121, RideKind.Endurance)]
    [InlineData(0, 0, 9000, 130, RideKind.Long)]
    [InlineData(0, 0, 599, 190, RideKind.None)]
    public void From_heart_rate_alone_the_kind_is_told_by_shares_of_threshold_heart_rate(
        int hardSeconds, double hardBpm, int easySeconds, double easyBpm, RideKind expected)
    {
        var figures = FiguresOf(Ride(null, Blocks((hardSeconds, hardBpm), (easySeconds, easyBpm))), Rider(heartRate: 160));
        Assert.Equal(expected, figures.Kind);
    }

    [Fact]
    public void With_neither_power_nor_threshold_heart_rate_a_ride_is_unrated()
    {
        Assert.Equal(RideKind.Unrated, FiguresOf(Ride(null, Flat(3600, 150)), Rider()).Kind);
        Assert.Equal(RideKind.Unrated, FiguresOf(Ride(Flat(3600, 200)), new Rider()).Kind);
    }

    [Fact]
    public void A_normalised_power_of_exactly_60_percent_is_recovery_at_every_threshold()
    {
        // The fourth root may miss by a last binary digit; the kind must not.
        for (var threshold = 100; threshold <= 400; threshold += 5)
            Assert.Equal(RideKind.Recovery, FiguresOf(Ride(Flat(1200, 0.6 * threshold)), Rider(threshold)).Kind);
    }
}
