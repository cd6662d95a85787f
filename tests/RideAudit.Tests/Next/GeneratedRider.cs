using System.Collections.Immutable;
using NodaTime;
using RideAudit.Next;
using RideAudit.Plan;
using RideAudit.Plan.Table;
using RideAudit.Tests.Demo;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Tests.Next;

/// <summary>Riders made at random, the same for a seed on every machine: 3 to 18 h, 3 to 7 days, every experience, fixed rides, exceptions, histories from none to a year.</summary>
internal sealed record GeneratedRider(Rider Rider, ImmutableArray<WeekFacts> Past)
{
    private static readonly int[] Histories = [0, 1, 3, 6, 12, 26, 52];

    public static GeneratedRider Of(int seed)
    {
        var random = new DemoRandom((ulong)seed * 104729 + 7);
        var hours = 3 + 0.5 * random.Between(0, 30);
        var days = Enum.GetValues<IsoDayOfWeek>().Where(d => d != IsoDayOfWeek.None).OrderBy(_ => random.Next()).Take(random.Between(3, 7)).ToArray();
        var each = (int)(hours * 60 * 1.6 / days.Length / 5) * 5;
        var rider = new Rider
        {
            Experience = (Experience)random.Between(0, 2),
            Plan = new TrainingPlan { WeeklyHours = hours },
            Thresholds = [new ThresholdEntry(new LocalDate(2020, 1, 1), new Watts(180 + random.Between(0, 140)), 150 + random.Between(0, 30))],
            MinutesFree = random.Next() < 0.4 ? null : days.ToImmutableSortedDictionary(d => d, d => Math.Max(40, d >= IsoDayOfWeek.Saturday ? each * 2 : each)),
            FixedRides = random.Next() < 0.25 ? [FixedOn(days[0], random)] : [],
        };
        if (rider.MinutesFree is null)
            rider = rider with { Plan = rider.Plan with { Days = [.. days] } };
        var weeks = Histories[random.Between(0, Histories.Length - 1)];
        return new GeneratedRider(rider with { Exceptions = Exceptions(random) }, HistoryOf(rider, weeks, random));
    }

    private static FixedRide FixedOn(IsoDayOfWeek day, DemoRandom random) =>
        new(day, random.Next() < 0.5 ? PlannedKind.Threshold : PlannedKind.Endurance, 60 + 15 * random.Between(0, 4), "club ride");

    private static ImmutableArray<PlanException> Exceptions(DemoRandom random)
    {
        if (random.Next() > 0.25)
            return [];
        var from = RiddenWeeks.Monday.PlusDays(random.Between(-8, 8));
        var kind = (ExceptionKind)random.Between(0, 3);
        return [new PlanException(from, from.PlusDays(kind == ExceptionKind.Event ? 0 : random.Between(0, 6)), kind)];
    }

    // What was ridden before is ridden as the program would have laid it out, at once, so that the history holds no fault of its own.
    private static ImmutableArray<WeekFacts> HistoryOf(Rider rider, int weeks, DemoRandom random)
    {
        if (weeks == 0)
            return [];
        var scale = 0.75 + 0.25 * random.Next();
        var before = rider with { Plan = rider.Plan with { WeeklyHours = rider.Plan.WeeklyHours * scale } };
        var start = new NextStart { AsOf = RiddenWeeks.Monday, StartsOn = RiddenWeeks.Monday.PlusDays(-7 * Math.Min(4, weeks)), Past = [] };
        _ = NextBuilder.LayOut(start, before, PlanTable.Empty, Math.Min(4, weeks), out var past);
        return Repeated(past, weeks, rider);
    }

    private static ImmutableArray<WeekFacts> Repeated(ImmutableArray<WeekFacts> cycle, int weeks, Rider rider)
    {
        var built = ImmutableArray.CreateBuilder<WeekFacts>();
        var limits = PlanInForce.For(rider, []).Limits;
        var load = default(LoadState);
        LocalDate? first = null;
        for (var i = 0; i < weeks; i++)
        {
            var source = cycle[^(1 + (weeks - 1 - i) % cycle.Length)];
            var startsOn = RiddenWeeks.Monday.PlusDays(-7 * (weeks - i));
            ImmutableArray<DayFacts> days =
            [
                .. source.Days.Select((d, n) => DayFacts.Build(
                    startsOn.PlusDays(n), d.Rides.Select(r => r with { StartsAt = (startsOn.PlusDays(n) + LocalTime.Noon).WithOffset(Offset.Zero) }), 0, limits)),
            ];
            first ??= days.FirstOrDefault(d => !d.Rides.IsEmpty)?.Date;
            built.Add(WeekFacts.Build(days, load, first));
            load = built[^1].LoadAfter;
        }
        return built.ToImmutable();
    }
}
