using RideAudit.Rides;
using static RideAudit.Tests.Support.Made;

namespace RideAudit.Tests.Rides;

public sealed class StandingTimeTests
{
    [Fact]
    public void A_bicycle_stands_up_to_half_a_metre_a_second()
    {
        var standing = StandingTime.Of(Blocks((10, 8), (5, 0.5), (3, 0.51), (1, double.NaN), (4, 0), (2, 7)));
        Assert.Equal([(10, 15), (19, 23)], standing!.Value.ToArray());
        Assert.Equal(3, StandingTime.Within(standing.Value, 13, 20));
    }

    [Fact]
    public void A_stop_at_0_after_riding_is_standing() => Assert.Equal([(10, 15)], StandingTime.Of(Blocks((10, 8), (5, 0)))!.Value.ToArray());

    [Fact]
    public void Speed_that_is_0_throughout_says_nothing() => Assert.Null(StandingTime.Of(Blocks((10, 0), (5, double.NaN), (10, 0))));

    [Fact]
    public void A_crawl_throughout_is_standing() => Assert.Equal([(0, 20)], StandingTime.Of(Flat(20, 0.2))!.Value.ToArray());

    [Fact]
    public void Distance_that_is_cut_in_the_middle_went_evenly()
    {
        var inside = Assert.Single(DistanceStretch.Within([new(0, 0, 9, 90), new(20, 90, 120, 1090)], 45, 70));
        Assert.Equal(new DistanceStretch(45, 340, 69, 580), inside);
    }

    [Fact]
    public void A_range_has_the_distance_of_its_own_seconds_alone()
    {
        Assert.Equal(new DistanceStretch(9, 90, 9, 90), Assert.Single(DistanceStretch.Within([new(0, 0, 9, 90)], 9, 12)));
        Assert.Empty(DistanceStretch.Within([new(10, 100, 19, 190)], 0, 10));
    }
}
