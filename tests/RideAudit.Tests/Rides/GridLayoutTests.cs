using RideAudit.Rides;
using static RideAudit.Tests.Support.Made;

namespace RideAudit.Tests.Rides;

/// <summary>Which record holds on which second, and the distance of each stretch. Every expected value worked out by hand.</summary>
public sealed class GridLayoutTests
{
    [Fact]
    public void A_record_from_before_the_start_does_not_stand_in_for_a_lost_one()
    {
        var built = Build(new Track { Seconds = [0, 2, 3, 4], PowerW = [100, 120, 130, 140], TimerEvents = [new(1, true), new(5, false)] });
        Assert.Equal([None, 120, 130, 140], built.Grid.PowerW!);
    }

    [Fact]
    public void A_record_from_after_the_stop_does_not_stand_in_for_a_lost_one()
    {
        var built = Build(new Track { Seconds = [0, 1, 2, 5], PowerW = [100, 110, 120, 150], TimerEvents = [new(0, true), new(4, false)] });
        Assert.Equal([100f, 110, 120, 120], built.Grid.PowerW!);
    }

    [Fact]
    public void A_timer_that_runs_again_without_any_record_is_missing_data()
    {
        var built = Build(new Track
        {
            Seconds = [0, 1, 2, 3, 4],
            PowerW = Flat(5, 200),
            TimerEvents = [new(0, true), new(5, false), new(10, true), new(15, false)],
        });
        Assert.Equal(Blocks((5, 200), (5, double.NaN)), built.Grid.PowerW);
        Assert.Equal((10.0, 15.0), (built.TimerSeconds, built.ElapsedSeconds));
    }

    [Fact]
    public void A_value_is_held_in_a_recording_with_pauses_too()
    {
        var built = Build(new Track { Seconds = [0, 1, 2, 20, 21, 22], HeartRateBpm = [120, None, 130, 140, None, 150] });
        Assert.Equal([120f, 120, 130, 140, 140, 150], built.Grid.HeartRateBpm!);
    }

    [Fact]
    public void A_value_is_not_held_into_a_silence_of_all_records()
    {
        var built = Build(new Track
        {
            Seconds = [0, 1, 2, 20, 21, 22, 23, 24],
            HeartRateBpm = [120, 121, None, 130, 130, 130, 130, 130],
            TimerEvents = [new(0, true), new(25, false)],
        });
        Assert.Equal(Blocks((1, 120), (1, 121), (18, double.NaN), (5, 130)), built.Grid.HeartRateBpm);
    }

    [Fact]
    public void The_clock_of_each_stretch_counts_from_the_start_of_the_recording()
    {
        var built = Build(new Track { Seconds = [100, 101, 150, 151], PowerW = Flat(4, 200) });
        Assert.Equal([new GridSegment(0, 2, 0), new GridSegment(2, 2, 50)], built.Grid.Segments.ToArray());
    }

    [Fact]
    public void A_cadence_sensor_alone_makes_no_power()
    {
        var built = Build(new Track { Seconds = [0, 1, 2, 3, 4], CadenceRpm = [80, 81, 0, 0, 82] });
        Assert.Null(built.Grid.PowerW);
        Assert.Equal([80f, 81, 0, 0, 82], built.Grid.CadenceRpm!);
    }

    [Fact]
    public void A_recording_read_after_another_one_has_nothing_of_it()
    {
        // 100 s with a record at both ends alone; then a record on every second, coasting written without power.
        Build(new Track { Seconds = [0, 99], PowerW = [300, 310], TimerEvents = [new(0, true), new(100, false)] });
        var built = Build(new Track
        {
            Seconds = [.. Enumerable.Range(0, 100)],
            PowerW = Blocks((40, 200), (20, double.NaN), (40, 220)),
            CadenceRpm = Blocks((40, 85), (20, 0), (40, 85)),
        });
        Assert.Equal(Blocks((40, 200), (20, 0), (40, 220)), built.Grid.PowerW);
    }

    [Fact]
    public void Cadence_and_speed_are_let_go_of_where_nobody_asks_for_them_and_tell_of_stuck_power_all_the_same()
    {
        var built = GridBuilder.Build(
            new Track { Seconds = [.. Enumerable.Range(0, 300)], PowerW = Flat(300, 243), CadenceRpm = Flat(300, 85), SpeedMps = Blocks((200, 8), (100, 0.2)) }, keepsAll: false);
        Assert.Null(built.Grid.CadenceRpm);
        Assert.Null(built.Grid.SpeedMps);
        Assert.Equal(300, built.StuckPowerSeconds);
        Assert.Equal([(200, 300)], built.Grid.Standing!.Value.ToArray());
    }

    [Fact]
    public void Distance_begins_and_ends_with_the_records_that_have_it() =>
        Assert.Equal([new(2, 10, 4, 30)], Distances([0, 1, 2, 3, 4, 5, 6], [double.NaN, double.NaN, 10, double.NaN, 30, double.NaN, double.NaN]));

    [Fact]
    public void A_distance_that_one_record_alone_has_is_kept() => Assert.Equal([new(1, 7, 1, 7)], Distances([0, 1, 2], [double.NaN, 7, double.NaN]));

    [Fact]
    public void A_stretch_without_any_distance_adds_none()
    {
        Assert.Equal([new(0, 0, 1, 8)], Distances([0, 1, 50, 51], [0, 8, double.NaN, double.NaN]));
        Assert.Null(Build(new Track { Seconds = [0, 1, 2], DistanceM = [double.NaN, -1, double.NaN] }).Grid.DistanceM);
    }

    [Fact]
    public void Distance_is_that_of_the_record_that_holds_on_the_second() => Assert.Equal([new(0, 0, 6, 48)], Distances([0, 5, 6], [0, 40, 48]));

    private static DistanceStretch[] Distances(long[] seconds, double[] metres) => [.. Build(new Track { Seconds = seconds, DistanceM = metres }).Grid.Distance];

    private static GriddedTrack Build(Track track) => GridBuilder.Build(track);
}
