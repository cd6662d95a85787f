using System.Collections.Immutable;
using BenchmarkDotNet.Attributes;
using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Rules;
using RideAudit.Rules.Changes;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Benchmarks.Rules;

/// <summary>Judging a week, and the search for its smallest change at its longest: seven rides that can all be moved anywhere, and no move that helps.</summary>
[MemoryDiagnoser]
public class ChangeSearchBenchmarks
{
    private static readonly LocalDate Monday = new(2026, 5, 4);

    private WeekUnderReview _stubborn = null!;
    private WeekUnderReview _unrated = null!;
    private WeekUnderReview _helped = null!;
    private ImmutableArray<Finding> _stubbornFindings;
    private ImmutableArray<Finding> _unratedFindings;
    private ImmutableArray<Finding> _helpedFindings;

    [GlobalSetup]
    public void Prepare()
    {
        var rider = new Rider { Plan = new TrainingPlan { WeeklyHours = 5 } };
        var plan = PlanInForce.For(rider, []);
        _stubborn = Review(plan, [.. Enumerable.Range(0, 7).Select(day => Ride(Monday.PlusDays(day), RideKind.Endurance, 80, 3 * day))]);
        _unrated = Review(plan, [.. _stubborn.Week.Rides.Select((r, i) => i == 3 ? r with { Kind = RideKind.Unrated, Bands = default } : r)]);
        _helped = Review(plan,
        [
            Ride(Monday.PlusDays(1), RideKind.High, 60, 18), Ride(Monday.PlusDays(2), RideKind.High, 60, 18), Ride(Monday.PlusDays(5), RideKind.Long, 120, 9),
        ]);
        _stubbornFindings = RuleBook.Standard.Judge(_stubborn);
        _unratedFindings = RuleBook.Standard.Judge(_unrated);
        _helpedFindings = RuleBook.Standard.Judge(_helped);
        if (ChangeSearch.Find(_stubborn, _stubbornFindings) is not { Changes.IsEmpty: true }
            || ChangeSearch.Find(_unrated, _unratedFindings) is not { Changes.IsEmpty: true }
            || ChangeSearch.Find(_helped, _helpedFindings) is not { Changes.Length: 1 })
            throw new InvalidOperationException("The weeks are not what they are meant to be.");
    }

    [Benchmark]
    public ImmutableArray<Finding> Judge_a_week_by_all_rules_in_words() => RuleBook.Standard.Judge(_stubborn);

    [Benchmark]
    public SmallestChange? Search_seven_rides_through_every_class() => ChangeSearch.Find(_stubborn, _stubbornFindings);

    [Benchmark]
    public SmallestChange? Search_seven_rides_one_of_them_unrated() => ChangeSearch.Find(_unrated, _unratedFindings);

    [Benchmark]
    public SmallestChange? Search_until_one_move_helps() => ChangeSearch.Find(_helped, _helpedFindings);

    private static WeekUnderReview Review(PlanInForce plan, ImmutableArray<RideFigures> rides)
    {
        var past = ImmutableArray.CreateBuilder<WeekFacts>();
        var load = default(LoadState);
        var first = Monday.PlusDays(-70);
        for (var start = first; start < Monday; start = start.PlusDays(7))
        {
            past.Add(Week(start, [.. rides.Select(r => r with { StartsAt = r.StartsAt.With((LocalDate d) => d - (Monday - start)) })], load, first));
            load = past[^1].LoadAfter;
        }
        return new WeekUnderReview(Week(Monday, rides, load, first), new Past(past.ToImmutable()), plan);
    }

    private static WeekFacts Week(LocalDate start, ImmutableArray<RideFigures> rides, LoadState load, LocalDate first) =>
        WeekFacts.Build([.. Enumerable.Range(0, 7).Select(i => DayFacts.Build(start.PlusDays(i), rides.Where(r => r.Date == start.PlusDays(i))))], load, first);

    private static RideFigures Ride(LocalDate date, RideKind kind, double minutes, int hour) => new()
    {
        File = $"{date:uuuu-MM-dd}.fit",
        StartsAt = date.At(new LocalTime(hour, 0)).WithOffset(Offset.Zero),
        DurationSeconds = minutes * 60,
        ElapsedSeconds = minutes * 60,
        Kind = kind,
        MeasuredBy = MeasureSource.Power,
        Stress = minutes * 1.2,
        StressFrom = StressSource.Power,
        Bands = new BandSeconds(minutes * 39, minutes * 15, minutes * 6),
    };
}
