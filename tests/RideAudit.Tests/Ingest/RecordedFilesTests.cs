using RideAudit.Figures;
using RideAudit.Fit;
using RideAudit.Ingest;
using RideAudit.Rides;
using RideAudit.Tests.Support;

namespace RideAudit.Tests.Ingest;

/// <summary>Runs over real recordings, which are not part of the repository.</summary>
public sealed class RecordedFilesTests
{
    private static FolderContent ReadOne(string file)
    {
        using var folder = new TempFolder().Write(Path.GetFileName(file), File.ReadAllBytes(file));
        return Reading.Of(folder);
    }

    [RecordingsFact]
    public void Every_recording_gives_rides_or_one_notice_and_never_an_exception()
    {
        foreach (var file in Directory.GetFiles(RecordingsFactAttribute.Folder, "*.fit"))
        {
            var read = ReadOne(file);
            Assert.DoesNotContain(read.Notices, n => n.Sentence.Contains("should not happen"));
            Assert.True(read.Recordings.Length > 0 || read.Notices is [{ Unusable: true }], Path.GetFileName(file));
            Assert.True(read.Notices.Length <= 1, Path.GetFileName(file));
        }
    }

    [RecordingsFact]
    public void Power_on_the_grid_is_the_power_of_the_records()
    {
        foreach (var file in Directory.GetFiles(RecordingsFactAttribute.Folder, "*.fit"))
        {
            var rides = ReadOne(file).Recordings.Where(r => r.Grid.PowerW is not null).ToArray();
            if (rides.Length == 0)
                continue;
            // Pedalled seconds only: coasting that a device writes without power is 0 W on the grid and nothing in its records.
            var powers = FitDecoder.Decode(File.ReadAllBytes(file)).Parts.SelectMany(p => p.Records.Power.ToArray()).Where(p => p > 0).ToArray();
            var count = rides.Sum(r => r.Grid.PowerW!.Count(p => p > 0));
            Assert.InRange(count, 0.98 * powers.Length, 1.05 * powers.Length);
            Assert.InRange(rides.Sum(Reading.PowerSum) / count, 0.98 * powers.Average(), 1.02 * powers.Average());
        }
    }

    // Average 201.42 W and normalised power 228.39 W with missing power dropped; the device itself stored 201 W and 228 W. Worked out from this recording by a script of its own.
    [RecordingsFact]
    public void The_indoor_ride_152632d5_agrees_with_its_device_within_1_percent()
    {
        var recording = Assert.Single(ReadOne(Path.Combine(RecordingsFactAttribute.Folder, "152632d5.fit")).Recordings);
        var normalised = NormalisedPower.Of(TrailingPower.Of(recording.Grid.PowerW!, recording.Grid.Segments))!.Value.Value;
        Assert.InRange(Reading.PowerSum(recording) / Reading.PowerCount(recording), 0.99 * 201.42, 1.01 * 201.42);
        Assert.InRange(normalised, 0.99 * 228.39, 1.01 * 228.39);
        Assert.InRange(normalised, 0.99 * 228, 1.01 * 228);
    }

    [RecordingsFact]
    public void The_triathlon_f8d2d84b_is_five_activities_of_which_one_is_a_ride_with_heart_rate()
    {
        var read = ReadOne(Path.Combine(RecordingsFactAttribute.Folder, "f8d2d84b.fit"));
        Assert.Equal(5, read.Recordings.Length);
        var ride = Assert.Single(read.Recordings, r => r.Sport != RideSport.Other);
        Assert.InRange(SampleGrid.CountValues(ride.Grid.HeartRateBpm) / ride.TimerSeconds, 0.95, 1);
    }

    [RecordingsFact]
    public void A_clock_that_was_never_set_is_said_in_77337cf2_and_e92439a9()
    {
        foreach (var name in (string[])["77337cf2.fit", "e92439a9.fit"])
            Assert.Equal("clock not set", Assert.Single(ReadOne(Path.Combine(RecordingsFactAttribute.Folder, name)).Notices).Problem);
    }
}
