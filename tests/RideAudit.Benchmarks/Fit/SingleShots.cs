using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Engines;
using BenchmarkDotNet.Jobs;

namespace RideAudit.Benchmarks.Fit;

/// <summary>Many single runs, each timed by itself: the shortest says what the code can do even where the machine is busy with other things.</summary>
internal sealed class SingleShots : ManualConfig
{
    public SingleShots()
    {
        var shots = Job.Default.WithStrategy(RunStrategy.Monitoring).WithLaunchCount(1).WithWarmupCount(60).WithInvocationCount(1).WithUnrollFactor(1).WithIterationCount(400);
        AddJob(shots.WithId("as is"));
        AddJob(shots.WithId("plain CRC").WithEnvironmentVariable("DOTNET_EnableAES", "0"));
        AddColumn(StatisticColumn.Min, StatisticColumn.Median);
        HideColumns(Column.Error, Column.StdDev, Column.RatioSD);
    }
}
