using NodaTime;
using RideAudit.Rides;
using static RideAudit.Tests.Support.Made;

namespace RideAudit.Tests.Rides;

/// <summary>What is left of a recording when another one has the rest. Every expected value worked out by hand.</summary>
public sealed class RecordingCutTests
{
    private static readonly long NoonSecond = Noon.ToUnixTimeSeconds();

    [Fact]
    public void Stretches_before_and_after_a_pause_keep_their_power_and_their_place_on_the_clock()
    {
        var cut = RecordingCut.To(Paused(), [new(NoonSecond + 50, NoonSecond + 100), new(NoonSecond + 320, NoonSecond + 400)]);
        Assert.Equal(Noon + Duration.FromSeconds(50), cut.Start);
        Assert.Equal((130.0, 350.0, 130), (cut.TimerSeconds, cut.ElapsedSeconds, cut.Grid.Length));
        Assert.Equal([new GridSegment(0, 50, 0), new GridSegment(50, 80, 270)], cut.Grid.Segments.ToArray());
        Assert.Equal([.. Enumerable.Range(50, 50).Concat(Enumerable.Range(120, 80)).Select(w => (float)w)], cut.Grid.PowerW!);
        Assert.Null(cut.Grid.HeartRateBpm);
    }

    [Fact]
    public void Distance_counts_from_the_first_second_that_is_left()
    {
        // At 10 m/s the first stretch begins at 1000 m of the recording, the second at 1700 m.
        var cut = RecordingCut.To(Paused(), [new(NoonSecond + 50, NoonSecond + 100), new(NoonSecond + 320, NoonSecond + 400)]);
        Assert.Equal([new(0, 0, 49, 490), new(50, 700, 129, 1490)], cut.Grid.Distance.ToArray());
    }

    [Fact]
    public void A_recording_of_totals_alone_gives_the_time_that_a_shorter_one_lacks()
    {
        var totals = Recording("phone.gpx", Noon, seconds: 9000) with { Grid = SampleGrid.Empty };
        var split = DuplicateFinder.Split([totals, Recording("unit.fit", Noon, Flat(1200, 200))]);
        Assert.Equal(7800, Assert.Single(split.LeftOut).GivenSeconds);
        Assert.Equal(9000, split.Kept.Sum(r => r.TimerSeconds));
    }

    /// <summary>100 s, a pause of 200 s, 100 s: the watts count the seconds, the distance starts at 500 m.</summary>
    private static Recording Paused() => Recording("watch.fit", Noon, Flat(200, 0)) with
    {
        Grid = new SampleGrid
        {
            Length = 200,
            Segments = [new(0, 100, 0), new(100, 100, 300)],
            PowerW = [.. Enumerable.Range(0, 200).Select(w => (float)w)],
            Distance = [new(0, 500, 99, 1490), new(100, 1500, 199, 2490)],
        },
        ElapsedSeconds = 400,
    };
}
