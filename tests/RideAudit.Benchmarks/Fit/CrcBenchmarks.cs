using BenchmarkDotNet.Attributes;
using RideAudit.Fit.Protocol;

namespace RideAudit.Benchmarks.Fit;

/// <summary>The CRC alone, in its plain and its carry-less form, over a long recording.</summary>
[Config(typeof(SingleShots))]
public class CrcBenchmarks
{
    private readonly byte[] _bytes = LongRecording.HeadUnit();

    [Benchmark]
    public int Tables() => FitCrc.AppendByTables(0, _bytes);

    [Benchmark]
    public int AsChosen() => FitCrc.Append(0, _bytes);
}
