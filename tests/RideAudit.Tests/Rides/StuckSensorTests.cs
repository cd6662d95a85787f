using RideAudit.Rides;
using RideAudit.Tests.Simulation;
using static RideAudit.Tests.Support.Made;

namespace RideAudit.Tests.Rides;

/// <summary>Five minutes without any change are a stuck sensor: common practice, no source.</summary>
public sealed class StuckSensorTests
{
    [Theory]
    [InlineData(299, 0)]
    [InlineData(300, 300)]
    [InlineData(1500, 1500)]
    public void Power_that_stands_still_for_five_minutes_while_the_cadence_changes_is_missing(int seconds, int stuck)
    {
        // A meter whose radio died on the climb: the head unit shows the last 243 W from there on.
        var power = (float[])[.. Noisy(600, 200), .. Flat(seconds, 243), .. Noisy(600, 200)];
        var built = Build(power, cadence: Noisy(power.Length, 85));
        Assert.Equal(stuck, built.StuckPowerSeconds);
        Assert.Equal(power.Length - stuck, SampleGrid.CountValues(built.Grid.PowerW));
    }

    [Fact]
    public void Speed_tells_it_as_well_as_cadence()
    {
        var built = Build(Flat(900, 243), speed: Noisy(900, 9));
        Assert.Equal((900, null), (built.StuckPowerSeconds, built.Grid.PowerW));
    }

    [Fact]
    public void Heart_rate_that_stands_still_is_missing_and_power_stays()
    {
        // The strap slipped at a pause; the watch went on writing 134.
        var built = Build(Noisy(1200, 200), cadence: Noisy(1200, 85), heart: [.. Noisy(600, 130), .. Flat(600, 134)]);
        Assert.Equal((0, 600), (built.StuckPowerSeconds, built.StuckHeartRateSeconds));
        Assert.Equal(600, SampleGrid.CountValues(built.Grid.HeartRateBpm));
    }

    [Fact]
    public void Where_nothing_else_changes_a_steady_value_is_a_value()
    {
        Assert.Equal(0, Build(Flat(900, 200)).StuckPowerSeconds);
        Assert.Equal(0, Build(Flat(900, 200), cadence: Flat(900, 90), speed: Flat(900, 9)).StuckPowerSeconds);
    }

    [Fact]
    public void Coasting_down_a_pass_for_a_quarter_of_an_hour_is_0_W()
    {
        var built = Build([.. Noisy(900, 220), .. Flat(900, 0)], cadence: [.. Noisy(900, 80), .. Flat(895, 0), .. Noisy(5, 60)], speed: Noisy(1800, 12));
        Assert.Equal(0, built.StuckPowerSeconds);
        Assert.Equal(1800, SampleGrid.CountValues(built.Grid.PowerW));
    }

    [Fact]
    public void Pedalling_for_ten_minutes_at_0_W_is_a_dead_meter()
    {
        var built = Build([.. Noisy(900, 220), .. Flat(600, 0)], cadence: Noisy(1500, 85));
        Assert.Equal(600, built.StuckPowerSeconds);
    }

    [Fact]
    public void A_trainer_that_writes_its_targets_is_believed()
    {
        // Twice twenty minutes at 225 W: what was set is written, not what was measured.
        float[] power = [.. Flat(600, 125), .. Noisy(8, 175), .. Flat(1200, 225), .. Noisy(5, 170), .. Flat(300, 125), .. Flat(1200, 225), .. Flat(600, 110)];
        var built = Build(power, cadence: Noisy(power.Length, 88));
        Assert.Equal((0, power.Length), (built.StuckPowerSeconds, SampleGrid.CountValues(built.Grid.PowerW)));
    }

    [Fact]
    public void One_value_alone_or_two_far_apart_are_a_dead_meter_all_the_same()
    {
        float[] alone = [.. Noisy(600, 150), .. Flat(1200, 225), .. Noisy(600, 150)];
        float[] apart = [.. Flat(600, 180), .. Noisy(600, 150), .. Flat(600, 225), .. Noisy(600, 150), .. Flat(600, 190)];
        Assert.Equal(1200, Build(alone, cadence: Noisy(alone.Length, 88)).StuckPowerSeconds);
        Assert.Equal(1800, Build(apart, cadence: Noisy(apart.Length, 88)).StuckPowerSeconds);
    }

