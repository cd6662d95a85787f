using System.Collections.Immutable;
using RideAudit.Plan;
using RideAudit.Sessions;

namespace RideAudit.Next;

/// <summary>Gives the days of a pattern their minutes: work first, then the long ride, then easy riding for the rest of the hours.</summary>
/// <remarks>Common practice, no source: growth goes into easy and long rides, hard rides keep their length as long as it does.</remarks>
/// <param name="frame">The week.</param>
/// <param name="choice">Its hard sessions.</param>
internal sealed class WeekMinutes(WeekFrame frame, SessionChoice choice)
{
    private const int Step = 5;
    private const int LeastEasy = 30;
    private const int MostEasy = 180;
    private const int UsualRecovery = 45;
    private const int MostRecovery = 60;
    private const int MostHard = 90;
    private const int LeastHard = 45;
    private const int WeekPerHard = 9;
    private const double LongFirst = 1.2;
    private const double LongAtMost = 1.5;
    private const int LeastWithSprints = 55;
    private const int MostWithSprints = 120;
    private const int BelowLong = 15;
    private readonly int _settled = frame.Days.Sum(d => (int)((d.Ridden?.RideSeconds ?? 0) / 60) + d.Standing.Sum(r => r.Minutes));

    /// <summary>The rides of a pattern.</summary>
    /// <param name="pattern">Seven slots.</param>
    /// <param name="minutes">The week's minutes, settled days included.</param>
    /// <param name="back">Steps back in the hard sessions.</param>
    /// <param name="recoveries">Recovery rides beyond those that the rest days ask for.</param>
    /// <returns>Null when a session of it fits no day.</returns>
    public ImmutableArray<ImmutableArray<StockRide>>? Fill(ReadOnlySpan<Slot> pattern, int minutes, int back, int recoveries)
    {
        var sizes = new Sizes(pattern.ToArray(), frame);
        if (!Hard(sizes, back))
            return null;
        Easy(sizes, recoveries);
        Spread(sizes, minutes - _settled);
        return Rides(sizes);
    }

    private bool Hard(Sizes sizes, int back)
    {
        int high = 0, threshold = 0;
        for (var i = 0; i < 7; i++)
        {
            if (sizes.Slots[i] is not (Slot.High or Slot.Threshold))
                continue;
            var isHigh = sizes.Slots[i] == Slot.High;
            var ride = choice.Of(isHigh ? PlannedKind.High : PlannedKind.Threshold, isHigh ? high++ : threshold++, frame.Days[i].MostMinutes, back);
            if (ride is null)
                return false;
            sizes.Hard[i] = ride;
            sizes.Set(i, ride.Minutes, Math.Max(ride.Minutes, Math.Min(Longest, Math.Min(frame.Days[i].MostMinutes, frame.Aim.MostMinutes))));
        }
        return true;
    }

    private void Easy(Sizes sizes, int more)
    {
        var recoveries = more + Math.Max(0, frame.Limits.RestDaysAtLeast - Enumerable.Range(0, 7).Count(i => IsRest(sizes, i)));
        foreach (var i in Enumerable.Range(0, 7).Where(i => sizes.Slots[i] == Slot.Easy).OrderBy(i => RecoveryRank(sizes.Slots, i)))
        {
            var room = frame.Days[i].MostMinutes;
            if (recoveries-- > 0 || !frame.Days[i].MayBeLoaded || room < LeastEasy)
            {
                sizes.IsRecovery[i] = true;
                sizes.Set(i, Math.Min(UsualRecovery, room) / Step * Step, Math.Min(MostRecovery, room));
            }
            else
            {
                sizes.Set(i, LeastEasy, Math.Min(room, MostEndurance));
            }
        }
        for (var i = 0; i < 7; i++)
        {
            if (sizes.Slots[i] == Slot.Long)
                sizes.Set(i, Math.Min(frame.Aim.LongMinutes, frame.Days[i].MostMinutes), Math.Min(MostLong, Math.Min(frame.Days[i].MostMinutes, frame.Aim.MostMinutes)));
        }
    }

    // A hard ride of much volume has easy riding around its work.
    private int Longest => Math.Max(MostHard, frame.Aim.Minutes / WeekPerHard / Step * Step);

    // Never more than half of the week in one ride, nor far more than the review will ask for.
    private int MostLong => Math.Max(frame.Aim.LongMinutes, Math.Min(frame.Aim.Minutes / 2, (int)(LongAtMost * 60 * frame.Limits.LongRideHours) / Step * Step));

    private int MostEndurance => Math.Min(
        frame.Aim.MostMinutes, frame.Aim.LongMinutes > 0 ? Math.Max(60, frame.Aim.LongMinutes - BelowLong) : MostEasy);

    private bool IsRest(Sizes sizes, int i) =>
        sizes.Slots[i] == Slot.Off || (frame.Days[i].Ridden?.IsRestOrRecovery ?? (!frame.Days[i].Standing.IsEmpty && frame.Days[i].Standing.All(r => r.Kind == PlannedKind.Recovery)));

    // First the days with little room, then those after a hard or a long ride.
    private double RecoveryRank(Slot[] slots, int i) =>
        (frame.Days[i].MayBeLoaded ? 0 : -1000) + frame.Days[i].MostMinutes / 60.0 - (i > 0 && slots[i - 1] is Slot.High or Slot.Threshold or Slot.Long ? 0.5 : 0);

