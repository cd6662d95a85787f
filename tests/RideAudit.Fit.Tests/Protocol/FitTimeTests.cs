namespace RideAudit.Fit.Tests.Protocol;

public class FitTimeTests
{
    /// <summary>Source: the format owner's example files (found): 702940946 is 2012-04-09T21:22:26Z; 0x10000000 is 1998-07-03T21:24:16Z.</summary>
    [Theory]
    [InlineData(0, "1989-12-31T00:00:00Z")]
    [InlineData(702_940_946, "2012-04-09T21:22:26Z")]
    [InlineData(0x1000_0000, "1998-07-03T21:24:16Z")]
    public void Known_times_are_their_known_dates(uint fit, string date)
    {
        var unix = DateTimeOffset.Parse(date, System.Globalization.CultureInfo.InvariantCulture).ToUnixTimeSeconds();

        Assert.Equal(unix, FitTime.ToUnixSeconds(fit));
        Assert.Equal(fit, FitTime.FromUnixSeconds(unix));
    }

    [Fact]
    public void Seconds_since_power_on_are_no_date()
    {
        Assert.False(FitTime.IsDate(0x0FFF_FFFF));
        Assert.True(FitTime.IsDate(0x1000_0000));
        Assert.False(FitTime.IsDate(uint.MaxValue));
    }

    [Fact]
    public void A_time_before_the_epoch_cannot_be_written() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => FitTime.FromUnixSeconds(0));
}
