using BenchmarkDotNet.Attributes;
using RideAudit.Figures;

namespace RideAudit.Benchmarks.Figures;

/// <summary>The exact whole power curve of a five-hour ride against trying every window.</summary>
[MemoryDiagnoser]
[ShortRunJob]
public class PowerCurveBenchmarks
{
    private float[] _power = [];

    [Params("road", "stop and go", "trainer", "intervals")]
    public string Ride { get; set; } = "";

    [GlobalSetup]
    public void Setup() => _power = LongRides.Of(Ride);

    [Benchmark(Baseline = true)]
    public double[] Every_window()
    {
        var totals = new double[_power.Length + 1];
        for (var i = 0; i < _power.Length; i++)
            totals[i + 1] = totals[i] + _power[i];
        var best = new double[totals.Length];
        for (var duration = 1; duration < totals.Length; duration++)
        {
            var most = 0.0;
            for (var i = 0; i + duration < totals.Length; i++)
                most = Math.Max(most, totals[i + duration] - totals[i]);
            best[duration] = most / duration;
        }
        return best;
    }

    [Benchmark]
    public object Bounded() => PowerCurve.Of(_power);
}
