using RideAudit.Rides;
using static RideAudit.Tests.Support.Made;

namespace RideAudit.Tests.Rides;

/// <summary>The grid of timer time; limits are common practice, no source. Every expected value worked out by hand.</summary>
public sealed class GridBuilderTests
{
    [Fact]
    public void A_record_a_second_is_the_grid_as_it_is()
    {
        var built = Build(Track(0, 5, 200));
        Assert.Equal((5, 5.0, 5.0), (built.Grid.Length, built.TimerSeconds, built.ElapsedSeconds));
        Assert.Equal(Flat(5, 200), built.Grid.PowerW);
        Assert.Equal([new GridSegment(0, 5, 0)], built.Grid.Segments.ToArray());
    }

    [Fact]
    public void No_records_make_an_empty_grid() => Assert.Equal(0, Build(new Track { Seconds = [] }).Grid.Length);

    [Fact]
    public void Records_up_to_10_s_apart_hold_the_last_values()
    {
        var built = Build(new Track { Seconds = [0, 10, 13], PowerW = [100, 200, 300], HeartRateBpm = [120, 130, 140] });
        Assert.Equal(Blocks((10, 100), (3, 200), (1, 300)), built.Grid.PowerW);
        Assert.Equal(Blocks((10, 120), (3, 130), (1, 140)), built.Grid.HeartRateBpm);
    }

    [Fact]
    public void Without_timer_events_a_gap_over_10_s_is_a_pause()
    {
        var built = Build(new Track { Seconds = [0, 1, 12, 13], PowerW = [100, 100, 300, 300] });
        Assert.Equal(4, built.Grid.Length);
        Assert.Equal([new GridSegment(0, 2, 0), new GridSegment(2, 2, 12)], built.Grid.Segments.ToArray());
        Assert.Equal((4.0, 14.0), (built.TimerSeconds, built.ElapsedSeconds));
    }

    [Fact]
    public void While_timer_events_say_running_a_gap_over_10_s_is_missing_data()
    {
        var built = Build(new Track
        {
            Seconds = [0, 1, 12, 13],
            PowerW = [100, 100, 300, 300],
            TimerEvents = [new(0, true), new(14, false)],
        });
        Assert.Equal(14, built.Grid.Length);
        Assert.Equal(Blocks((2, 100), (10, double.NaN), (2, 300)), built.Grid.PowerW);
    }

    [Fact]
    public void Timer_stop_to_start_is_a_pause_and_its_records_do_not_count()
    {
        var built = Build(new Track
        {
            Seconds = Seconds(0, 20),
            PowerW = Blocks((5, 100), (10, 999), (5, 300)),
            TimerEvents = [new(0, true), new(5, false), new(15, true), new(20, false)],
        });
        Assert.Equal(Blocks((5, 100), (5, 300)), built.Grid.PowerW);
        Assert.Equal([new GridSegment(0, 5, 0), new GridSegment(5, 5, 15)], built.Grid.Segments.ToArray());
        Assert.Equal((10.0, 20.0), (built.TimerSeconds, built.ElapsedSeconds));
    }

    [Fact]
    public void A_device_that_stamps_the_end_of_each_second_loses_none()
    {
        // Timer from 0 to 10, records stamped 1 to 10.
        var built = Build(new Track { Seconds = Seconds(1, 10), PowerW = Flat(10, 200), TimerEvents = [new(0, true), new(10, false)] });
        Assert.Equal(10, built.Grid.Length);
        Assert.Equal(10, SampleGrid.CountValues(built.Grid.PowerW));
    }

    [Fact]
    public void Records_before_the_first_timer_start_do_not_count()
    {
        var built = Build(new Track { Seconds = Seconds(0, 20), PowerW = Blocks((10, 50), (10, 200)), TimerEvents = [new(10, true), new(20, false)] });
        Assert.Equal(Flat(10, 200), built.Grid.PowerW);
        Assert.Equal(10, built.StartSecond);
    }

    [Fact]
    public void A_first_event_that_is_a_stop_means_running_from_the_first_record()
    {
        var built = Build(new Track { Seconds = Seconds(0, 20), PowerW = Flat(20, 200), TimerEvents = [new(10, false), new(15, true), new(20, false)] });
        Assert.Equal(15, built.Grid.Length);
    }

