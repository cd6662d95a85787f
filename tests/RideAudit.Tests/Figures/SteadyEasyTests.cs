using RideAudit.Figures;
using static RideAudit.Tests.Support.Made;

namespace RideAudit.Tests.Figures;

/// <summary>Power at the same easy heart rate: common practice, no source. The windows are our choice; what is expected here was counted by hand.</summary>
public sealed class SteadyEasyTests
{
    [Fact]
    public void An_even_half_hour_holds_four_stretches_after_its_first_ten_minutes()
    {
        var stretches = Of(Flat(1800, 160), Flat(1800, 130));
        Assert.Equal(4, stretches.Length);
        Assert.All(stretches, s => Assert.Equal((160.0, 130.0), (s.PowerW, s.HeartRateBpm)));
    }

    [Fact]
    public void A_stretch_has_its_own_means()
    {
        var stretches = Of(Blocks((900, 150), (300, 170)), Blocks((900, 125), (300, 135)));
        Assert.Equal([(150.0, 125.0), (170.0, 135.0)], stretches.Select(s => (s.PowerW, s.HeartRateBpm)));
    }

    [Fact]
    public void A_ride_of_less_than_fifteen_minutes_has_none() => Assert.Empty(Of(Flat(899, 160), Flat(899, 130)));

    [Fact]
    public void Without_power_heart_rate_or_threshold_power_there_is_none()
    {
        Assert.Empty(Of(null, Flat(1800, 130)));
        Assert.Empty(Of(Flat(1800, 160), null));
        var ride = Ride(Flat(1800, 160), Flat(1800, 130));
        Assert.Empty(SteadyEasy.Of(FiguresOf(ride, Rider(threshold: null, heartRate: 165)), ride.Grid));
    }

    [Fact]
    public void No_stretch_goes_over_a_pause()
    {
        // Without the pause at 1,000 s there are four; 600 to 900, then 1,000 to 1,300 and on to 1,600.
        Assert.Equal(4, Of(Flat(1800, 160), Flat(1800, 130)).Length);
        Assert.Equal(3, Of(Flat(1800, 160), Flat(1800, 130), 1000).Length);
        // Pauses every four minutes leave no five in one piece.
        Assert.Empty(Of(Flat(1800, 160), Flat(1800, 130), 240, 480, 720, 960, 1200, 1440, 1680));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_gap_costs_the_stretch_that_it_lies_in_and_no_other(bool inPower)
    {
        var gap = Blocks((1000, 130), (20, None), (780, 130));
        Assert.Equal(3, (inPower ? Of(gap, Flat(1800, 130)) : Of(Flat(1800, 160), gap)).Length);
    }

    [Theory]
    [InlineData(189, 4)]
    [InlineData(190, 0)]
    public void A_stretch_in_the_middle_band_is_not_easy(double watts, int stretches) =>
        // 76 % of 250 W is 190 W.
        Assert.Equal(stretches, Of(Flat(1800, watts), Flat(1800, 130)).Length);

    [Fact]
    public void Uneven_riding_is_not_steady_though_its_mean_is_easy()
    {
        var minutes = Blocks([.. Enumerable.Range(0, 30).Select(minute => (60, minute % 2 == 0 ? 100.0 : 200.0))]);
        Assert.Empty(Of(minutes, Flat(1800, 130)));
        var little = Blocks([.. Enumerable.Range(0, 30).Select(minute => (60, minute % 2 == 0 ? 145.0 : 155.0))]);
        Assert.Equal(4, Of(little, Flat(1800, 130)).Length);
    }

    [Fact]
    public void What_came_just_before_a_stretch_does_not_make_it_uneven() =>
        // A minute at 400 W ends where the first stretch begins: four stretches at 160 W all the same.
        Assert.Equal(4, Of(Blocks((540, 160), (60, 400), (1200, 160)), Flat(1800, 130)).Length);

    [Fact]
    public void Coasting_is_no_stretch() => Assert.Empty(Of(Blocks((600, 160), (1200, 0)), Flat(1800, 130)));

    [Theory]
    [InlineData(13.7, 4)]
    [InlineData(14.5, 0)]
    public void The_trailing_mean_strays_by_at_most_a_tenth_over_the_seconds_that_are_looked_at(double off, int stretches)
    {
        // The mean of each stretch is 150 W.
        var five = new (int, double)[] { (165, 150 + off), (135, 150 - off * 165 / 135) };
        var watts = Blocks([(600, 150), .. Enumerable.Repeat(five, 4).SelectMany(b => b)]);
        Assert.Equal(Stray(watts, 600) <= 15, stretches == 4);
        Assert.Equal(stretches, Of(watts, Flat(1800, 130)).Length);
    }

    /// <summary>Root of the mean square of the trailing half-minute mean about the mean of five minutes, by definition.</summary>
    private static double Stray(float[] watts, int start)
    {
        var mean = watts[start..(start + 300)].Average(w => (double)w);
        var trailing = Enumerable.Range(start + 30, 270).Select(second => watts[(second - 29)..(second + 1)].Average(w => (double)w));
        return Math.Sqrt(trailing.Average(m => (m - mean) * (m - mean)));
    }

    private static SteadyEasy.Stretch[] Of(float[]? power, float[]? heart, params int[] pauses)
    {
        var ride = Ride(power, heart, pausesBefore: pauses);
        return [.. SteadyEasy.Of(FiguresOf(ride), ride.Grid)];
    }
}
