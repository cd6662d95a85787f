using RideAudit.Figures;
using RideAudit.Units;
using static RideAudit.Tests.Support.Made;

namespace RideAudit.Tests.Figures;

/// <summary>High from 106 % on the trailing 30 s mean, else middle from 76 % on the trailing 120 s mean, else low: common practice, no source. Values derived.</summary>
public sealed class IntensityBandsTests
{
    private static readonly BandCuts Cuts = new(76, 106);

    [Theory]
    [InlineData(189, 60, 0, 0)]
    [InlineData(190, 0, 60, 0)]
    [InlineData(264, 0, 60, 0)]
    [InlineData(264.9, 0, 60, 0)]
    [InlineData(265, 0, 0, 60)]
    public void A_steady_minute_is_in_the_band_of_its_power(double watts, double low, double middle, double high) =>
        Assert.Equal(new BandSeconds(low, middle, high), Of(Flat(60, watts), Cuts));

    // 76 % of 249 W are 189.24 W and 106 % are 263.94 W, neither of which a 32-bit sample holds exactly; a hundredth of a watt less is below.
    [Theory]
    [InlineData(189.23, 60, 0, 0)]
    [InlineData(189.24, 0, 60, 0)]
    [InlineData(263.93, 0, 60, 0)]
    [InlineData(263.94, 0, 0, 60)]
    public void A_power_in_hundredths_of_a_watt_exactly_on_a_cut_is_in_the_band_above(double watts, double low, double middle, double high) =>
        Assert.Equal(new BandSeconds(low, middle, high), Of(Flat(60, watts), Cuts, thresholdW: 249));

    [Fact]
    public void A_short_surge_does_not_leave_the_low_band()
    {
        // 4 s at 400 W in 150 W: the 30 s mean peaks at 150 + 250 × 4 / 30 = 183.3 W, the 120 s mean at 158.3 W.
        Assert.Equal(new BandSeconds(244, 0, 0), Of(Blocks((120, 150), (4, 400), (120, 150)), Cuts));
    }

    [Fact]
    public void A_hard_minute_is_high_within_seconds_and_middle_for_a_while_after()
    {
        // A minute at 350 W in 150 W. The 30 s mean is at or above 265 W from the 18th second of it to the 12th after it: 55 s.
        // The 120 s mean is at or above 190 W while 24 of the 60 s are in it: to the 96th second after it, 84 s more.
        Assert.Equal(new BandSeconds(521, 84, 55), Of(Blocks((300, 150), (60, 350), (300, 150)), Cuts));
    }

    [Fact]
    public void Half_a_minute_in_the_middle_of_easy_riding_is_not_felt_as_a_steady_state()
    {
        // 30 s at 240 W in 160 W: the 120 s mean peaks at 160 + 80 × 30 / 120 = 180 W, though the 30 s mean reaches 240.
        Assert.Equal(new BandSeconds(330, 0, 0), Of(Blocks((150, 160), (30, 240), (150, 160)), Cuts));
    }

    [Fact]
    public void After_a_restart_the_mean_so_far_counts()
    {
        // 10 s at 300 W, then 0 W: means 300 … then 300·10/n; at or above 265 W up to n = 11, at or above 190 W up to n = 15, below from n = 16.
        Assert.Equal(new BandSeconds(5, 4, 11), Of(Blocks((10, 300), (10, 0)), Cuts));
    }

    [Fact]
    public void A_pause_and_missing_power_restart_the_mean() =>
        Assert.Equal(new BandSeconds(40, 0, 120), Of(Blocks((60, 300), (1, double.NaN), (40, 100), (60, 300)), Cuts, pausesBefore: 101));

    [Fact]
    public void Cuts_of_76_and_91_give_three_other_bands()
    {
        Assert.Equal(new BandSeconds(0, 60, 0), Of(Flat(60, 250), Cuts));
        Assert.Equal(new BandSeconds(0, 0, 60), Of(Flat(60, 250), new BandCuts(76, 91)));
    }

    [Fact]
    public void Heart_rate_bands_are_cut_second_by_second()
    {
        // Threshold heart rate 160: 144 and 160 bpm (derived, exact).
        float[] heart = [143, 143.9f, 144, 159, 160, 200, None, 60];
        Assert.Equal(new BandSeconds(3, 2, 2), IntensityBands.OfHeartRate(heart, 160, new BandCuts(90, 100)));
        Assert.Equal(3, IntensityBands.SecondsAtLeast(heart, 160, 92));
        Assert.Equal(4, IntensityBands.SecondsAtLeast(heart, 160, 90));
        // A stopped sensor that says 0 is a heart rate as recorded: it is low, not missing.
        Assert.Equal(new BandSeconds(1, 0, 0), IntensityBands.OfHeartRate([0, None], 160, new BandCuts(90, 100)));
    }

    private static BandSeconds Of(float[] power, BandCuts cuts, double thresholdW = 250, params int[] pausesBefore)
    {
        var segments = Grid(power, null, pausesBefore).Segments;
        return IntensityBands.OfPower(
            TrailingPower.Of(power, segments), TrailingPower.Of(power, segments, IntensityBands.MiddleWindowSeconds), new Watts(thresholdW), cuts);
    }
}