    [Fact]
    public void A_last_start_without_a_stop_runs_to_the_last_record()
    {
        var built = Build(new Track { Seconds = Seconds(0, 20), PowerW = Flat(20, 200), TimerEvents = [new(0, true), new(5, false), new(10, true)] });
        Assert.Equal(15, built.Grid.Length);
    }

    [Fact]
    public void Events_that_leave_no_record_running_are_not_believed()
    {
        var built = Build(new Track { Seconds = Seconds(100, 20), PowerW = Flat(20, 200), TimerEvents = [new(0, true), new(5, false)] });
        Assert.Equal(20, built.Grid.Length);
    }

    [Fact]
    public void Events_out_of_order_and_repeated_are_put_in_order()
    {
        var built = Build(new Track
        {
            Seconds = Seconds(0, 20),
            PowerW = Flat(20, 200),
            TimerEvents = [new(15, true), new(0, true), new(0, true), new(5, false), new(6, false), new(20, false)],
        });
        Assert.Equal(10, built.Grid.Length);
    }

    [Fact]
    public void A_stop_and_start_in_the_same_second_is_no_pause()
    {
        var built = Build(new Track { Seconds = Seconds(0, 20), PowerW = Flat(20, 200), TimerEvents = [new(0, true), new(10, false), new(10, true), new(20, false)] });
        Assert.Equal([new GridSegment(0, 20, 0)], built.Grid.Segments.ToArray());
    }

    [Theory]
    [InlineData(3, true)]
    [InlineData(4, false)]
    public void Records_without_power_hold_the_last_one_for_up_to_3_s(int missing, bool held)
    {
        var built = Build(new Track { Seconds = Seconds(0, 20 + missing), PowerW = Blocks((10, 200), (missing, double.NaN), (10, 300)) });
        Assert.Equal(Blocks((10, 200), (missing, held ? 200 : double.NaN), (10, 300)), built.Grid.PowerW);
    }

    [Theory]
    [InlineData(10, true)]
    [InlineData(11, false)]
    public void Records_without_heart_rate_hold_the_last_one_for_up_to_10_s(int missing, bool held)
    {
        var built = Build(new Track { Seconds = Seconds(0, 20 + missing), HeartRateBpm = Blocks((10, 120), (missing, double.NaN), (10, 130)) });
        Assert.Equal(Blocks((10, 120), (missing, held ? 120 : double.NaN), (10, 130)), built.Grid.HeartRateBpm);
    }

    [Fact]
    public void A_record_without_power_that_says_cadence_0_is_coasting()
    {
        // A descent of a minute, written without power; then the meter is lost for 20 s while the rider pedals.
        var built = Build(new Track
        {
            Seconds = Seconds(0, 120),
            PowerW = Blocks((30, 200), (60, double.NaN), (10, 200), (20, double.NaN)),
            CadenceRpm = Blocks((30, 85), (60, 0), (30, 85)),
        });
        Assert.Equal(Blocks((30, 200), (60, 0), (10, 200), (20, double.NaN)), built.Grid.PowerW);
    }

    [Fact]
    public void Standing_pedals_make_no_power_meter()
    {
        var built = Build(new Track { Seconds = Seconds(0, 60), PowerW = Flat(60, double.NaN), CadenceRpm = Blocks((30, 85), (30, 0)) });
        Assert.Null(built.Grid.PowerW);
    }

    [Fact]
    public void Power_missing_at_the_start_is_not_made_up()
    {
        var built = Build(new Track { Seconds = Seconds(0, 5), PowerW = [None, None, 100, 100, 100] });
        Assert.Equal(Blocks((2, double.NaN), (3, 100)), built.Grid.PowerW);
    }

    [Fact]
    public void Nothing_is_held_over_a_pause()
    {
        var built = Build(new Track { Seconds = [0, 1, 50, 51], PowerW = [100, 100, None, 200] });
        Assert.Equal([100f, 100f, None, 200f], built.Grid.PowerW!);
    }

