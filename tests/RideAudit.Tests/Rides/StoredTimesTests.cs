using RideAudit.Rides;
using static RideAudit.Tests.Support.Made;

namespace RideAudit.Tests.Rides;

/// <summary>The totals that a recording stores are believed within 2 %, or 5 s on a short one: common practice, no source.</summary>
public sealed class StoredTimesTests
{
    [Theory]
    [InlineData(1000, 980, 980)]
    [InlineData(1000, 979.9, 1000)]
    [InlineData(1000, 1020, 1020)]
    [InlineData(1000, 1020.1, 1000)]
    [InlineData(100, 95, 95)]
    [InlineData(100, 94.9, 100)]
    [InlineData(100, 105, 105)]
    [InlineData(100, 105.1, 100)]
    [InlineData(100, double.PositiveInfinity, 100)]
    public void A_stored_timer_time_counts_up_to_the_limit_and_not_beyond(int seconds, double stored, double timer)
    {
        var built = Build(seconds, storedTimer: stored);
        Assert.Equal((timer, timer != stored), (built.TimerSeconds, built.StoredTimerRefused));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void A_stored_timer_time_of_0_is_none_however_short_the_recording_is(double stored)
    {
        var built = Build(3, storedTimer: stored);
        Assert.Equal((3.0, true), (built.TimerSeconds, built.StoredTimerRefused));
    }

    [Theory]
    [InlineData(1004, 1004)]
    [InlineData(1020, 1020)]
    [InlineData(1021, 1000)]
    public void A_stored_elapsed_time_counts_where_it_agrees_with_the_clock(double stored, double elapsed) =>
        Assert.Equal(elapsed, Build(1000, storedElapsed: stored).ElapsedSeconds);

    [Fact]
    public void An_elapsed_time_stored_equal_to_the_timer_time_counts_with_it()
    {
        var built = Build(1000, 998, 998);
        Assert.Equal((998.0, 998.0), (built.TimerSeconds, built.ElapsedSeconds));
    }

    [Fact]
    public void Elapsed_time_counts_from_the_first_second_of_the_recording()
    {
        var built = GridBuilder.Build(new Track { Seconds = Seconds(100, 10), PowerW = Flat(10, 200) });
        Assert.Equal((100, 10.0), (built.StartSecond, built.ElapsedSeconds));
    }

    [Fact]
    public void A_timer_that_is_never_believed_leaves_no_time()
    {
        // It ran for eight days.
        var built = GridBuilder.Build(new Track { Seconds = Seconds(50, 10), PowerW = Flat(10, 200), TimerEvents = [new(0, true), new(8 * 86_400, false)] });
        Assert.Equal((0, 50, 0.0, 0.0), (built.Grid.Length, built.StartSecond, built.TimerSeconds, built.ElapsedSeconds));
    }

    [Fact]
    public void A_track_without_records_has_no_time_and_refuses_none()
    {
        var built = GridBuilder.Build(new Track { Seconds = [] });
        Assert.Equal((0.0, 0.0, false), (built.TimerSeconds, built.ElapsedSeconds, built.StoredTimerRefused));
    }

    private static GriddedTrack Build(int seconds, double? storedTimer = null, double? storedElapsed = null) => GridBuilder.Build(new Track
    {
        Seconds = Seconds(0, seconds),
        PowerW = Flat(seconds, 200),
        StoredTimerSeconds = storedTimer,
        StoredElapsedSeconds = storedElapsed,
    });

    private static long[] Seconds(int from, int count) => [.. Enumerable.Range(from, count).Select(s => (long)s)];
}
