using System.Collections.Immutable;
using BenchmarkDotNet.Attributes;
using NodaTime;
using RideAudit.Document.Layouts;
using RideAudit.Next;
using RideAudit.Plan;
using RideAudit.Plan.Table;
using RideAudit.Units;

namespace RideAudit.Benchmarks.Next;

/// <summary>Laying weeks out: one that the first patterns satisfy, one that no layout satisfies so that the search goes to its end and asks why, and a programme of sixteen.</summary>
[MemoryDiagnoser]
public class LayoutBenchmarks
{
    private static readonly LocalDate Monday = new(2026, 6, 22);
    private static readonly NextStart Start = new() { AsOf = Monday, StartsOn = Monday, Past = [] };
    private static readonly Rider Ordinary = RiderOf(6.5, null);
    private static readonly Rider Cramped = RiderOf(9, ImmutableSortedDictionary<IsoDayOfWeek, int>.Empty
        .Add(IsoDayOfWeek.Tuesday, 60).Add(IsoDayOfWeek.Wednesday, 60).Add(IsoDayOfWeek.Thursday, 60).Add(IsoDayOfWeek.Saturday, 100).Add(IsoDayOfWeek.Sunday, 100));

    [GlobalSetup]
    public void Prepare()
    {
        if (A_week().Weeks[0].GaveWay is not null || A_week_that_nothing_fits().Weeks[0].GaveWay is null || Sixteen_weeks().Weeks.Length != NextBuilder.MostWeeks)
            throw new InvalidOperationException("The weeks are not what they are meant to be.");
    }

    [Benchmark]
    public NextDocument A_week() => NextBuilder.LayOut(Start, Ordinary, PlanTable.Empty, 1);

    [Benchmark]
    public NextDocument A_week_that_nothing_fits() => NextBuilder.LayOut(Start, Cramped, PlanTable.Empty, 1);

    [Benchmark]
    public NextDocument Sixteen_weeks() => NextBuilder.LayOut(Start, Ordinary, PlanTable.Empty, NextBuilder.MostWeeks);

    private static Rider RiderOf(double hours, ImmutableSortedDictionary<IsoDayOfWeek, int>? free) => new()
    {
        Plan = new TrainingPlan { WeeklyHours = hours },
        Thresholds = [new ThresholdEntry(new LocalDate(2026, 6, 1), new Watts(250), 168)],
        MinutesFree = free,
    };
}