    [Fact]
    public void A_true_0_W_is_a_value_and_missing_is_not()
    {
        var built = Build(new Track { Seconds = Seconds(0, 10), PowerW = [200, 0, 0, 0, 0, 0, 0, 0, 0, 200] });
        Assert.Equal(10, SampleGrid.CountValues(built.Grid.PowerW));
        Assert.Equal(8, built.Grid.PowerW!.Count(p => p == 0));
    }

    [Fact]
    public void Heart_rate_written_as_0_is_no_sensor_and_no_complaint()
    {
        var built = Build(new Track { Seconds = Seconds(0, 30), HeartRateBpm = Flat(30, 0) });
        Assert.Null(built.Grid.HeartRateBpm);
        Assert.Equal(0, built.ImplausibleHeartRates);
    }

    [Theory]
    [InlineData(29, 1)]
    [InlineData(30, 0)]
    [InlineData(230, 0)]
    [InlineData(231, 1)]
    public void Heart_rate_outside_30_to_230_is_missing_and_counted(double bpm, int counted)
    {
        var built = Build(new Track { Seconds = Seconds(0, 40), HeartRateBpm = Blocks((20, 140), (1, bpm), (19, 140)) });
        Assert.Equal(counted, built.ImplausibleHeartRates);
        Assert.Equal(counted == 0 ? (float)bpm : 140f, built.Grid.HeartRateBpm![20]);
    }

    // A text may hold 1e99, which no number of a sample can: endless distance would be no JSON.
    [Fact]
    public void An_endless_distance_speed_or_cadence_is_missing_and_endless_power_is_left_for_the_spike_filter()
    {
        float[] Ended(float last) => [.. Flat(19, 8), last];
        var built = Build(new Track
        {
            Seconds = Seconds(0, 20),
            PowerW = Ended(float.PositiveInfinity),
            DistanceM = [.. Enumerable.Repeat(8.0, 18), 1e99, double.PositiveInfinity],
            SpeedMps = Ended(float.PositiveInfinity),
            CadenceRpm = Ended(float.PositiveInfinity),
        });
        Assert.Equal(float.PositiveInfinity, built.Grid.PowerW![19]);
        Assert.Equal(8f, built.Grid.DistanceM);
        Assert.All(new[] { built.Grid.SpeedMps, built.Grid.CadenceRpm }, channel => Assert.Equal(Flat(20, 8), channel));
    }

    [Fact]
    public void Of_records_in_the_same_second_the_last_valid_value_of_each_channel_counts()
    {
        var built = Build(new Track
        {
            Seconds = [0, 1, 1, 1, 2],
            PowerW = [100, 150, 160, None, 200],
            HeartRateBpm = [120, None, None, 125, 130],
        });
        Assert.Equal([100f, 160f, 200f], built.Grid.PowerW!);
        Assert.Equal([120f, 125f, 130f], built.Grid.HeartRateBpm!);
    }

    [Fact]
    public void Records_in_any_order_are_put_in_order()
    {
        var built = Build(new Track { Seconds = [2, 0, 1], PowerW = [300, 100, 200] });
        Assert.Equal([100f, 200f, 300f], built.Grid.PowerW!);
    }

    [Theory]
    [InlineData(1000.4, 1000.4, false)]
    [InlineData(1019, 1019, false)]
    [InlineData(1021, 1000, true)]
    [InlineData(985, 985, false)]
    [InlineData(979, 1000, true)]
    [InlineData(0, 1000, true)]
    [InlineData(double.NaN, 1000, true)]
    [InlineData(40_000, 1000, true)]
    public void A_stored_timer_time_counts_where_it_agrees_with_the_records_within_2_percent(double stored, double timer, bool refused)
    {
        var built = Build(Track(0, 1000, 200, stored));
        Assert.Equal((timer, refused), (built.TimerSeconds, built.StoredTimerRefused));
    }

    [Fact]
    public void A_stored_timer_time_that_holds_elapsed_time_is_refused_when_events_know_the_pause()
    {
        var built = Build(new Track
        {
            Seconds = [.. Seconds(0, 500), .. Seconds(2000, 500)],
            PowerW = Flat(1000, 200),
            TimerEvents = [new(0, true), new(500, false), new(2000, true), new(2500, false)],
            StoredTimerSeconds = 2500,
        });
        Assert.Equal((1000.0, true), (built.TimerSeconds, built.StoredTimerRefused));
    }

