using RideAudit.Figures;
using RideAudit.Fit;
using RideAudit.Ingest;
using RideAudit.Rides;

namespace RideAudit.Tests.Ingest;

/// <summary>What must hold of a recording, real or standing in for one.</summary>
internal static class RecordingChecks
{
    public static FolderContent ReadOne(string file) => Reading.Of(Path.GetFileName(file), File.ReadAllBytes(file));

    public static void RidesOrOneNotice(string folder)
    {
        foreach (var file in Directory.GetFiles(folder, "*.fit"))
        {
            var read = ReadOne(file);
            Assert.DoesNotContain(read.Notices, n => n.Sentence.Contains("should not happen"));
            Assert.True(read.Recordings.Length > 0 || read.Notices is [{ Unusable: true }], Path.GetFileName(file));
            Assert.True(read.Notices.Length <= 1, Path.GetFileName(file));
        }
    }

    /// <summary>Gives the number of recordings with power that were compared.</summary>
    public static int PowerIsKept(string folder)
    {
        var compared = 0;
        foreach (var file in Directory.GetFiles(folder, "*.fit"))
        {
            var rides = ReadOne(file).Recordings.Where(r => r.Grid.PowerW is not null).ToArray();
            if (rides.Length == 0)
                continue;
            // Pedalled seconds only: coasting that a device writes without power is 0 W on the grid and nothing in its records.
            var powers = FitDecoder.Decode(File.ReadAllBytes(file)).Parts.SelectMany(PowersOf).Where(p => p > 0).ToArray();
            var count = rides.Sum(r => r.Grid.PowerW!.Count(p => p > 0));
            Assert.InRange(count, 0.98 * powers.Length, 1.05 * powers.Length);
            Assert.InRange(rides.Sum(Reading.PowerSum) / count, 0.98 * powers.Average(), 1.02 * powers.Average());
            compared++;
        }
        return compared;
    }

    public static void MeanAndNormalisedAgree(string file, double meanW, double normalisedW)
    {
        var recording = Assert.Single(ReadOne(file).Recordings);
        var normalised = NormalisedPower.Of(TrailingPower.Of([.. recording.Grid.PowerW!], recording.Grid.Segments))!.Value.Value;
        Assert.InRange(Reading.PowerSum(recording) / Reading.PowerCount(recording), 0.99 * meanW, 1.01 * meanW);
        Assert.InRange(normalised, 0.99 * normalisedW, 1.01 * normalisedW);
    }

    public static void OneRideOfFive(string file)
    {
        var read = ReadOne(file);
        Assert.Equal(5, read.Recordings.Length);
        var ride = Assert.Single(read.Recordings, r => r.Sport != RideSport.Other);
        Assert.InRange(SampleGrid.CountValues(ride.Grid.HeartRateBpm) / ride.TimerSeconds, 0.95, 1);
    }

    public static void ClockNotSet(string file) => Assert.Equal("clock not set", Assert.Single(ReadOne(file).Notices).Problem);

    private static float[] PowersOf(FitPart part) => part.Records.Power.ToArray() is var power && power.All(float.IsNaN) ? part.Records.DeveloperPower.ToArray() : power;
}
