using System.Collections.Immutable;
using NodaTime;
using RideAudit.Document;
using RideAudit.Ingest;
using RideAudit.Plan;
using RideAudit.Review;
using RideAudit.Tests.Support;
using RideAudit.Units;

namespace RideAudit.Tests.Review;

/// <summary>Limits of the rider file reach what is computed before any rule looks.</summary>
public sealed class OverriddenLimitsTests
{
    [Theory]
    [InlineData(60, 1)]
    [InlineData(5, 2)]
    public void Recordings_are_joined_over_the_gap_the_rider_file_says(double minutes, int rides)
    {
        var day = new LocalDate(2026, 4, 18);
        Assert.Equal(rides, Rides("join_gap_min", minutes).Count(r => r.StartsAt.Date == day));
    }

    [Fact]
    public void A_ride_shorter_than_the_rider_file_says_has_no_kind()
    {
        Assert.DoesNotContain(Rides("kind_least_min", 10), r => r.Kind == RideKind.None);
        Assert.Contains(Rides("kind_least_min", 60), r => r.Kind == RideKind.None && r.DurationSeconds < 3600);
    }

    private static ImmutableArray<RideEntry> Rides(string limit, double value)
    {
        var folder = Repository.Path("testdata", "demo");
        var rider = RiderFileReader.Read(File.ReadAllText(Path.Combine(folder, "rider.toml")), "rider.toml").Rider!;
        rider = rider with { Plan = rider.Plan with { LimitOverrides = rider.Plan.LimitOverrides.SetItem(limit, value) } };
        var content = FolderReader.Read(folder, rider, DateTimeZone.Utc, null, CancellationToken.None);
        return ReviewBuilder.Rides(content, rider, new ReviewRequest { Today = new LocalDate(2026, 6, 22) }).Rides;
    }
}
