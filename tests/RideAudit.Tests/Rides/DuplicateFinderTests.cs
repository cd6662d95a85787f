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

    private static Recording Even(string file, int at, int seconds) => Recording(file, Noon + Duration.FromSeconds(at), Flat(seconds, 200));
}
