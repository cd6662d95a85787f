using System.Collections.Immutable;
using NodaTime;
using RideAudit.Plan;
using RideAudit.Plan.Table;
using RideAudit.Sessions;
using RideAudit.Weeks;

namespace RideAudit.Next;

/// <summary>What each day of a week allows: minutes free, rides that stand, exceptions, and what illness, events and absences near it forbid.</summary>
/// <remarks>Common practice, no source: nothing hard within two days of an illness, an event or an absence of three days or more; nothing high in the first four days after long ones.</remarks>
internal sealed class DayFrames(WeekFrame frame, PlanTable table, ImmutableArray<DayFacts> ridden, int roomPerRide)
{
    private const int WeeksOfHabit = 6;
    private const int HardApart = 2;
    private const int DaysWithoutHigh = 4;
    private const int OpenersMinutes = 45;
    private const int BeforeEventMinutes = 75;
    private const int UsualRoom = 90;
    private const int WeekendRoom = 300;
    private readonly Dictionary<IsoDayOfWeek, (int Weeks, int Longest)> _habit = HabitOf(frame.Past);

    public ImmutableArray<DayFrame> All => [.. Enumerable.Range(0, 7).Select(i => Day(frame.StartsOn.PlusDays(i), i))];

    private DayFrame Day(LocalDate date, int index)
    {
        var exception = frame.Calendar.KindOn(date);
        var day = new DayFrame
        {
            Date = date,
            Exception = exception,
            Ridden = index < ridden.Length ? ridden[index] : null,
            MayBeHard = !Near(date, IsBreak, HardApart) && frame.Calendar.MayAskForMore(date),
            MayBeHigh = !IsBackFromLong(date),
            MayBeLoaded = frame.Calendar.MayAskForMore(date) && !IsBreak(date.PlusDays(-1)) && !IsEvent(date.PlusDays(-2)),
        };
        if (day.Ridden is not null || exception is ExceptionKind.Ill or ExceptionKind.Away)
            return day;
        PlannedSession[] rows = [.. table.On(date).Where(s => !s.MadeHere)];
        if (exception == ExceptionKind.Event)
            return day with { Standing = [.. rows.Where(r => r.Kind == PlannedKind.Event).Select(frame.Stock.Of).OfType<StockRide>()] };
        if (rows.Length > 0)
            return day with { Standing = [.. rows.Select(frame.Stock.Of).OfType<StockRide>()] };
        var stands = frame.Rider.FixedRides.IsDefaultOrEmpty ? [] : frame.Rider.FixedRides.Where(r => r.Day == date.DayOfWeek).Select(frame.Stock.Of).OfType<StockRide>().ToImmutableArray();
        if (!stands.IsEmpty && !IsEvent(date.PlusDays(-1)))
            return day with { Standing = stands };
        // The day after an event is for rest.
        var free = IsEvent(date.PlusDays(-1)) ? 0 : FreeOn(date.DayOfWeek);
        return free >= OpenersMinutes && IsForOpeners(date)
            ? day with { Standing = [frame.Stock.Of(SessionLibrary.All.First(s => s.Purpose == SessionPurpose.Openers), OpenersMinutes)!] }
            : day with { Free = frame.Exceptions.Event && IsBeforeEvent(date) ? Math.Min(free, BeforeEventMinutes) : free };
    }

    private bool IsBeforeEvent(LocalDate date) => Enumerable.Range(1, 6).Any(d => IsEvent(date.PlusDays(d)));

    // The rider's minutes, else the plan's days, else the days ridden on of late, else any.
    private int FreeOn(IsoDayOfWeek day)
    {
        if (frame.Rider.MinutesFree is { } free)
            return free.GetValueOrDefault(day);
        var days = frame.Rider.Plan.Days;
        var usual = _habit.GetValueOrDefault(day);
        var may = !days.IsDefaultOrEmpty ? days.Contains(day) : _habit.Count < 2 || usual.Weeks > 0;
        if (!may)
            return 0;
        var room = day >= IsoDayOfWeek.Saturday ? WeekendRoom : Math.Max(UsualRoom, roomPerRide * 6 / 5 / 5 * 5);
        return Math.Max(room, usual.Longest * 6 / 5 / 5 * 5);
    }

    // The day before the event; where it has no room, the one before that.
    private bool IsForOpeners(LocalDate date) => IsEvent(date.PlusDays(1))
        || (IsEvent(date.PlusDays(2)) && !IsEvent(date.PlusDays(1)) && FreeOn(date.PlusDays(1).DayOfWeek) < OpenersMinutes);

    private bool IsEvent(LocalDate date) => frame.Calendar.KindOn(date) == ExceptionKind.Event;

    /// <summary>An ill or event day, or a day of three or more away in a row.</summary>
    private bool IsBreak(LocalDate date) => frame.Calendar.KindOn(date) switch
    {
        ExceptionKind.Ill or ExceptionKind.Event => true,
        ExceptionKind.Away => RunOf(date) >= frame.Limits.ReturnDaysOut,
        _ => false,
    };

    private int RunOf(LocalDate date)
    {
        var days = 1;
        for (var d = date.PlusDays(-1); frame.Calendar.IsOut(d); d = d.PlusDays(-1))
            days++;
        for (var d = date.PlusDays(1); frame.Calendar.IsOut(d); d = d.PlusDays(1))
            days++;
        return days;
    }

    private bool IsBackFromLong(LocalDate date) =>
        frame.Calendar.AbsenceBefore(date, DaysWithoutHigh) is { } absence && (absence.Days >= frame.Limits.ReturnLongDaysOut || (absence.Ill && absence.Days >= frame.Limits.ReturnDaysOut));

    private static bool Near(LocalDate date, Func<LocalDate, bool> isIt, int days) =>
        Enumerable.Range(1, days).Any(d => isIt(date.PlusDays(-d)) || isIt(date.PlusDays(d)));

    private static Dictionary<IsoDayOfWeek, (int, int)> HabitOf(ImmutableArray<WeekFacts> past) => past
        .TakeLast(WeeksOfHabit)
        .SelectMany(w => w.Days)
        .Where(d => d.RideSeconds > 0)
        .GroupBy(d => d.Date.DayOfWeek)
        .ToDictionary(g => g.Key, g => (g.Count(), (int)(g.Max(d => d.RideSeconds) / 60)));
}
