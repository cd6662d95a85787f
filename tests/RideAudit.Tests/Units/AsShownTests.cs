using RideAudit.Units;

namespace RideAudit.Tests.Units;

/// <summary>Figures as shown, halves away from zero; values derived.</summary>
public sealed class AsShownTests
{
    [Theory]
    [InlineData(8999, 150)]
    [InlineData(8970, 150)]
    [InlineData(8969, 149)]
    [InlineData(0, 0)]
    public void Times_are_in_whole_minutes(double seconds, double minutes) => Assert.Equal(minutes, AsShown.Minutes(seconds));

    [Theory]
    [InlineData(0.665, 67)]
    [InlineData(0.6649, 66)]
    // In binary 100 × 0.285 falls a hair short of 28.5.
    [InlineData(0.285, 29)]
    public void Shares_are_in_whole_per_cent(double share, double percent) => Assert.Equal(percent, AsShown.Percent(share));

    [Theory]
    [InlineData(150.5, 151)]
    [InlineData(150.4, 150)]
    public void Powers_are_in_whole_watts(double watts, double shown) => Assert.Equal(shown, AsShown.Watts(new Watts(watts)));

    [Fact]
    public void A_last_binary_digit_decides_no_comparison()
    {
        Assert.False(Close.Above(0.1 + 0.2, 0.3));
        Assert.False(Close.Below(0.75 - 0.07, 0.68));
        Assert.True(Close.Above(0.3001, 0.3));
    }
}
