using NodaTime;
using RideAudit.Rides;
using RideAudit.Units;
using static RideAudit.Tests.Support.Made;

namespace RideAudit.Tests.Rides;

/// <summary>An hour's gap at most inside a ride: common practice, no source.</summary>
public sealed class RideJoinerTests
{
    [Theory]
    [InlineData(3600, 1)]
    [InlineData(3601, 2)]
    public void Recordings_at_most_an_hour_apart_are_one_ride(int gap, int rides) =>
        Assert.Equal(rides, RideJoiner.Join([Even("a.fit", 0, 1800), Even("b.fit", 1800 + gap, 1800)]).Length);

    [Fact]
    public void A_ride_uses_the_whole_and_the_gap_is_a_pause()
    {
        var ride = Assert.Single(RideJoiner.Join([Even("b.fit", 3600, 1200), Even("a.fit", 0, 1800)]));
        Assert.Equal("a.fit", ride.File);
        Assert.Equal(["a.fit", "b.fit"], ride.Parts.ToArray());
        Assert.Equal((3000.0, 4800.0, 3000), (ride.TimerSeconds, ride.ElapsedSeconds, ride.Grid.Length));
        Assert.Equal([new GridSegment(0, 1800, 0), new GridSegment(1800, 1200, 3600)], ride.Grid.Segments.ToArray());
    }

    [Fact]
    public void A_recording_cut_in_two_without_a_gap_has_no_pause()
    {
        var ride = Assert.Single(RideJoiner.Join([Even("a.fit", 0, 1800), Even("b.fit", 1800, 1200)]));
        Assert.Equal([new GridSegment(0, 3000, 0)], ride.Grid.Segments.ToArray());
    }

    [Fact]
    public void Three_parts_join_although_the_first_and_last_are_far_apart() =>
        Assert.Equal(3, Assert.Single(RideJoiner.Join([Even("a", 0, 600), Even("b", 3600, 600), Even("c", 7200, 600)])).Parts.Length);

    [Fact]
    public void A_part_without_power_leaves_its_seconds_missing()
    {
        var ride = Assert.Single(RideJoiner.Join([Even("a", 0, 600), Recording("b", At(900), null, Flat(300, 130))]));
        Assert.Equal(600, SampleGrid.CountValues(ride.Grid.PowerW));
        Assert.Equal(300, SampleGrid.CountValues(ride.Grid.HeartRateBpm));
    }

    [Fact]
    public void Power_that_is_0_for_a_whole_ride_is_no_sensor() =>
        Assert.Null(Assert.Single(RideJoiner.Join([Recording("a", At(0), Flat(600, 0), Flat(600, 130))])).Grid.PowerW);

    [Fact]
    public void A_part_that_only_coasts_straight_after_one_with_power_is_coasting()
    {
        var ride = Assert.Single(RideJoiner.Join([Even("a", 0, 600), Recording("b", At(600), Flat(60, 0)), Recording("c", At(660), Flat(60, 0))]));
        Assert.Equal(720, SampleGrid.CountValues(ride.Grid.PowerW));
    }

    [Fact]
    public void A_part_of_0_W_after_a_stop_is_a_sensor_that_was_not_there()
    {
        var ride = Assert.Single(RideJoiner.Join([Even("a", 0, 600), Recording("b", At(900), Flat(300, 0))]));
        Assert.Equal(600, SampleGrid.CountValues(ride.Grid.PowerW));
    }

    [Fact]
    public void Seconds_that_two_recordings_cover_count_once()
    {
        // 30 of 90 minutes overlap: too little for a duplicate, and nobody rides twice at once.
        var ride = Assert.Single(RideJoiner.Join([Even("a", 0, 5400, 200), Even("b", 3600, 5400, 100)]));
        Assert.Equal((9000.0, 9000), (ride.TimerSeconds, ride.Grid.Length));
        Assert.Equal(Blocks((5400, 200), (3600, 100)), ride.Grid.PowerW);
        Assert.Single(ride.Grid.Segments.ToArray());
    }

    [Fact]
    public void A_recording_inside_another_ones_pause_is_laid_in_between()
    {
        var paused = Recording("a", At(0), Flat(1200, 200)) with
        {
            Grid = new SampleGrid { Length = 1200, Segments = [new(0, 600, 0), new(600, 600, 3000)], PowerW = Flat(1200, 200) },
            ElapsedSeconds = 3600,
        };
        var ride = Assert.Single(RideJoiner.Join([paused, Even("b", 1000, 300, 100)]));
        Assert.Equal(Blocks((600, 200), (300, 100), (600, 200)), ride.Grid.PowerW);
        Assert.Equal(1500, ride.TimerSeconds);
    }

