using RideAudit.Figures;
using RideAudit.Units;
using static RideAudit.Tests.Support.Made;

namespace RideAudit.Tests.Figures;

/// <summary>Short efforts on the trailing 5 s mean, at or above 120 % of 250 W: common practice, no source. Values derived.</summary>
public sealed class BoutsTests
{
    [Theory]
    [InlineData(8, 300, 1, 8)]
    [InlineData(7, 300, 0, 0)]
    [InlineData(30, 299, 0, 0)]
    public void Eight_seconds_at_the_share_are_a_bout(int seconds, double watts, int bouts, double inAll) =>
        Assert.Equal((bouts, inAll), Of(Flat(seconds, watts)));

    [Fact]
    public void A_sprint_out_of_easy_riding_is_as_long_as_its_mean_is_high()
    {
        // 10 s at 600 W in 150 W: the mean reaches (2 × 600 + 3 × 150) / 5 = 330 W in the second of them, and 240 with one left in the window: 12 s.
        Assert.Equal((1, 12.0), Of(Blocks((60, 150), (10, 600), (60, 150))));
    }

    [Theory]
    [InlineData(2, 1, 42)]
    [InlineData(3, 2, 40)]
    public void A_dip_of_two_seconds_belongs_to_the_bout(int dip, int bouts, double inAll)
    {
        // At 300 W one second at 290 takes the mean to 298, a second at 310 so many seconds later back to 300.
        var power = Flat(40 + dip, 300);
        power[20] = 290;
        power[20 + dip] = 310;
        Assert.Equal((bouts, inAll), Of(power));
    }

    [Fact]
    public void A_pause_ends_a_bout() => Assert.Equal((0, 0.0), Of(Flat(14, 300), 7));

    [Fact]
    public void Surges_that_30_s_means_hide_are_seen()
    {
        var figures = FiguresOf(Ride(Blocks([.. Enumerable.Repeat(new[] { (12, 500.0), (168, 150.0) }, 10).SelectMany(b => b)])));
        Assert.Equal((10, 0.0), (figures.BoutCount, figures.AtHighShare!.SustainedSeconds));
    }

    private static (int Count, double Seconds) Of(float[] power, params int[] pausesBefore) =>
        Bouts.Of(TrailingPower.Of(power, Grid(power, null, pausesBefore).Segments, Bouts.WindowSeconds), new Watts(250), 120, 8);
}
