using RideAudit.Rides;

namespace RideAudit.Tests.Rides;

public sealed class RunningTimeTests
{
    [Fact]
    public void What_is_left_without_other_stretches_begins_and_ends_with_a_second()
    {
        TimerInterval[] ride = [new(0, 100)];
        Assert.Equal([new(40, 100)], RunningTime.Without(ride, [new(0, 40)]));
        Assert.Equal([new(0, 60)], RunningTime.Without(ride, [new(60, 100)]));
        Assert.Equal([new(0, 20), new(30, 100)], RunningTime.Without(ride, [new(20, 30)]));
        Assert.Empty(RunningTime.Without(ride, ride));
    }
}
