using System.Collections.Immutable;
using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Plan.Blocks;
using RideAudit.Rules;
using RideAudit.Sessions;
using RideAudit.Tests.Demo;
using RideAudit.Units;

namespace RideAudit.Tests.Rules;

/// <summary>Weeks made at random, the same for a seed on every machine: usual weeks with something gone wrong, after histories from none to fourteen weeks.</summary>
internal static class GeneratedWeek
{
    private static readonly (string Name, int Minutes, string Blocks)[] Rides =
    [
        ("easy", 60, "63-69 % to the end"), ("easy", 90, "63-69 % to the end"), ("short", 40, "very easy to the end"), ("easy", 75, "63-69 % to the end"),
        ("intervals", 60, "15 min easy, 4 x 4 min 107-112 %, 3 min easy between, easy to the end"), ("tempo", 75, "15 min easy, 2 x 20 min 86-90 %, 5 min easy between, easy to the end"),
        ("long", 150, "63-69 % to the end"), ("long", 180, "63-69 % to the end"), ("long", 125, "63-69 % to the end"),
        ("windy", 60, "30 min easy, 8 min 86-90 %, easy to the end"), ("windy", 90, "20 min easy, 14 min 86-90 %, easy to the end"), ("brisk", 70, "77-79 % to the end"), ("brisk", 50, "81-82 % to the end"),
        ("group", 150, "30 min easy, 70 min 80-82 %, easy to the end"), ("near threshold", 75, "15 min easy, 2 x 20 min 95-98 %, 5 min easy between, easy to the end"), ("sprints", 60, "20 min easy, 6 x 30 s all out, 4 min easy between, easy to the end"),
    ];

    // Rides by day, as places in the list above; 0 is none.
    private static readonly int[][] Weeks =
        [[0, 5, 1, 6, 0, 7, 1], [0, 5, 0, 5, 0, 8, 2], [0, 5, 3, 0, 6, 7, 0], [3, 5, 1, 6, 0, 8, 4], [0, 15, 1, 6, 0, 16, 7], [0, 1, 1, 0, 0, 7, 1]];

    private static readonly (string Name, double Value)[] Overrides =
    [
        ("threshold_days_on_top", 0), ("threshold_days_on_top", 2), ("high_days_at_most", 0), ("high_days_at_most", 1), ("easy_broken_min", 20), ("easy_watch_min", 0), ("long_ride_h", 2),
        ("rest_days_at_least", 1), ("rest_days_at_least", 3), ("monotony_watch", 1.2), ("ramp_watch", 2), ("long_ride_first_hard_days", 2), ("heavy_pair_stress", 80), ("growth_weeks", 1),
    ];
    private static readonly LocalDate Monday = Sample.Monday;
    private static readonly Dictionary<(Limits, int, int), RideFigures> Ridden = [];

    public static WeekUnderReview Of(int seed)
    {
        var random = new DemoRandom((ulong)seed * 7919 + 11);
        var plan = PlanOf(random);
        var usual = Weeks[random.Between(0, Weeks.Length - 1)];
        var rides = new List<RideFigures>();
        for (int weeks = new[] { 0, 1, 4, 5, 9, 14 }[random.Between(0, 5)], back = weeks; back > 0; back--)
        {
            var share = back % 4 == 0 && random.Next() < 0.6 ? 0.6 : 0.9 + 0.05 * random.Between(0, 4);
            rides.AddRange(RidesOf(usual, Monday.PlusDays(-7 * back), share, random, plan));
        }
        var week = (int[])usual.Clone();
        for (var wrong = random.Between(0, 3); wrong > 0; wrong--)
            week[random.Between(0, 6)] = random.Between(0, Rides.Length);
        rides.AddRange(Odd(RidesOf(week, Monday, random.Next() < 0.7 ? 1 : 0.7 + 0.1 * random.Between(0, 8), random, plan), random));
        return Sample.Review(rides, plan, Monday, random.Next() < 0.1 ? random.Between(2, 6) : 7);
    }