    [Fact]
    public void A_stored_timer_time_shows_a_pause_whose_events_were_lost()
    {
        var built = Build(new Track
        {
            Seconds = [.. Seconds(0, 500), .. Seconds(2000, 500)],
            PowerW = Flat(1000, 200),
            TimerEvents = [new(0, true), new(2500, false)],
            StoredTimerSeconds = 1001,
        });
        Assert.Equal((1001.0, false), (built.TimerSeconds, built.StoredTimerRefused));
    }

    [Fact]
    public void Without_events_a_stored_timer_time_between_the_recorded_time_and_the_whole_span_counts()
    {
        // 100 s without records, of which the timer ran 60: a lost sensor, not only a pause.
        var built = Build(new Track
        {
            Seconds = [.. Seconds(0, 500), .. Seconds(600, 500)],
            PowerW = Flat(1000, 200),
            StoredTimerSeconds = 1060,
        });
        Assert.Equal((1060.0, false), (built.TimerSeconds, built.StoredTimerRefused));
    }

    [Fact]
    public void Without_events_a_stored_timer_time_that_fills_the_span_says_that_a_silence_was_no_pause()
    {
        var built = Build(new Track { Seconds = [.. Seconds(0, 500), .. Seconds(600, 500)], PowerW = Flat(1000, 200), StoredTimerSeconds = 1100 });
        Assert.Equal(1100, built.Grid.Length);
        Assert.Equal(1000, SampleGrid.CountValues(built.Grid.PowerW));
    }

    [Fact]
    public void Elapsed_time_is_never_less_than_timer_time()
    {
        var built = Build(new Track { Seconds = Seconds(0, 1000), PowerW = Flat(1000, 200), StoredTimerSeconds = 1003, StoredElapsedSeconds = 998 });
        Assert.Equal((1003.0, 1003.0), (built.TimerSeconds, built.ElapsedSeconds));
    }

    [Fact]
    public void Rows_in_order_and_rows_out_of_order_make_the_same_grid()
    {
        var random = new Random(20260505);
        float[] Column(double from, double to) => [.. Enumerable.Range(0, 900).Select(_ => random.Next(40) == 0 ? None : (float)Math.Round(from + (to - from) * random.NextDouble()))];
        var (seconds, power, heart, cadence, metres) = (Seconds(0, 900), Column(0, 400), Column(20, 240), Column(0, 2), Column(0, 9));
        double[] distance = [.. metres.Select(m => (double)m)];
        int[] order = [.. Enumerable.Range(0, 900).OrderBy(_ => random.Next())];
        T[] Shuffled<T>(T[] column) => Array.ConvertAll(order, i => column[i]);

        var inOrder = Build(new Track { Seconds = seconds, PowerW = power, HeartRateBpm = heart, CadenceRpm = cadence, DistanceM = distance });
        var shuffled = Build(new Track { Seconds = Shuffled(seconds), PowerW = Shuffled(power), HeartRateBpm = Shuffled(heart), CadenceRpm = Shuffled(cadence), DistanceM = Shuffled(distance) });

        Assert.Equal(inOrder.Grid.PowerW, shuffled.Grid.PowerW);
        Assert.Equal(inOrder.Grid.HeartRateBpm, shuffled.Grid.HeartRateBpm);
        Assert.Equal(inOrder.Grid.CadenceRpm, shuffled.Grid.CadenceRpm);
        Assert.Equal(inOrder.Grid.Distance.ToArray(), shuffled.Grid.Distance.ToArray());
        Assert.Equal(inOrder.ImplausibleHeartRates, shuffled.ImplausibleHeartRates);
        Assert.True(inOrder.ImplausibleHeartRates > 0 && inOrder.Grid.PowerW!.Contains(0));
    }

    private static GriddedTrack Build(Track track) => GridBuilder.Build(track);

    private static long[] Seconds(int from, int count) => [.. Enumerable.Range(from, count).Select(s => (long)s)];

    private static Track Track(int from, int count, double watts, double? storedTimer = null) =>
        new() { Seconds = Seconds(from, count), PowerW = Flat(count, watts), StoredTimerSeconds = storedTimer };
}
