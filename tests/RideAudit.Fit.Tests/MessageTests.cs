using RideAudit.Fit.Messages;

namespace RideAudit.Fit.Tests;

public class MessageTests
{
    /// <summary>Source: the format owner's example activity (found): 702926691 on the rider's clock is 702941091 universal, so -14,400 s.</summary>
    [Fact]
    public void Local_minus_universal_time_is_the_riders_offset() =>
        Assert.Equal(-14_400, new FitActivity(702_941_091, 702_926_691).LocalOffsetSeconds);

    [Fact]
    public void Without_either_time_there_is_no_offset()
    {
        Assert.Null(new FitActivity(702_941_091, null).LocalOffsetSeconds);
        Assert.Null(new FitTimestampCorrelation(null, null, null, 702_926_691).LocalOffsetSeconds);
    }

    [Theory]
    [InlineData(0xFF, null, false)]
    [InlineData(0x80 | 49, 49, true)]
    [InlineData(49, 49, false)]
    [InlineData(0x80 | 101, null, false)]
    public void A_balance_byte_splits_into_share_and_side(byte raw, int? percent, bool isRight) =>
        Assert.Equal(percent is { } p ? new PedalBalance(p, isRight) : null, PedalBalance.FromByte(raw));

    [Fact]
    public void Every_file_type_has_words_even_an_unknown_one()
    {
        Assert.All(Enum.GetValues<FitFileType>(), t => Assert.StartsWith("a", FitFileTypes.Describe(t)));
        Assert.Equal("a FIT file of kind 99", FitFileTypes.Describe((FitFileType)99));
    }

    [Theory]
    [InlineData(0, 0, true, false)]
    [InlineData(0, 1, false, true)]
    [InlineData(0, 4, false, true)]
    [InlineData(0, 8, false, true)]
    [InlineData(0, 9, false, true)]
    [InlineData(0, 3, false, false)]
    [InlineData(9, 1, false, false)]
    public void The_timer_starts_and_stops_by_its_own_events_only(byte what, byte how, bool starts, bool stops)
    {
        FitEvent value = new(1, what, how);

        Assert.Equal(starts, value.StartsTimer);
        Assert.Equal(stops, value.StopsTimer);
    }
}
