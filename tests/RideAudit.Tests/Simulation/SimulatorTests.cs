using NodaTime;
using RideAudit.Tests.Ingest;

namespace RideAudit.Tests.Simulation;

/// <summary>The simulator does what its noise model says; expected values derived from the model.</summary>
public sealed class SimulatorTests
{
    private static readonly OffsetDateTime Start = new LocalDateTime(2026, 5, 5, 18, 0).WithOffset(Offset.FromHours(1));

    [Fact]
    public void The_same_seed_is_the_same_ride_and_another_seed_another()
    {
        var session = Session.Even(20, 70);
        Assert.Equal(Simulator.Ride(session, 3).PowerW, Simulator.Ride(session, 3).PowerW);
        Assert.NotEqual(Simulator.Ride(session, 3).PowerW, Simulator.Ride(session, 4).PowerW);
    }

    [Fact]
    public void Six_percent_of_an_easy_road_ride_is_coasted_and_its_mean_is_what_was_meant()
    {
        var rides = Enumerable.Range(1, 20).Select(seed => Simulator.Ride(Session.Even(120, 70), seed)).ToArray();
        Assert.InRange(rides.Average(r => r.PowerW.Count(p => p == 0) / (double)r.PowerW.Length), 0.055, 0.065);
        Assert.InRange(rides.Average(r => r.PowerW.Average()) / 250, 0.69, 0.71);
    }

    [Fact]
    public void Nobody_coasts_in_an_interval_or_indoors()
    {
        Assert.DoesNotContain(0, Simulator.Ride(Session.Even(60, 90), 1).PowerW);
        Assert.DoesNotContain(0, Simulator.Ride(Sessions.Indoors(Session.Even(60, 60)), 1).PowerW);
    }

    [Fact]
    public void Noise_has_its_deviation_and_its_memory()
    {
        var flat = new Surroundings { Noise = 0.10 };
        var power = Simulator.Ride(Session.Even(600, 70).Where(flat), 1).PowerW.Select(p => p / 175 - 1.0).ToArray();
        var variance = power.Average(p => p * p);
        Assert.InRange(Math.Sqrt(variance), 0.097, 0.103);
        var next = power.Zip(power.Skip(1), (a, b) => a * b).Average() / variance;
        Assert.InRange(next, Math.Exp(-0.5) - 0.02, Math.Exp(-0.5) + 0.02);
    }

    [Theory]
    [InlineData("fit")]
    [InlineData("csv")]
    public void A_file_of_it_is_read_as_the_same_ride(string ending)
    {
        var ride = Simulator.Ride(Session.Even(15, 70), 2);
        var bytes = ending == "fit" ? SimulatedFiles.Fit(ride, Start) : SimulatedFiles.Csv(ride, Start);
        var read = Assert.Single(Reading.Of($"{SimulatedFiles.NameAt(Start)}.{ending}", bytes).Recordings);
        Assert.Equal(ride.PowerW, read.Grid.PowerW);
        Assert.Equal(ride.HeartRateBpm, read.Grid.HeartRateBpm);
        Assert.Equal(ride.CadenceRpm, read.Grid.CadenceRpm);
        Assert.Equal((Start, 900.0), (read.StartsAt, read.TimerSeconds));
    }
}