    [Fact]
    public void A_trainer_that_measures_is_never_stuck_however_steady_it_holds()
    {
        for (var seed = 1; seed <= 10; seed++)
        {
            var ride = Simulator.Ride(Simulation.Sessions.Indoors(Session.Even(60, 60)).Where(new Surroundings { Noise = 0.01 }), seed);
            Assert.Equal(0, Build(ride.PowerW, cadence: ride.CadenceRpm).StuckPowerSeconds);
        }
    }

    [Fact]
    public void A_run_goes_on_over_a_pause_at_the_lights()
    {
        long[] seconds = [.. Enumerable.Range(0, 200), .. Enumerable.Range(400, 200)];
        var built = GridBuilder.Build(new Track { Seconds = seconds, PowerW = Flat(400, 243), CadenceRpm = Noisy(400, 85) });
        Assert.Equal(400, built.StuckPowerSeconds);
    }

    [Theory]
    [InlineData(300, true)]
    [InlineData(150, false)]
    public void A_run_that_is_long_enough_is_seen_wherever_it_begins(int seconds, bool seen)
    {
        for (var start = 0; start < 400; start++)
            Assert.Equal(seen, StuckSensors.AnyStandsStill([.. Noisy(start, 200), .. Flat(seconds, 250), .. Noisy(400, 200)]));
    }

    [Fact]
    public void Three_targets_one_right_after_the_other_are_a_trainers() =>
        Assert.Equal(0, Build(Blocks((300, 150), (300, 200), (300, 250)), cadence: Noisy(900, 88)).StuckPowerSeconds);

    [Theory]
    [InlineData(30, 0)]
    [InlineData(31, 900)]
    public void From_one_target_to_the_next_a_trainer_takes_half_a_minute_at_most(int step, int stuck)
    {
        float[] power = [.. Flat(300, 150), .. Noisy(step, 175), .. Flat(300, 200), .. Noisy(step, 225), .. Flat(300, 250)];
        Assert.Equal(stuck, Build(power, cadence: Noisy(power.Length, 88)).StuckPowerSeconds);
    }

    [Fact]
    public void A_minute_at_0_W_is_no_target() =>
        Assert.Equal(800, Build(Blocks((400, 225), (60, 0), (400, 225)), cadence: Noisy(860, 88)).StuckPowerSeconds);

    [Fact]
    public void No_trainer_sets_a_heart_rate()
    {
        var built = Build(Noisy(900, 200), cadence: Noisy(900, 88), heart: Blocks((300, 120), (300, 130), (300, 140)));
        Assert.Equal((900, null), (built.StuckHeartRateSeconds, built.Grid.HeartRateBpm));
    }

    [Fact]
    public void A_cadence_that_is_another_one_after_a_silence_has_changed() =>
        Assert.Equal(300, Build(Flat(300, 243), cadence: Blocks((140, 85), (20, double.NaN), (140, 86))).StuckPowerSeconds);

    [Theory]
    [InlineData(150, 0)]
    [InlineData(151, 300)]
    public void At_0_W_a_meter_is_dead_where_the_rider_pedals_for_more_than_half_of_the_time(int pedalled, int stuck)
    {
        float[] cadence = [.. Noisy(600 + pedalled, 85), .. Flat(300 - pedalled, 0)];
        Assert.Equal(stuck, Build([.. Noisy(600, 220), .. Flat(300, 0)], cadence: cadence).StuckPowerSeconds);
    }

    private static GriddedTrack Build(float[] power, float[]? cadence = null, float[]? speed = null, float[]? heart = null) => GridBuilder.Build(new Track
    {
        Seconds = [.. Enumerable.Range(0, power.Length)],
        PowerW = power,
        CadenceRpm = cadence,
        SpeedMps = speed,
        HeartRateBpm = heart,
    });

    /// <summary>Goes up and down by one, as a true sensor does.</summary>
    private static float[] Noisy(int seconds, float value) => [.. Enumerable.Range(0, seconds).Select(i => value + i % 3 - 1)];
}
