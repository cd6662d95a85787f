using NodaTime;
using RideAudit.Ingest;
using RideAudit.Plan;
using RideAudit.Review;

namespace RideAudit.Tests.Review;

public sealed class PowerCurvesTests
{
    [Fact]
    public void The_whole_curve_is_given_when_asked_for_and_agrees_with_the_best_powers()
    {
        var folder = FolderReader.Read(Repository.Demo, new Rider(), DateTimeZone.Utc, null, CancellationToken.None);
        var request = new ReviewRequest { Today = new LocalDate(2026, 6, 22) };
        Assert.All(ReviewBuilder.Rides(folder, new Rider(), request).Rides, ride => Assert.Null(ride.PowerCurveW));

        var rides = ReviewBuilder.Rides(folder, new Rider(), request with { WithPowerCurves = true }).Rides;
        Assert.Single(rides, r => r.PowerCurveW is null);
        foreach (var ride in rides.Where(r => r.PowerCurveW is not null))
            foreach (var best in ride.BestPowers)
                Assert.Equal(best.MeanPowerW, ride.PowerCurveW!.Value[best.Seconds - 1]);
    }
}
