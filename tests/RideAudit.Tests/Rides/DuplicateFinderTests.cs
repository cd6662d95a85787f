using NodaTime;
using RideAudit.Rides;
using static RideAudit.Tests.Support.Made;

namespace RideAudit.Tests.Rides;

/// <summary>An overlap of 80 % of the shorter recording: common practice, no source.</summary>
public sealed class DuplicateFinderTests
{
    [Theory]
    [InlineData(200, 1)]
    [InlineData(201, 2)]
    public void Four_fifths_of_the_shorter_recording_make_a_duplicate(int shift, int kept)
    {
        var split = DuplicateFinder.Split([Even("a.fit", 0, 2000), Even("b.fit", 1000 + shift, 1000)]);
        Assert.Equal(kept, split.Kept.Length);
        Assert.Equal(2 - kept, split.LeftOut.Length);
    }

    [Fact]
    public void The_better_power_coverage_is_kept()
    {
        var phone = Recording("a-phone.fit", Noon, null, Flat(4000, 140));
        var computer = Even("b-computer.fit", 60, 3600);
        var split = DuplicateFinder.Split([phone, computer]);
        Assert.Equal("b-computer.fit", Assert.Single(split.Kept).File);
        Assert.Equal(("a-phone.fit", "b-computer.fit"), (split.LeftOut[0].LeftOut.File, split.LeftOut[0].Kept.File));
    }

    [Fact]
    public void A_head_unit_that_died_beside_a_watch_loses_no_second()
    {
        // 20 min with power, then a flat battery; the watch started 5 s earlier and recorded all 2 h 49 min.
        var unit = Recording("head-unit.fit", Noon, Flat(1200, 200));
        var watch = Recording("watch.fit", Noon - Duration.FromSeconds(5), null, [.. Enumerable.Range(0, 10_140).Select(i => 100f + i / 100f)]);
        var split = DuplicateFinder.Split([watch, unit]);
        var ride = Assert.Single(RideJoiner.Join(split.Kept));
        Assert.Equal((10_140.0, 10_140), (ride.TimerSeconds, ride.Grid.Length));
        Assert.Equal(Blocks((5, double.NaN), (1200, 200), (8935, double.NaN)), ride.Grid.PowerW);
        Assert.Equal(100f + 1205 / 100f, ride.Grid.HeartRateBpm![1205]);
        var duplicate = Assert.Single(split.LeftOut);
        Assert.Equal(("watch.fit", "head-unit.fit", 1200.0, 8940.0), (duplicate.LeftOut.File, duplicate.Kept.File, duplicate.KeptSeconds, duplicate.GivenSeconds));
    }

    [Fact]
    public void Two_pieces_of_a_head_unit_inside_one_recording_of_a_phone_are_filled_between()
    {
        var phone = Recording("phone.gpx", Noon, null, Flat(9000, 130));
        var split = DuplicateFinder.Split([phone, Even("a.fit", 600, 1200), Even("b.fit", 6000, 1200)]);
        var ride = Assert.Single(RideJoiner.Join(split.Kept));
        Assert.Equal((9000, 2400), (ride.Grid.Length, SampleGrid.CountValues(ride.Grid.PowerW)));
        Assert.Equal(6600, Assert.Single(split.LeftOut).GivenSeconds);
    }

    [Fact]
    public void A_third_recording_of_what_two_have_already_gives_nothing_more()
    {
        var split = DuplicateFinder.Split(
            [Even("unit.fit", 0, 1200), Recording("watch.fit", Noon, null, Flat(9000, 130)), Recording("phone.gpx", Noon, seconds: 8900)]);
        Assert.Equal(9000, split.Kept.Sum(r => r.TimerSeconds));
        Assert.Equal([7800.0, 0], split.LeftOut.Select(d => d.GivenSeconds));
    }

    [Fact]
    public void The_distance_of_what_is_given_counts_on_from_what_is_kept()
    {
        Recording With(Recording recording, float perSecond) => recording with
        {
            Grid = recording.Grid with { Distance = [new(0, 0, recording.Grid.Length - 1, (recording.Grid.Length - 1) * perSecond)] },
        };
        var split = DuplicateFinder.Split([With(Even("unit.fit", 0, 1000), 10), With(Recording("watch.fit", Noon, null, Flat(3000, 130)), 10)]);
        // The second from one device to the other is nobody's.
        Assert.Equal(29_980f, Assert.Single(RideJoiner.Join(split.Kept)).Grid.DistanceM);
    }

    [Fact]
    public void A_stop_that_one_device_paused_for_and_the_other_recorded_standing_is_not_ridden()
    {
        // An hour, 40 min at a café, half an hour home; the watch ran on.
        var unit = Even("unit.fit", 0, 5400) with
        {
            Grid = new SampleGrid { Length = 5400, Segments = [new(0, 3600, 0), new(3600, 1800, 6000)], PowerW = Flat(5400, 200) },
            ElapsedSeconds = 7800,
        };
        var still = Recording("watch.fit", Noon, null, Flat(7800, 120));
        Recording Watch(double atTheCafe) => still with { Grid = still.Grid with { Standing = StandingTime.Of(Blocks((3600, 8), (2400, atTheCafe), (1800, 8))) } };
        Assert.Equal(5400, DuplicateFinder.Split([unit, Watch(0.2)]).Kept.Sum(r => r.TimerSeconds));
        Assert.Equal(7800, DuplicateFinder.Split([unit, Watch(7)]).Kept.Sum(r => r.TimerSeconds));
    }

