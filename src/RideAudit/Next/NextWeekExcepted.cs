using System.Collections.Immutable;
using NodaTime;
using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Weeks;

namespace RideAudit.Next;

/// <summary>Weeks that are not laid out by search: those that hold an event, those away, and those that cannot be laid out.</summary>
internal static class NextWeekExcepted
{
    private const int EasyMinutes = 45;

    /// <summary>A week with an event, or away: the rider file's days stay free, the others are easy.</summary>
    public static NextWeekDocument Document(LocalDate startsOn, PlanInForce plan, ImmutableArray<WeekFacts> past, WeekExceptions exceptions)
    {
        var away = exceptions.Away && !exceptions.Event;
        var entries = Enumerable.Range(0, 7).Select(i => startsOn.PlusDays(i)).Select(d => Day(plan, startsOn, d)).ToImmutableArray();
        return Empty(startsOn, plan, away
            ? ["The rider file says away: nothing is laid out for those days."]
            : ["The week holds an event: its days are left to it, the days before are short and easy, and the two after are for rest."]) with
        {
            Exception = exceptions.Leading,
            Hours = entries.Sum(e => e.Minutes) / 60.0,
            ExpectedStress = entries.Sum(e => e.ExpectedStress),
            Days = entries,
            Findings = [],
        };
    }

    /// <summary>A document without days.</summary>
    public static NextWeekDocument Empty(LocalDate startsOn, PlanInForce plan, ImmutableArray<string> notes) => new()
    {
        AsOf = startsOn,
        Rider = new RiderEntry
        {
            Label = plan.Rider.Label,
            Tier = plan.Tier,
            Experience = plan.Rider.Experience,
            TimeZone = plan.Rider.TimeZone?.Id ?? "",
            PlannedHours = plan.PlannedHours,
            PlannedHoursFromHistory = plan.PlannedHoursFromHistory,
        },
        StartsOn = startsOn,
        IsoWeek = IsoWeek.StartingOn(startsOn),
        Exception = null,
        Hours = 0,
        ExpectedStress = 0,
        Days = [],
        Findings = [],
        Notes = notes,
    };

    private static LayoutDayEntry Day(PlanInForce plan, LocalDate startsOn, LocalDate date)
    {
        if (Is(plan, date, ExceptionKind.Event))
            return new LayoutDayEntry { Date = date, Kind = DayKind.Rest, Exception = ExceptionKind.Event, Sentence = "The event." };
        if (Is(plan, date, ExceptionKind.Away))
            return new LayoutDayEntry { Date = date, Kind = DayKind.Rest, Exception = ExceptionKind.Away, Sentence = "Away." };
        var justAfter = Is(plan, date.PlusDays(-1), ExceptionKind.Event) || Is(plan, date.PlusDays(-2), ExceptionKind.Event);
        var everySecond = Period.DaysBetween(startsOn, date) % 2 == 1;
        var days = plan.Rider.Plan.Days;
        if (justAfter || !everySecond || !(days.IsDefaultOrEmpty || days.Contains(date.DayOfWeek)))
            return new LayoutDayEntry { Date = date, Kind = DayKind.Rest, Sentence = "Rest." };
        var easy = new PlannedDay(DayKind.Recovery, EasyMinutes);
        return new LayoutDayEntry { Date = date, Kind = easy.Kind, Minutes = EasyMinutes, ExpectedStress = PlannedRides.StressOf(easy), Sentence = "Very easy, or rest." };
    }

    private static bool Is(PlanInForce plan, LocalDate date, ExceptionKind kind) =>
        !plan.Rider.Exceptions.IsDefaultOrEmpty && plan.Rider.Exceptions.Any(e => e.Kind == kind && e.From <= date && date <= e.To);
}
