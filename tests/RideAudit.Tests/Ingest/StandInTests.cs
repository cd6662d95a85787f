using RideAudit.Fit;

namespace RideAudit.Tests.Ingest;

/// <summary>What the real recordings are tried for, on the recordings that stand in for them and are always there.</summary>
public sealed class StandInTests
{
    [Fact]
    public void The_committed_recordings_are_what_the_generator_makes()
    {
        if (Repository.Updates)
        {
            Directory.CreateDirectory(StandIns.Folder);
            foreach (var (name, bytes) in StandIns.All)
                File.WriteAllBytes(At(name), bytes);
        }
        Assert.Equal(StandIns.All.Keys.Order(StringComparer.Ordinal), Directory.GetFiles(StandIns.Folder).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        foreach (var (name, bytes) in StandIns.All)
            Assert.True(bytes.AsSpan().SequenceEqual(File.ReadAllBytes(At(name))), name);
    }

    [Fact]
    public void Every_recording_gives_rides_or_one_notice_and_never_an_exception() => RecordingChecks.RidesOrOneNotice(StandIns.Folder);

    [Fact]
    public void Power_on_the_grid_is_the_power_of_the_records() => Assert.Equal(5, RecordingChecks.PowerIsKept(StandIns.Folder));

    // The file's own summary, which its generator works out by the definition from the whole watts that it writes.
    [Fact]
    public void The_indoor_ride_agrees_with_its_summary_within_1_percent()
    {
        var stored = FitDecoder.Decode(StandIns.All["indoor.fit"]).Parts[0].Sessions[0];
        RecordingChecks.MeanAndNormalisedAgree(At("indoor.fit"), stored.AvgPower!.Value, stored.NormalisedPower!.Value);
        Assert.InRange(stored.NormalisedPower!.Value - stored.AvgPower!.Value, 5, 50);
    }

    [Fact]
    public void Five_activities_in_one_file_are_five_of_which_one_is_a_ride_with_heart_rate() => RecordingChecks.OneRideOfFive(At("five-activities.fit"));

    [Fact]
    public void A_clock_that_was_never_set_is_said() => RecordingChecks.ClockNotSet(At("clock-not-set.fit"));

    [Fact]
    public void A_stop_is_elapsed_time_and_not_riding_time()
    {
        var recording = Assert.Single(RecordingChecks.ReadOne(At("stopped-at-lights.fit")).Recordings);
        Assert.Equal(1200, recording.TimerSeconds, 1.0);
        Assert.Equal(1380, recording.ElapsedSeconds, 1.0);
    }

    [Fact]
    public void A_recording_that_ends_too_early_is_used_as_far_as_it_goes()
    {
        var read = RecordingChecks.ReadOne(At("cut-off.fit"));
        Assert.InRange(Assert.Single(read.Recordings).TimerSeconds, 600, 1100);
        Assert.Equal("truncated", Assert.Single(read.Notices).Problem);
    }

    private static string At(string name) => Path.Combine(StandIns.Folder, name);
}
