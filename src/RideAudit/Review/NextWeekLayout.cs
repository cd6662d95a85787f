using System.Collections.Immutable;
using NodaTime;
using RideAudit.Plan;
using RideAudit.Rules;
using RideAudit.Weeks;

namespace RideAudit.Review;

/// <summary>Tries every sensible layout of a week and keeps the one the rules like best.</summary>
/// <param name="startsOn">The week's first day.</param>
/// <param name="plan">The plan in force.</param>
/// <param name="past">The weeks up to the reviewed one, oldest first, at least one.</param>
/// <param name="exception">What the week is excepted for, or is to be.</param>
internal sealed class NextWeekLayout(LocalDate startsOn, PlanInForce plan, ImmutableArray<WeekFacts> past, ExceptionKind? exception)
{
    private const int LeastEasyMinutes = 30;
    private const int MostEasyMinutes = 180;
    private readonly NextWeekTaste _taste = new(startsOn, past);
    private readonly Background _background = new(Judged(startsOn, plan, past, exception, [.. Enumerable.Repeat(PlannedDay.Rest, 7)]));

    /// <summary>The best layout.</summary>
    /// <returns>Null when no day of the week can be ridden on, or no hours are planned.</returns>
    public ImmutableArray<PlannedDay>? Find()
    {
        var free = FreeDays();
        if (free.Count == 0 || plan.PlannedHours is not > 0)
            return null;
        (NextWeekScore Score, ImmutableArray<PlannedDay> Days)? best = null;
        for (var hardDays = MostHardDays(); hardDays >= 0; hardDays--)
            foreach (var candidate in Candidates(free, hardDays))
            {
                var score = ScoreOf(candidate, hardDays);
                if (best is null || score.CompareTo(best.Value.Score) < 0)
                    best = (score, candidate);
            }
        return best?.Days;
    }

    /// <summary>A layout as the rules look at it.</summary>
    public static WeekUnderReview Judged(
        LocalDate startsOn, PlanInForce plan, ImmutableArray<WeekFacts> past, ExceptionKind? exception, ImmutableArray<PlannedDay> days)
    {
        var last = past[^1];
        var facts = days.Select((d, i) => PlannedRides.DayOf(startsOn.PlusDays(i), d, plan.Limits)).ToImmutableArray();
        return new WeekUnderReview(WeekFacts.Build(facts, last.LoadAfter, last.FirstRideOn, exception), new Past(past), plan);
    }

    private List<int> FreeDays()
    {
        var days = plan.Rider.Plan.Days;
        return [.. Enumerable.Range(0, 7).Where(i => days.IsDefaultOrEmpty || days.Contains(startsOn.PlusDays(i).DayOfWeek))];
    }

    private int MostHardDays() => exception == ExceptionKind.Lighter ? Math.Min(1, plan.Limits.HighDaysAtMost) : plan.Limits.HighDaysAtMost;

    // One hard day is high, a second is around threshold, a third is high again; a rider new to hard riding stays around threshold.
    private bool IsHigh(int number) => plan.Rider.Experience != Experience.New && exception != ExceptionKind.Lighter && number % 2 == 0;

    private IEnumerable<ImmutableArray<PlannedDay>> Candidates(List<int> free, int hardDays)
    {
        var highDays = Enumerable.Range(0, hardDays).Count(IsHigh);
        var sizes = NextWeekSizes.For(plan, past, highDays, hardDays - highDays, exception == ExceptionKind.Lighter);
        foreach (var hard in Subsets(free, hardDays))
            foreach (var longDay in sizes.LongMinutes > 0 ? free.Except(hard).Select(d => (int?)d) : [null])
                foreach (var easy in AllSubsets([.. free.Except(hard).Where(d => d != longDay)]))
                    if (Fill(sizes, hard, longDay, easy) is { } days)
                        yield return days;
    }

    private ImmutableArray<PlannedDay>? Fill(NextWeekSizes sizes, List<int> hard, int? longDay, List<int> easy)
    {
        var days = Enumerable.Repeat(PlannedDay.Rest, 7).ToArray();
        for (var i = 0; i < hard.Count; i++)
            days[hard[i]] = IsHigh(i) ? sizes.High : sizes.Threshold;
        if (longDay is { } day)
            days[day] = new PlannedDay(DayKind.Long, sizes.LongMinutes);
        var left = sizes.WeekMinutes - days.Sum(d => d.Minutes);
        if (easy.Count == 0)
            return [.. days];
        var each = left / easy.Count / 5 * 5;
        if (each < LeastEasyMinutes)
            return null;
        each = Math.Min(each, Math.Min(MostEasyMinutes, longDay is null ? MostEasyMinutes : Math.Max(LeastEasyMinutes, sizes.LongMinutes - 15)));
        foreach (var e in easy)
            days[e] = new PlannedDay(DayKind.Endurance, each);
        return [.. days];
    }

    private NextWeekScore ScoreOf(ImmutableArray<PlannedDay> days, int hardDays)
    {
        var judged = new JudgedWeek(Judged(startsOn, plan, past, exception, days).Week, _background);
        var broken = 0;
        var watch = 0;
        foreach (var rule in RuleBook.Rules)
        {
            var verdict = rule.Decide(judged).Verdict;
            broken += verdict == Verdict.Broken ? 1 : 0;
            watch += verdict == Verdict.Watch ? 1 : 0;
        }
        return new NextWeekScore(broken, watch, -hardDays, _taste.Of(days));
    }

    private static IEnumerable<List<int>> AllSubsets(List<int> items)
    {
        for (var mask = 0; mask < 1 << items.Count; mask++)
            yield return [.. items.Where((_, i) => (mask & (1 << i)) != 0)];
    }

    private static IEnumerable<List<int>> Subsets(List<int> items, int size) => AllSubsets(items).Where(s => s.Count == size);
}
