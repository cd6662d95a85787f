using NodaTime;
using RideAudit.Fit;
using RideAudit.Plan;
using RideAudit.Review;
using RideAudit.Tests.Support;
using RideAudit.Units;

namespace RideAudit.Tests.Ingest;

/// <summary>A folder with every bad FIT file there is and one good ride.</summary>
public sealed class BadFilesTests
{
    private static readonly LocalDate Friday = new(2024, 5, 3);

    private static string BadFolder => Repository.Path("testdata", "fit", "bad");

    private static TempFolder Folder()
    {
        var start = FitTime.FromUnixSeconds(Friday.At(new LocalTime(18, 0)).InZoneStrictly(Reading.Lisbon).ToInstant().ToUnixTimeSeconds());
        var folder = new TempFolder().Write("good ride.fit", new FitSketch { Start = start, Seconds = 3600, HeartRate = i => 130 + i % 20 }.Bytes());
        foreach (var file in Directory.GetFiles(BadFolder))
            folder.Write("bad/" + Path.GetFileName(file), File.ReadAllBytes(file));
        return folder;
    }

    [Fact]
    public void The_good_ride_is_reviewed_whole()
    {
        using var folder = Folder();
        var rider = Reading.Rider with { Thresholds = [new ThresholdEntry(new LocalDate(2024, 1, 1), new Watts(250), null)] };
        var review = ReviewBuilder.Review(Reading.Of(folder, rider), rider, new ReviewRequest { Today = new LocalDate(2024, 5, 8), WeekOf = Friday })!;
        var ride = Assert.Single(review.Rides, r => r.File == "good ride.fit");
        Assert.Equal((3600.0, 200.0, 64.0), (ride.DurationSeconds, ride.MeanPowerW!.Value, Math.Round(ride.Stress!.Value, 9)));
        Assert.Equal(1, ride.PowerCoverage);
    }

    [Fact]
    public void Each_bad_file_is_named_in_one_plain_sentence()
    {
        using var folder = Folder();
        var read = Reading.Of(folder);
        Assert.DoesNotContain(read.Notices, n => n.File == "good ride.fit");
        foreach (var name in Directory.GetFiles(BadFolder).Select(Path.GetFileName))
        {
            var about = read.Notices.Where(n => n.File == $"bad/{name}" || n.File.StartsWith($"bad/{name}/", StringComparison.Ordinal) || n.File.StartsWith($"bad/{name}#", StringComparison.Ordinal)).ToArray();
            Assert.True(about.Length >= 1, $"{name} is not named");
            Assert.True(about.Count(n => n.File == $"bad/{name}") <= 1, $"{name} is named more than once");
            Assert.All(about, n => Assert.Matches(@"^[A-Z0-9“].*[.)]$", n.Sentence));
            Assert.All(about, n => Assert.DoesNotContain("should not happen", n.Sentence));
        }
    }
}