    [Fact]
    public void Distance_goes_on_from_part_to_part()
    {
        Recording With(string file, int at, float[] metres) => Even(file, at, metres.Length) with
        {
            Grid = Grid(Flat(metres.Length, 100)) with { Distance = [new(0, metres[0], metres.Length - 1, metres[^1])] },
        };
        var ride = Assert.Single(RideJoiner.Join([With("a", 0, [0, 5, 10]), With("b", 100, [0, 4, 8])]));
        Assert.Equal([new(0, 0, 2, 10), new(3, 10, 5, 18)], ride.Grid.Distance.ToArray());
        Assert.Equal(18, ride.Grid.DistanceM);
    }

    [Fact]
    public void Other_sports_are_no_rides() =>
        Assert.Empty(RideJoiner.Join([Recording("run.fit", At(0), seconds: 3600, sport: RideSport.Other)]));

    [Fact]
    public void Mixed_kinds_of_cycling_are_cycling()
    {
        var ride = Assert.Single(RideJoiner.Join([Even("a", 0, 600) with { Sport = RideSport.Indoor }, Even("b", 700, 600) with { Sport = RideSport.Road }]));
        Assert.Equal(RideSport.Cycling, ride.Sport);
    }

    [Fact]
    public void One_kind_of_cycling_throughout_stays_what_it_is() =>
        Assert.Equal(RideSport.Indoor, Assert.Single(RideJoiner.Join([Even("a", 0, 600) with { Sport = RideSport.Indoor }, Even("b", 700, 600) with { Sport = RideSport.Indoor }])).Sport);

    [Fact]
    public void Of_recordings_that_start_together_the_first_by_name_is_the_first_part() =>
        Assert.Equal(["a", "b"], Assert.Single(RideJoiner.Join([Even("b", 0, 600), Even("a", 0, 500)])).Parts.ToArray());

    [Fact]
    public void What_a_later_part_stores_counts_where_the_first_stores_nothing()
    {
        var ride = Assert.Single(RideJoiner.Join([Even("a", 0, 600), Even("b", 700, 600) with { StoredThreshold = new Watts(244), StoredRating = 6 }]));
        Assert.Equal((244.0, 6.0), (ride.StoredThreshold!.Value.Value, ride.Rating!.Value));
    }

    [Fact]
    public void Rides_of_two_days_are_two() => Assert.Equal([600.0, 700.0], RideJoiner.Join([Even("a", 0, 600), Even("b", 86_400, 700)]).Select(r => r.ElapsedSeconds));

    [Fact]
    public void Parts_that_only_coast_count_with_one_that_measures_before_or_after_them()
    {
        var ride = Assert.Single(RideJoiner.Join(
            [Even("a", 0, 60, 0), Even("b", 60, 60, 0), Even("c", 120, 600), Even("d", 720, 60, 0)]));
        Assert.Equal(Blocks((120, 0), (600, 200), (60, 0)), ride.Grid.PowerW);
    }

    [Fact]
    public void Distance_of_a_part_that_another_one_covers_at_first_goes_on_where_that_ends()
    {
        // Both at 10 m/s; the second starts 5 s after the first, and its first 5 s are the first one's.
        Recording With(string file, int at) => Even(file, at, 10) with { Grid = Grid(Flat(10, 100)) with { Distance = [new(0, 0, 9, 90)] } };
        var ride = Assert.Single(RideJoiner.Join([With("a", 0), With("b", 5)]));
        Assert.Equal([new(0, 0, 9, 90), new(10, 90, 14, 130)], ride.Grid.Distance.ToArray());
    }

    [Fact]
    public void A_recording_inside_another_one_brings_no_second_back()
    {
        var ride = Assert.Single(RideJoiner.Join([Even("a", 0, 1000), Even("b", 100, 100), Even("c", 500, 1000)]));
        Assert.Equal((1500, 1500.0), (ride.Grid.Length, ride.TimerSeconds));
    }

    [Fact]
    public void A_first_part_of_totals_alone_leaves_the_samples_of_the_next_as_they_are()
    {
        var ride = Assert.Single(RideJoiner.Join([Recording("a", At(0), seconds: 60) with { Grid = SampleGrid.Empty }, Even("b", 100, 600)]));
        Assert.Equal(Flat(600, 200), ride.Grid.PowerW);
    }

    private static Instant At(int second) => Noon + Duration.FromSeconds(second);

    private static Recording Even(string file, int at, int seconds, double watts = 200) => Recording(file, At(at), Flat(seconds, watts));
}
