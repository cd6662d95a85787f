using RideAudit.Rides;
using static RideAudit.Tests.Support.Made;

namespace RideAudit.Tests.Rides;

/// <summary>When the timer ran. Every expected stretch worked out by hand.</summary>
public sealed class TimerIntervalsTests
{
    private const int Week = 7 * 86_400;

    [Theory]
    [InlineData(Week, 1)]
    [InlineData(Week + 1, 0)]
    public void A_timer_that_runs_for_more_than_a_week_is_a_broken_clock(int seconds, int intervals) =>
        Assert.Equal(intervals, Of(new Track { Seconds = Seconds((50, 10)), TimerEvents = [new(0, true), new(seconds, false)] }).Count);

    [Fact]
    public void Of_two_starts_in_a_row_the_first_counts() =>
        Assert.Equal([new(0, 10)], Of(new Track { Seconds = Seconds((0, 10)), TimerEvents = [new(0, true), new(5, true), new(10, false)] }));

    [Fact]
    public void A_start_that_the_sensors_answer_late_is_still_the_start()
    {
        // One record from before the start, none at 10 and 11, one at the very stop: nothing says that seconds are stamped at their end.
        var intervals = Of(new Track { Seconds = Seconds((9, 1), (12, 9)), TimerEvents = [new(10, true), new(20, false)] });
        Assert.Equal([new(10, 20)], intervals);
    }

    [Fact]
    public void A_short_stop_of_a_device_that_stamps_the_end_of_each_second_is_a_pause()
    {
        var built = GridBuilder.Build(new Track
        {
            Seconds = Seconds((1, 5), (8, 5)),
            PowerW = Blocks((5, 150), (5, 250)),
            TimerEvents = [new(0, true), new(5, false), new(7, true), new(12, false)],
        });
        Assert.Equal([new GridSegment(0, 5, 0), new GridSegment(5, 5, 7)], built.Grid.Segments.ToArray());
        Assert.Equal(Blocks((5, 150), (5, 250)), built.Grid.PowerW);
    }

    [Fact]
    public void A_stop_and_start_in_one_second_keeps_the_records_of_a_device_that_stamps_the_end_of_each_second()
    {
        var built = GridBuilder.Build(new Track
        {
            Seconds = Seconds((1, 10)),
            PowerW = [101, 102, 103, 104, 105, 106, 107, 108, 109, 110],
            TimerEvents = [new(0, true), new(5, false), new(5, true), new(10, false)],
        });
        Assert.Equal([101f, 102, 103, 104, 105, 106, 107, 108, 109, 110], built.Grid.PowerW!);
        Assert.Equal([new GridSegment(0, 10, 0)], built.Grid.Segments.ToArray());
        Assert.Equal((10.0, 10.0), (built.TimerSeconds, built.ElapsedSeconds));
    }

    [Fact]
    public void No_stretch_of_the_ride_is_without_a_second()
    {
        var intervals = Of(new Track { Seconds = Seconds((1, 6)), TimerEvents = [new(0, true), new(5, false), new(5, true), new(6, false)] });
        Assert.NotEmpty(intervals);
        Assert.All(intervals, i => Assert.True(i.Length > 0));
    }

    [Theory]
    [InlineData(97, false)]
    [InlineData(98, true)]
    [InlineData(102, true)]
    [InlineData(103, false)]
    public void A_stored_timer_time_within_2_s_of_the_span_says_that_a_silence_was_no_pause(double stored, bool runsOn)
    {
        var intervals = Of(new Track { Seconds = Seconds((1000, 40), (1060, 40)), StoredTimerSeconds = stored });
        Assert.Equal(runsOn ? [new(1000, 1100)] : [new TimerInterval(1000, 1040), new TimerInterval(1060, 1100)], intervals);
    }

    [Theory]
    [InlineData(994, false)]
    [InlineData(995, true)]
    [InlineData(1005, true)]
    [InlineData(1006, false)]
    public void On_a_longer_span_half_a_percent_is_near_enough(double stored, bool runsOn)
    {
        var intervals = Of(new Track { Seconds = Seconds((0, 400), (600, 400)), StoredTimerSeconds = stored });
        Assert.Equal(runsOn ? [new(0, 1000)] : [new TimerInterval(0, 400), new TimerInterval(600, 1000)], intervals);
    }

    private static IReadOnlyList<TimerInterval> Of(Track track) => TimerIntervals.Of(track, SecondSamples.From(track));

    private static long[] Seconds(params (int From, int Count)[] runs) => [.. runs.SelectMany(r => Enumerable.Range(r.From, r.Count)).Select(s => (long)s)];
}