    [Fact]
    public void Activities_of_totals_alone_lose_no_hour_either()
    {
        var run = Recording("run.fit", Noon, seconds: 1200, sport: RideSport.Other);
        var split = DuplicateFinder.Split([run, Recording("long.fit", Noon, seconds: 9000, sport: RideSport.Other)]);
        Assert.Equal(9000, split.Kept.Sum(r => r.TimerSeconds));
    }

    [Fact]
    public void Power_of_0_throughout_is_no_coverage()
    {
        var dead = Recording("a.fit", Noon, Flat(3600, 0), Flat(3600, 140));
        var half = Recording("b.fit", Noon, Blocks((1800, 200), (1800, double.NaN)));
        Assert.Equal("b.fit", Assert.Single(DuplicateFinder.Split([dead, half]).Kept).File);
    }

    [Fact]
    public void With_equal_coverage_the_longer_is_kept_and_of_equal_ones_the_first_by_name()
    {
        Assert.Equal("b.fit", Assert.Single(DuplicateFinder.Split([Even("a.fit", 0, 3500), Even("b.fit", 0, 3600)]).Kept).File);
        Assert.Equal("a.fit", Assert.Single(DuplicateFinder.Split([Even("b.fit", 0, 3600), Even("a.fit", 0, 3600)]).Kept).File);
    }

    [Fact]
    public void A_few_lost_seconds_do_not_cost_a_long_recording_its_place()
    {
        var longer = Recording("a.fit", Noon, Blocks((7180, 200), (20, double.NaN)));
        Assert.Equal("a.fit", Assert.Single(DuplicateFinder.Split([longer, Even("b.fit", 600, 1200)]).Kept).File);
    }

    [Fact]
    public void A_recording_inside_another_ones_pause_is_other_riding()
    {
        var paused = Even("a.fit", 0, 1200) with
        {
            Grid = new SampleGrid { Length = 1200, Segments = [new(0, 600, 0), new(600, 600, 30_000)], PowerW = Flat(1200, 200) },
            ElapsedSeconds = 30_600,
        };
        Assert.Equal(2, DuplicateFinder.Split([paused, Even("b.fit", 10_000, 3600)]).Kept.Length);
    }

    [Fact]
    public void Different_ways_of_pausing_do_not_hide_the_same_riding()
    {
        var autoPaused = Even("a.fit", 0, 3000) with
        {
            Grid = new SampleGrid { Length = 3000, Segments = [new(0, 1500, 0), new(1500, 1500, 2000)], PowerW = Flat(3000, 200) },
            ElapsedSeconds = 3500,
        };
        Assert.Single(DuplicateFinder.Split([autoPaused, Even("b.fit", 0, 3500)]).Kept);
    }

    [Fact]
    public void A_run_over_the_same_hours_is_no_duplicate_of_a_ride()
    {
        var run = Recording("run.fit", Noon, seconds: 3600, sport: RideSport.Other);
        Assert.Equal(2, DuplicateFinder.Split([run, Even("ride.fit", 0, 3600)]).Kept.Length);
    }

    [Fact]
    public void Rides_over_midnight_are_compared_with_both_days()
    {
        var late = Instant.FromUtc(2026, 5, 5, 23, 30);
        var split = DuplicateFinder.Split([Recording("a.fit", late, Flat(3600, 200)), Recording("b.fit", late + Duration.FromMinutes(40), Flat(1200, 200))]);
        Assert.Single(split.Kept);
    }

    [Fact]
    public void The_order_of_the_files_does_not_matter()
    {
        Recording[] files = [Even("c.fit", 0, 3600), Even("a.fit", 100, 3500), Recording("b.fit", Noon, null, Flat(3600, 130)), Even("d.fit", 9000, 600)];
        var forth = DuplicateFinder.Split(files);
        var back = DuplicateFinder.Split(files.Reverse());
        Assert.Equal(forth.Kept.Select(r => r.File), back.Kept.Select(r => r.File));
        Assert.Equal(["c.fit", "d.fit"], forth.Kept.Select(r => r.File));
    }

    [Theory]
    [InlineData(1000, 2000)]
    [InlineData(1001, 0)]
    public void A_stretch_is_not_ridden_where_the_bicycle_stood_for_more_than_half_of_it(int stood, double given)
    {
        var watch = Recording("watch.fit", Noon, null, Flat(3000, 130));
        watch = watch with { Grid = watch.Grid with { Standing = [(1000, 1000 + stood)] } };
        Assert.Equal(given, Assert.Single(DuplicateFinder.Split([Even("unit.fit", 0, 1000), watch]).LeftOut).GivenSeconds);
    }

    [Fact]
    public void A_run_and_a_ride_that_start_together_are_both_kept_in_order_of_name()
    {
        var split = DuplicateFinder.Split([Even("b-ride.fit", 0, 3600), Recording("a-run.fit", Noon, seconds: 3600, sport: RideSport.Other)]);
        Assert.Equal(["a-run.fit", "b-ride.fit"], split.Kept.Select(r => r.File));
        Assert.Empty(split.LeftOut);
    }

    [Fact]
    public void A_recording_of_no_time_is_a_duplicate_of_none()
    {
        var nothing = Recording("nothing.fit", Noon + Duration.FromSeconds(60), seconds: 0) with { Grid = SampleGrid.Empty };
        Assert.Empty(DuplicateFinder.Split([Even("ride.fit", 0, 3600), nothing]).LeftOut);
    }

    private static Recording Even(string file, int at, int seconds) => Recording(file, Noon + Duration.FromSeconds(at), Flat(seconds, 200));
}
