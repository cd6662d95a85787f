using System.Collections.Immutable;
using NodaTime;
using RideAudit.Document;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Review;
using RideAudit.Tests.Simulation;
using RideAudit.Units;
using Ridden = RideAudit.Tests.Simulation.Session;

namespace RideAudit.Tests.Sessions;

/// <summary>The repeats of rides without a planned session, ridden on the road at 250 W with the unsteadiness of real riding.</summary>
public class RideRepeatsTests
{
    private static readonly OffsetDateTime At = new LocalDateTime(2026, 5, 19, 12, 0).WithOffset(Offset.Zero);

    [Theory]
    [InlineData(4, 300, 110, 180)]
    [InlineData(4, 480, 108, 180)]
    [InlineData(5, 240, 110, 180)]
    [InlineData(2, 1200, 93, 300)]
    [InlineData(3, 720, 90, 240)]
    [InlineData(6, 120, 120, 120)]
    public void A_repeat_is_one_however_unsteadily_it_was_ridden(int count, int seconds, double percent, int between)
    {
        for (var seed = 1; seed <= 8; seed++)
        {
            SessionBlock[] set = [.. Enumerable.Range(0, count).SelectMany(_ => new SessionBlock[] { new(seconds, percent), new(between, 50) })];
            var found = Repeats(seed, [new(900, 60), .. set, new(600, 58)]);

            Assert.Equal(count, found.Length);
            Assert.All(found, r => Assert.InRange(r.EndSecond - r.StartSecond, seconds * 0.6, seconds * 1.15));
        }
    }

    [Fact]
    public void Stretches_with_no_recovery_between_them_are_no_repeats()
    {
        SessionBlock[] rolling = [.. Enumerable.Range(0, 6).SelectMany(_ => new SessionBlock[] { new(240, 88), new(240, 79) })];
        for (var seed = 1; seed <= 8; seed++)
            Assert.Empty(Repeats(seed, [new(900, 60), .. rolling, new(600, 58)], Surroundings.Indoors));
    }

    private static ImmutableArray<StretchEntry> Repeats(int seed, ImmutableArray<SessionBlock> blocks, Surroundings? on = null)
    {
        var simulated = Simulator.Ride(new Ridden("", on ?? Surroundings.Road, blocks), seed, new SimulatedRider(250, 48, 168));
        return RideRepeats.Of(FigureBuilder.Build(simulated.RideAt(At), new ThresholdInForce(new Watts(250), ThresholdSource.RiderFile), 168, new Rider(), new Limits()));
    }
}
