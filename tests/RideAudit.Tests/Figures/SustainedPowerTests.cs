using RideAudit.Figures;
using RideAudit.Units;
using static RideAudit.Tests.Support.Made;

namespace RideAudit.Tests.Figures;

/// <summary>Runs on the trailing 30 s mean: common practice, no source. Values derived.</summary>
public sealed class SustainedPowerTests
{
    private static readonly Watts Threshold = new(250);

    [Fact]
    public void A_steady_ten_minutes_counts_whole() =>
        Assert.Equal(600, Of(Blocks((600, 230)), 91).SustainedSeconds);

    [Fact]
    public void The_share_itself_counts() => Assert.Equal(600, Of(Blocks((600, 227.5)), 91).SustainedSeconds);

    [Fact]
    public void A_run_under_a_minute_is_dropped()
    {
        Assert.Equal(0, Of(Blocks((59, 300)), 91).SustainedSeconds);
        Assert.Equal(60, Of(Blocks((60, 300)), 91).SustainedSeconds);
    }

    [Theory]
    [InlineData(15, 1, 175)]
    [InlineData(16, 2, 160)]
    public void Runs_at_most_15_s_apart_are_one_and_the_dip_counts(int dip, int runs, double seconds)
    {
        var sustained = SustainedPower.Of(DipOf(dip), Threshold, 91);
        Assert.Equal(runs, sustained.Runs.Count);
        Assert.Equal(seconds, sustained.SustainedSeconds);
    }

    [Fact]
    public void A_pause_ends_a_run()
    {
        var sustained = SustainedPower.Of(Trailing(Blocks((50, 300), (50, 300)), 50), Threshold, 91);
        Assert.Equal(0, sustained.SustainedSeconds);
    }

    [Fact]
    public void Missing_power_ends_a_run()
    {
        var sustained = Of(Blocks((50, 300), (1, double.NaN), (50, 300)), 91);
        Assert.Equal(0, sustained.SustainedSeconds);
    }

    /// <summary>80 s at or above the share, exactly so many seconds below it, 80 s at or above it: on the mean, not on the second.</summary>
    private static TrailingPower DipOf(int seconds)
    {
        // At 228 W the mean is at or above 227.5. One second at 198 W takes it to 227, a second at 258 W so many seconds later back to 228.
        var power = Flat(160 + seconds, 228);
        power[80] = 198;
        power[80 + seconds] = 258;
        // The low second leaves the window first, so the mean only rises from there.
        return Trailing(power);
    }

    private static SustainedTime Of(float[] power, double share) => SustainedPower.Of(Trailing(power), Threshold, share);
}
