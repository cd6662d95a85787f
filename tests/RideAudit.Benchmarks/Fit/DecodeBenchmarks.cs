using BenchmarkDotNet.Attributes;
using RideAudit.Fit;

namespace RideAudit.Benchmarks.Fit;

/// <summary>Decoding a long recording into the channels, CRC checked, with and without the carry-less CRC.</summary>
[MemoryDiagnoser]
[Config(typeof(SingleShots))]
public class DecodeBenchmarks
{
    private readonly byte[] _headUnit = LongRecording.HeadUnit();
    private readonly byte[] _lean = LongRecording.Lean();

    [Benchmark]
    public int HeadUnitLayout() => FitDecoder.Decode(_headUnit).Parts[0].Records.Count;

    [Benchmark]
    public int LeanLayout() => FitDecoder.Decode(_lean).Parts[0].Records.Count;
}
