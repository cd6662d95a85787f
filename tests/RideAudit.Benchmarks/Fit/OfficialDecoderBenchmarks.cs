using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Engines;

namespace RideAudit.Benchmarks.Fit;

/// <summary>The official JavaScript decoder on the same recording, in its default and its raw mode.</summary>
/// <remarks>It runs in a node process of its own that stays alive; its start is not measured. Needs node and `npm ci` in tests/crosschecks.</remarks>
[SimpleJob(RunStrategy.Monitoring, launchCount: 1, warmupCount: 4, iterationCount: 20, invocationCount: 1)]
[MinColumn]
[MedianColumn]
public class OfficialDecoderBenchmarks
{
    private OfficialDecoder? _official;

    [Params("default", "raw")]
    public string Mode { get; set; } = "default";

    [GlobalSetup]
    public void Setup() => _official = OfficialDecoder.Start(LongRecording.HeadUnit(), Mode);

    [GlobalCleanup]
    public void Cleanup() => _official?.Dispose();

    [Benchmark]
    public int HeadUnitLayout() => _official!.Decode();
}