    private void Spread(Sizes sizes, int minutes)
    {
        var left = minutes - sizes.Minutes.Sum();
        left = Grow(left, i => sizes.Slots[i] == Slot.Easy && !sizes.IsRecovery[i], sizes);
        left = Grow(left, i => sizes.Slots[i] == Slot.Long && sizes.Minutes[i] < LongFirst * frame.Aim.LongMinutes, sizes);
        left = Grow(left, i => sizes.Hard[i] is not null, sizes);
        left = Grow(left, i => sizes.Slots[i] == Slot.Long, sizes);
        left = Grow(left, i => sizes.IsRecovery[i], sizes);
        Shrink(left, sizes);
    }

    private static int Grow(int left, Func<int, bool> takes, Sizes sizes)
    {
        while (left >= Step)
        {
            var at = -1;
            for (var i = 0; i < 7; i++)
            {
                // A weekend day is worth more minutes than one in the week.
                if (takes(i) && sizes.Minutes[i] + Step <= sizes.Most[i] && (at < 0 || sizes.Minutes[i] / sizes.Weight[i] < sizes.Minutes[at] / sizes.Weight[at]))
                    at = i;
            }
            if (at < 0)
                break;
            sizes.Minutes[at] += Step;
            left -= Step;
        }
        return left;
    }

    // Too many minutes: recovery rides are the first to be shorter, then the easy riding around the work of hard ones.
    private static void Shrink(int left, Sizes sizes)
    {
        left = Shrink(left, sizes, i => sizes.IsRecovery[i] ? LeastEasy : int.MaxValue);
        Shrink(left, sizes, i => sizes.Hard[i] is { } hard ? Math.Max(LeastHard, FittedSession.LeastMinutes(hard.Fitted.Blocks)) : int.MaxValue);
    }

    private static int Shrink(int left, Sizes sizes, Func<int, int> least)
    {
        for (var shorter = true; shorter && left <= -Step;)
        {
            shorter = false;
            for (var i = 0; i < 7 && left <= -Step; i++)
            {
                if (sizes.Minutes[i] - Step < least(i))
                    continue;
                sizes.Minutes[i] -= Step;
                left += Step;
                shorter = true;
            }
        }
        return left;
    }

    private ImmutableArray<ImmutableArray<StockRide>>? Rides(Sizes sizes)
    {
        var rides = ImmutableArray.CreateBuilder<ImmutableArray<StockRide>>(7);
        var sprints = SprintDay(sizes);
        for (var i = 0; i < 7; i++)
        {
            var ride = sizes.Slots[i] switch
            {
                Slot.Easy when i == sprints && choice.WithSprints(sizes.Minutes[i]) is { } withSprints => withSprints,
                Slot.Easy => frame.Stock.Easy(sizes.IsRecovery[i] ? SessionPurpose.Recovery : SessionPurpose.Endurance, sizes.Minutes[i]),
                Slot.Long => frame.Stock.Easy(SessionPurpose.Long, sizes.Minutes[i]),
                Slot.High or Slot.Threshold => Longer(sizes.Hard[i]!, sizes.Minutes[i]),
                _ => null,
            };
            if (ride is null && sizes.Slots[i] is not (Slot.Off or Slot.Settled))
                return null;
            rides.Add(ride is null ? frame.Days[i].Standing : [ride]);
        }
        return rides.MoveToImmutable();
    }

    // Some sprints in an easy ride, fresh: not the day after a hard or a long ride, nor the day before one.
    private int SprintDay(Sizes sizes)
    {
        for (var i = 0; i < 7; i++)
        {
            if (sizes.Slots[i] == Slot.Easy && !sizes.IsRecovery[i] && frame.Days[i].MayBeHard && sizes.Minutes[i] is >= LeastWithSprints and <= MostWithSprints
                && !IsLoad(i - 1) && !IsHardSlot(i + 1))
                return i;
        }
        return -1;

        bool IsLoad(int day) => day >= 0 && (sizes.Slots[day] is Slot.High or Slot.Threshold or Slot.Long || frame.Days[day].Ridden is { IsHard: true } || frame.Days[day].Standing.Any(r => r.IsHard));
        bool IsHardSlot(int day) => day < 7 && (sizes.Slots[day] is Slot.High or Slot.Threshold || frame.Days[day].Standing.Any(r => r.IsHard));
    }

    // With much easy riding around it work may not be enough to make the ride hard any more: then it stays short.
    private StockRide Longer(StockRide ride, int minutes) =>
        choice.Again(ride, minutes) is { } longer && longer.Kind == ride.Kind ? longer : ride;

    /// <summary>Minutes by day while they are given out.</summary>
    private sealed class Sizes(Slot[] slots, WeekFrame frame)
    {
        private const double WeekendWeight = 1.4;

        public Slot[] Slots => slots;

        public int[] Minutes { get; } = new int[7];

        public int[] Most { get; } = new int[7];

        public bool[] IsRecovery { get; } = new bool[7];

        public StockRide?[] Hard { get; } = new StockRide?[7];

        public double[] Weight { get; } = [.. frame.Days.Select(d => d.Date.DayOfWeek >= NodaTime.IsoDayOfWeek.Saturday ? WeekendWeight : 1)];

        public void Set(int day, int minutes, int most) => (Minutes[day], Most[day]) = (minutes, Math.Max(minutes, most));
    }
}