    private static PlanInForce PlanOf(DemoRandom random)
    {
        var limit = Overrides[random.Between(0, Overrides.Length - 1)];
        var limits = random.Next() < 0.4 ? ImmutableDictionary.CreateRange([KeyValuePair.Create(limit.Name, limit.Value)]) : ImmutableDictionary<string, double>.Empty;
        var plan = new TrainingPlan
        {
            SplitBy = random.Next() < 0.25 ? SplitBy.Session : SplitBy.Time,
            LimitOverrides = limits,
            Days = random.Next() < 0.2 ? [IsoDayOfWeek.Tuesday, IsoDayOfWeek.Thursday, IsoDayOfWeek.Friday, IsoDayOfWeek.Saturday, IsoDayOfWeek.Sunday] : [],
        };
        var from = random.Between(-9, 6);
        PlanException[] exceptions = random.Next() < 0.35 ? [new PlanException(Monday.PlusDays(from), Monday.PlusDays(from + random.Between(0, 6)), (ExceptionKind)random.Between(0, 3))] : [];
        var inForce = Sample.Plan(random.Next() < 0.1 ? null : 4 + 0.5 * random.Between(0, 10), (Experience)random.Between(0, 2), plan, exceptions);
        return random.Next() < 0.2
            ? inForce with { Rider = inForce.Rider with { FixedRides = [new FixedRide(IsoDayOfWeek.Thursday, PlannedKind.Threshold, 75, "club ride")] } }
            : inForce;
    }

    private static IEnumerable<RideFigures> RidesOf(int[] week, LocalDate startsOn, double share, DemoRandom random, PlanInForce plan)
    {
        for (var day = 0; day < 7; day++)
        {
            if (week[day] > 0 && random.Next() > 0.04)
                yield return RideOf(week[day] - 1, share, startsOn.PlusDays(day), day >= 5 ? 9 : 18, plan);
            if (week[day] > 0 && random.Next() < 0.05)
                yield return RideOf(2, 1, startsOn.PlusDays(day), 6, plan);
        }
    }

    private static RideFigures RideOf(int index, double share, LocalDate date, int hour, PlanInForce plan)
    {
        var (name, usual, blocks) = Rides[index];
        var minutes = Math.Max(40, (int)(share * usual));
        var key = (plan.Limits, index, minutes);
        if (!Ridden.TryGetValue(key, out var ride))
        {
            var rider = plan.Rider with { Plan = new TrainingPlan() };
            var fitted = FittedSession.Fit(SessionBlocks.Read(blocks, out _)!, minutes) ?? FittedSession.Fit(SessionBlocks.Read(blocks, out _)!, usual)!;
            Ridden[key] = ride = PlannedTrace.FiguresOf(fitted, Monday, rider, plan.Limits);
        }
        return ride with { File = $"{date:uuuu-MM-dd}-{hour:00} {name}", StartsAt = date.At(new LocalTime(hour, 0)).WithOffset(Offset.FromHours(1)) };
    }

    // What a week may also hold: a ride without figures, a threshold that is an estimate, heart rate alone, stress that is not known.
    private static IEnumerable<RideFigures> Odd(IEnumerable<RideFigures> rides, DemoRandom random)
    {
        var odd = random.Between(0, 9);
        foreach (var ride in rides)
        {
            var isOne = random.Next() < 0.4;
            yield return odd switch
            {
                0 when isOne => Sample.Ride(ride.Date, RideKind.Unrated, ride.DurationSeconds / 60, ride.StartsAt.Hour, 1),
                1 => ride with { Threshold = new ThresholdInForce(new Watts(250), ThresholdSource.Estimate, 20, 80) },
                2 when isOne => ride with { MeasuredBy = MeasureSource.HeartRate, StressFrom = StressSource.HeartRate, Threshold = null, IntensityRatio = null, NormalisedPower = null, AtThresholdShare = null },
                3 when isOne => ride with { Stress = null, StressFrom = StressSource.Unknown },
                4 when isOne => ride with { Bands = ride.Bands with { Low = 0.8 * ride.Bands.Low } },
                _ => ride,
            };
        }
    }
}
