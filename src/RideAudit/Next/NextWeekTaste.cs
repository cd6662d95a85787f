using System.Collections.Immutable;
using NodaTime;
using RideAudit.Weeks;

namespace RideAudit.Next;

/// <summary>What a coach would prefer among layouts that the rules judge alike. Weights are our choice, common practice.</summary>
/// <param name="startsOn">The week's first day.</param>
/// <param name="past">The weeks up to the reviewed one, oldest first.</param>
internal sealed class NextWeekTaste(LocalDate startsOn, ImmutableArray<WeekFacts> past)
{
    private const int WeeksOfHabit = 6;
    private const int ShortMinutes = 60;
    private readonly int[] _longHabit = Habit(past, d => d.Kind == DayKind.Long);
    private readonly double _usualRides = past.TakeLast(WeeksOfHabit).Average(w => w.Days.Count(d => d.RideSeconds > 0));

    /// <summary>Smaller is better.</summary>
    public double Of(ImmutableArray<PlannedDay> days)
    {
        double cost = 0;
        for (var i = 0; i < 7; i++)
            cost += OfDay(days, i);
        cost -= 2 * Math.Min(3, SmallestGap(days));
        cost += Math.Abs(days.Count(d => d.Minutes > 0) - _usualRides);
        return cost;
    }

    private double OfDay(ImmutableArray<PlannedDay> days, int i)
    {
        var day = days[i];
        double cost = 0;
        if (day.Kind == DayKind.Long)
            cost += LongDayCost(i);
        var loadedBefore = i == 0 ? past[^1].Days[6] is { } d && (d.IsHard || d.Kind == DayKind.Long) : days[i - 1].IsHard || days[i - 1].Kind == DayKind.Long;
        if (loadedBefore && day.IsHard)
            cost += 6;
        else if (loadedBefore && day.Minutes > 0)
            cost += day.Minutes > ShortMinutes ? 1 : 0.25;
        // Among equals the earlier hard day, so that a week that goes wrong has room left.
        return day.IsHard ? cost + 0.01 * i : cost;
    }

    private double LongDayCost(int index)
    {
        var weekday = startsOn.PlusDays(index).DayOfWeek;
        if (_longHabit.Sum() >= 2)
            return 3.0 * (_longHabit.Max() - _longHabit[(int)weekday]) / _longHabit.Max();
        return weekday is IsoDayOfWeek.Saturday or IsoDayOfWeek.Sunday ? 0 : 3;
    }

    // Days from one hard day to the next, the last hard day before the week included.
    private int SmallestGap(ImmutableArray<PlannedDay> days)
    {
        var last = Enumerable.Range(1, 7).Where(back => past[^1].Days[7 - back].IsHard).Select(back => -back).FirstOrDefault(-7);
        var smallest = 7;
        for (var i = 0; i < 7; i++)
            if (days[i].IsHard)
            {
                smallest = Math.Min(smallest, i - last);
                last = i;
            }
        return smallest;
    }

    private static int[] Habit(ImmutableArray<WeekFacts> past, Func<DayFacts, bool> has)
    {
        var counts = new int[8];
        foreach (var day in past.TakeLast(WeeksOfHabit).SelectMany(w => w.Days).Where(has))
            counts[(int)day.Date.DayOfWeek]++;
        return counts;
    }
}
