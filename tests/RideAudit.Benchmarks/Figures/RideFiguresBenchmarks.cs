using BenchmarkDotNet.Attributes;
using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Rides;
using RideAudit.Units;

namespace RideAudit.Benchmarks.Figures;

/// <summary>Every figure of one five-hour ride: normalised power, zones, bands, sustained time, bests, heart-rate load, drift, kind.</summary>
[MemoryDiagnoser]
[ShortRunJob]
public class RideFiguresBenchmarks
{
    private static readonly Rider Rider = new()
    {
        RestHeartRateBpm = 48,
        MaxHeartRateBpm = 188,
        Thresholds = [new ThresholdEntry(new LocalDate(2026, 1, 1), new Watts(250), 168)],
    };

    private readonly Limits _limits = new();
    private Ride _ride = null!;

    [GlobalSetup]
    public void Setup()
    {
        var power = LongRides.Of("road");
        _ride = new Ride
        {
            File = "ride.fit",
            Parts = ["ride.fit"],
            StartsAt = Instant.FromUtc(2026, 5, 5, 9, 0).WithOffset(Offset.Zero),
            Sport = RideSport.Cycling,
            Grid = new SampleGrid
            {
                Length = power.Length,
                Segments = [new GridSegment(0, power.Length, 0)],
                PowerW = power,
                HeartRateBpm = [.. power.Select(p => (float)Math.Round(90 + p / 4))],
            },
            TimerSeconds = power.Length,
            ElapsedSeconds = power.Length,
        };
    }

    [Benchmark]
    public RideFigures All_figures() => FigureBuilder.Build([_ride], Rider, _limits)[0];
}
