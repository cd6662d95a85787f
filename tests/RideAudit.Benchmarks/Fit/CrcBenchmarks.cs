using BenchmarkDotNet.Attributes;
using RideAudit.Fit.Protocol;

namespace RideAudit.Benchmarks.Fit;

/// <summary>The CRC alone, in its plain and its carry-less form, over a long recording.</summary>
[ShortRunJob]
public class CrcBenchmarks
{
    private readonly byte[] bytes = LongRecording.HeadUnit();

    [Benchmark(Baseline = true)]
    public int Tables() => FitCrc.AppendByTables(0, bytes);

    [Benchmark]
    public int Carryless() => CarrylessCrc.IsSupported ? CarrylessCrc.Append(0, bytes) : FitCrc.AppendByTables(0, bytes);
}
