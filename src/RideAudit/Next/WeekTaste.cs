using NodaTime;
using RideAudit.Sessions;
using RideAudit.Weeks;

namespace RideAudit.Next;

/// <summary>What a coach prefers among patterns that the rules judge alike. Weights are common practice, no source.</summary>
/// <param name="frame">The week.</param>
internal sealed class WeekTaste(WeekFrame frame)
{
    private const double RideCost = 5;
    private const double HardCost = 8;
    private const double LongCost = 25;
    private const double EarlyHardCost = 0.05;
    private const int WeeksOfHabit = 6;
    private const int DaysInARow = 3;
    private const double InARowCost = 0.8;
    private const double WeekendOffCost = 1.6;
    private const double TestRoomCost = 4;
    private const double TestFreshCost = 3;
    private readonly bool[] _weekend = [.. frame.Days.Select(d => d.Date.DayOfWeek >= IsoDayOfWeek.Saturday && !d.IsSettled)];
    private readonly double[] _longDay = LongDayCosts(frame);
    private readonly Slot[] _lastDays = LastDays(frame);

    /// <summary>Smaller is better.</summary>
    /// <param name="pattern">Seven slots; settled days carry what they come to.</param>
    public double Of(ReadOnlySpan<Slot> pattern)
    {
        double cost = 0;
        int rides = 0, hard = 0, high = 0, offInARow = 0, longest = 0, inARow = 0, gap = 7, lastHard = -7;
        var longAt = -1;
        for (var i = 0; i < 7; i++)
        {
            var slot = pattern[i];
            offInARow = slot == Slot.Off ? offInARow + 1 : 0;
            longest = Math.Max(longest, offInARow);
            inARow = slot == Slot.Off ? 0 : inARow + 1;
            cost += inARow > DaysInARow ? InARowCost : 0;
            if (slot == Slot.Off)
            {
                cost += _weekend[i] ? WeekendOffCost : 0;
                continue;
            }
            rides++;
            if (slot == Slot.Long)
                (cost, longAt) = (cost + _longDay[i], i);
            if (slot is not (Slot.High or Slot.Threshold))
                continue;
            hard++;
            if (slot == Slot.High && high == 0 && frame.TestDue)
                cost += TestCost(i, i - lastHard);
            high += slot == Slot.High ? 1 : 0;
            gap = lastHard > -7 ? Math.Min(gap, i - lastHard) : gap;
            lastHard = i;
            cost += EarlyHardCost * i + (longAt >= 0 ? 1.5 : 0) + (longAt == i - 1 && longAt >= 0 ? 2 : 0) + (slot == Slot.Threshold && high == 0 ? 0.5 : 0);
        }
        cost += RideCost * Math.Abs(rides - frame.Aim.Rides) - 1.5 * Math.Min(gap, 3);
        cost += HardCost * Math.Abs(frame.Aim.HardDays - hard) + HardCost / 2 * Math.Abs(frame.Aim.HighDays - high);
        cost += longAt < 0 && frame.Aim.LongMinutes > 0 ? LongCost : 0;
        return cost + RestAfterWeekend(pattern) + (longest >= 3 && rides >= 3 ? 1.5 : 0);
    }

    // A test takes its time, and fresh legs.
    private double TestCost(int day, int daysSinceHard) =>
        (frame.Days[day].MostMinutes < SessionLibrary.Test.ShortestDay ? TestRoomCost : 0) + (daysSinceHard <= 2 ? TestFreshCost : 0);

    private double RestAfterWeekend(ReadOnlySpan<Slot> pattern)
    {
        double cost = 0;
        var monday = (IsoDayOfWeek.Monday - frame.StartsOn.DayOfWeek + 7) % 7;
        if (pattern[monday] != Slot.Off)
        {
            var saturday = monday >= 2 ? pattern[monday - 2] : _lastDays[monday];
            var sunday = monday >= 1 ? pattern[monday - 1] : _lastDays[1];
            cost += 2 + (saturday != Slot.Off && sunday != Slot.Off ? 4 : 0);
        }
        return cost + (IsLoad(_lastDays[1]) && pattern[0] is Slot.High or Slot.Threshold ? 4 : 0);
    }

    private static bool IsLoad(Slot slot) => slot is Slot.Long or Slot.High or Slot.Threshold;

    // The day with most room; of days with the same room the one the rider has it on by habit, else the weekend.
    private static double[] LongDayCosts(WeekFrame frame)
    {
        var most = frame.Days.Where(d => !d.IsSettled).Select(d => d.MostMinutes).DefaultIfEmpty(0).Max();
        var habit = new int[8];
        foreach (var day in frame.Past.TakeLast(WeeksOfHabit).SelectMany(w => w.Days).Where(d => d.Rides.Any(r => r.LongEnough)))
            habit[(int)day.Date.DayOfWeek]++;
        return [.. frame.Days.Select(d =>
            2.0 * (most - d.MostMinutes) / 60
            + (habit.Sum() >= 2 ? 3.0 * (habit.Max() - habit[(int)d.Date.DayOfWeek]) / habit.Max() : d.Date.DayOfWeek >= IsoDayOfWeek.Saturday ? 0 : 3))];
    }

    /// <summary>The last two days before the week, earlier first; without a history as if ridden, for the weeks to come repeat the first.</summary>
    private static Slot[] LastDays(WeekFrame frame) => frame.Past.IsEmpty ? [Slot.Easy, Slot.Easy] : [SlotOf(frame.Past[^1].Days[5]), SlotOf(frame.Past[^1].Days[6])];

    /// <summary>What a ridden day came to.</summary>
    public static Slot SlotOf(DayFacts day) => day.Kind switch
    {
        DayKind.High => Slot.High,
        DayKind.Threshold => Slot.Threshold,
        _ when day.Rides.Any(r => r.LongEnough) => Slot.Long,
        _ => day.Rides.IsEmpty ? Slot.Off : Slot.Easy,
    };
}
