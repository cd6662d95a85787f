using BenchmarkDotNet.Attributes;
using RideAudit.Fit;

namespace RideAudit.Benchmarks.Fit;

/// <summary>Decoding a long recording into the channels, CRC checked, against the official JavaScript decoder in its two modes.</summary>
/// <remarks>The official decoder runs in a node process of its own that stays alive; its start is not measured. Without node its rows are missing.</remarks>
[MemoryDiagnoser]
[ShortRunJob]
public class DecodeBenchmarks
{
    private byte[] headUnit = [];
    private byte[] lean = [];
    private OfficialDecoder? official;

    [GlobalSetup(Targets = [nameof(HeadUnitLayout), nameof(LeanLayout)])]
    public void Setup()
    {
        headUnit = LongRecording.HeadUnit();
        lean = LongRecording.Lean();
    }

    [GlobalSetup(Target = nameof(OfficialDefault))]
    public void SetupOfficialDefault() => official = OfficialDecoder.Start(LongRecording.HeadUnit(), "default");

    [GlobalSetup(Target = nameof(OfficialRaw))]
    public void SetupOfficialRaw() => official = OfficialDecoder.Start(LongRecording.HeadUnit(), "raw");

    [GlobalCleanup]
    public void Cleanup() => official?.Dispose();

    [Benchmark(Baseline = true)]
    public int HeadUnitLayout() => FitDecoder.Decode(headUnit).Parts[0].Records.Count;

    [Benchmark]
    public int LeanLayout() => FitDecoder.Decode(lean).Parts[0].Records.Count;

    [Benchmark]
    public int OfficialDefault() => official!.Decode();

    [Benchmark]
    public int OfficialRaw() => official!.Decode();
}
