using NodaTime;
using RideAudit.Plan;
using RideAudit.Units;

namespace RideAudit.Tests.Simulation;

/// <summary>Who rides the simulated sessions.</summary>
/// <param name="ThresholdW">Threshold power, W.</param>
/// <param name="RestBpm">Resting heart rate, bpm.</param>
/// <param name="ThresholdBpm">Threshold heart rate, bpm.</param>
/// <param name="MaxBpm">Highest heart rate, bpm.</param>
internal sealed record SimulatedRider(double ThresholdW = 250, double RestBpm = 48, double ThresholdBpm = 168, double MaxBpm = 188)
{
    /// <summary>The rider as a rider file gives them.</summary>
    public Rider File => new()
    {
        Thresholds = [new ThresholdEntry(new LocalDate(2020, 1, 1), new Watts(ThresholdW), ThresholdBpm)],
        RestHeartRateBpm = RestBpm,
        MaxHeartRateBpm = MaxBpm,
    };
}
