using RideAudit.Figures;
using RideAudit.Units;
using static RideAudit.Tests.Support.Made;

namespace RideAudit.Tests.Figures;

/// <summary>Low below 76 %, middle to below 91 %, high from there, on the trailing 30 s mean: common practice, no source. Values derived.</summary>
public sealed class IntensityBandsTests
{
    private static readonly Watts Threshold = new(250);

    [Theory]
    [InlineData(189, 60, 0, 0)]
    [InlineData(190, 0, 60, 0)]
    [InlineData(227, 0, 60, 0)]
    [InlineData(227.5, 0, 0, 60)]
    [InlineData(228, 0, 0, 60)]
    public void A_steady_minute_is_in_the_band_of_its_power(double watts, double low, double middle, double high) =>
        Assert.Equal(new BandSeconds(low, middle, high), IntensityBands.OfPower(Trailing(Flat(60, watts)), Threshold, 76, 91));

    // 76 % of 249 W are 189.24 W and 91 % are 226.59 W, neither of which a 32-bit sample holds exactly; a hundredth of a watt less is below.
    [Theory]
    [InlineData(189.23, 60, 0, 0)]
    [InlineData(189.24, 0, 60, 0)]
    [InlineData(226.58, 0, 60, 0)]
    [InlineData(226.59, 0, 0, 60)]
    public void A_power_in_hundredths_of_a_watt_exactly_on_a_cut_is_in_the_band_above(double watts, double low, double middle, double high) =>
        Assert.Equal(new BandSeconds(low, middle, high), IntensityBands.OfPower(Trailing(Flat(60, watts)), new Watts(249), 76, 91));

    [Fact]
    public void A_short_surge_does_not_leave_the_low_band()
    {
        // 4 s at 400 W in 150 W: the 30 s mean peaks at 150 + 250 × 4 / 30 = 183.3 W, below 190.
        var power = Blocks((120, 150), (4, 400), (120, 150));
        Assert.Equal(new BandSeconds(244, 0, 0), IntensityBands.OfPower(Trailing(power), Threshold, 76, 91));
    }

    [Fact]
    public void In_the_first_29_seconds_after_a_restart_the_mean_so_far_counts()
    {
        // 10 s at 300 W, then 0 W: means 300 … then 300·10/n; at or above 227.5 W up to n = 13, at or above 190 W up to n = 15, below from n = 16.
        var power = Blocks((10, 300), (10, 0));
        Assert.Equal(new BandSeconds(5, 2, 13), IntensityBands.OfPower(Trailing(power), Threshold, 76, 91));
    }

    [Fact]
    public void A_pause_and_missing_power_restart_the_mean()
    {
        var power = Blocks((60, 300), (1, double.NaN), (40, 100), (60, 300));
        Assert.Equal(new BandSeconds(40, 0, 120), IntensityBands.OfPower(Trailing(power, 101), Threshold, 76, 91));
    }

    [Fact]
    public void Cuts_of_76_and_106_give_three_other_bands()
    {
        var power = Trailing(Blocks((60, 250)));
        Assert.Equal(new BandSeconds(0, 60, 0), IntensityBands.OfPower(power, Threshold, 76, 106));
        Assert.Equal(new BandSeconds(0, 0, 60), IntensityBands.OfPower(power, Threshold, 76, 91));
    }

    [Fact]
    public void Heart_rate_bands_are_cut_at_90_and_95_percent_of_threshold_heart_rate()
    {
        // Threshold heart rate 160: 144 and 152 bpm (derived, exact).
        float[] heart = [143, 143.9f, 144, 151, 152, 200, None, 60];
        Assert.Equal(new BandSeconds(3, 2, 2), IntensityBands.OfHeartRate(heart, 160, 90, 95));
    }
}
