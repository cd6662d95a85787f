using BenchmarkDotNet.Running;
using RideAudit.Benchmarks.Rules;

BenchmarkSwitcher.FromAssembly(typeof(ChangeSearchBenchmarks).Assembly).Run(args);
