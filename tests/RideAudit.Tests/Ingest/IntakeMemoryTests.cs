using System.Globalization;
using System.Text;
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
        var bytes = Encoding.UTF8.GetBytes("seconds,power,cadence,speed,distance\n" + string.Concat(Enumerable.Range(0, 900).Select(i => string.Create(CultureInfo.InvariantCulture, $"{i},200,90,{i % 30},{8 * i}\n"))));

        var all = Read(bytes, thin: false);
        var thin = Read(bytes, thin: true);

        Assert.NotNull(all.CadenceRpm);
        Assert.NotNull(all.DistanceM);
        Assert.Equal((null, null), (thin.CadenceRpm, thin.SpeedMps));
        Assert.Equal(all.PowerW, thin.PowerW);
        Assert.Equal(all.HeartRateBpm, thin.HeartRateBpm);
        Assert.Equal(all.DistanceM, thin.DistanceM);
    }

    private static SampleGrid Read(byte[] bytes, bool thin)
    {
        var intake = new Intake(new Rider(), DateTimeZone.Utc) { KeepsOnlyWhatIsJudged = thin };
        intake.Add("2026-05-05-1800.csv", new MemoryStream(bytes));
        return Assert.Single(intake.Finish().Recordings).Grid;
    }
}
