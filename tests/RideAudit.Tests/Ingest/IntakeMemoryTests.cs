using NodaTime;
using RideAudit.Ingest;
using RideAudit.Plan;
using RideAudit.Rides;

namespace RideAudit.Tests.Ingest;

public sealed class IntakeMemoryTests
{
    [Fact]
    public void Where_memory_is_scarce_only_what_figures_are_computed_from_is_kept()
    {
        var bytes = new FitSketch().Bytes();

        var all = Read(bytes, thin: false);
        var thin = Read(bytes, thin: true);

        Assert.True(all.CadenceRpm is not null || all.SpeedMps is not null || all.AltitudeM is not null);
        Assert.Equal((null, null, null), (thin.CadenceRpm, thin.SpeedMps, thin.AltitudeM));
        Assert.Equal(all.PowerW, thin.PowerW);
        Assert.Equal(all.HeartRateBpm, thin.HeartRateBpm);
        Assert.Equal(all.DistanceM, thin.DistanceM);
    }

    private static SampleGrid Read(byte[] bytes, bool thin)
    {
        var intake = new Intake(new Rider(), DateTimeZone.Utc) { KeepsOnlyWhatIsJudged = thin };
        intake.Add("a.fit", new MemoryStream(bytes));
        return Assert.Single(intake.Finish().Recordings).Grid;
    }
}
