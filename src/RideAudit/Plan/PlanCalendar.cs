using System.Collections.Immutable;
using NodaTime;
using RideAudit.Plan.Table;

namespace RideAudit.Plan;

/// <summary>What each day and each week of a rider is excepted for and planned as: the rider file and the plan tables together.</summary>
internal sealed class PlanCalendar
{
    private readonly Rider _rider;
    private readonly ImmutableArray<PlanException> _exceptions;
    private readonly Dictionary<LocalDate, ExceptionKind> _kinds = [];

    /// <summary>Lays rider file and plan tables over each other.</summary>
    /// <param name="rider">The rider file.</param>
    /// <param name="table">The plan tables; their event rows, and rows that say so, are exceptions.</param>
    public PlanCalendar(Rider rider, PlanTable table)
    {
        _rider = rider;
        Table = table;
        _exceptions =
        [
            .. rider.Exceptions.IsDefault ? [] : rider.Exceptions,
            .. table.Exceptions(),
        ];
        // On a day with several the later of this order counts: who is ill has no event.
        foreach (var kind in (ExceptionKind[])[ExceptionKind.Lighter, ExceptionKind.Away, ExceptionKind.Event, ExceptionKind.Ill])
        {
            foreach (var exception in _exceptions.Where(e => e.Kind == kind))
            {
                for (var date = exception.From; date <= exception.To; date = date.PlusDays(1))
                    _kinds[date] = kind;
            }
        }
    }

    /// <summary>What is planned.</summary>
    public PlanTable Table { get; }

    /// <summary>The rider with every event of the plan tables as an exception: what the rules judge by.</summary>
    public Rider RiderWithEvents => _rider with { Exceptions = _exceptions };

    /// <summary>What a day is excepted for; null for an ordinary day. Of several: ill, event, away, lighter.</summary>
    /// <param name="date">The day.</param>
    public ExceptionKind? KindOn(LocalDate date) => _kinds.TryGetValue(date, out var kind) ? kind : null;

    /// <summary>A day out: ill or away.</summary>
    /// <param name="date">The day.</param>
    public bool IsOut(LocalDate date) => KindOn(date) is ExceptionKind.Ill or ExceptionKind.Away;

    /// <summary>Whether advice may ask for riding, or for more of it, on a day: not on a day that is out or an event, nor on the day before one.</summary>
    /// <param name="date">The day.</param>
    public bool MayAskForMore(LocalDate date) => !(Closed(date) || Closed(date.PlusDays(1)));

    /// <summary>Days out of a week, 0 to 7.</summary>
    /// <param name="startsOn">The week's first day.</param>
    public int DaysOut(LocalDate startsOn) => Days(startsOn).Count(IsOut);

    /// <summary>Event days of a week, in order.</summary>
    /// <param name="startsOn">The week's first day.</param>
    public ImmutableArray<LocalDate> EventDays(LocalDate startsOn) => [.. Days(startsOn).Where(d => KindOn(d) == ExceptionKind.Event)];

    /// <summary>What a week is excepted for.</summary>
    /// <param name="startsOn">The week's first day.</param>
    public WeekExceptions Week(LocalDate startsOn) => WeekExceptions.For(_exceptions, startsOn);

    /// <summary>A week with at least one row in a plan table.</summary>
    /// <param name="startsOn">The week's first day.</param>
    public bool IsPlanned(LocalDate startsOn) => Days(startsOn).Any(d => Table.On(d).Any());

    /// <summary>Planned hours of an ordinary week at that date, h: the latest dated hours on or before the week's first day, else <c>weekly_hours</c>; null without either.</summary>
    /// <param name="startsOn">The week's first day.</param>
    public double? OrdinaryHours(LocalDate startsOn) =>
        (_rider.Hours.IsDefaultOrEmpty ? null : _rider.Hours.LastOrDefault(h => h.From <= startsOn))?.Weekly ?? _rider.Plan.WeeklyHours;

    /// <summary>The share of an ordinary week's hours that a week asks for, 0 to 1: a seventh for each day, none for a day out, less for a lighter day.</summary>
    /// <param name="startsOn">The week's first day.</param>
    /// <param name="lighterFactor">What a lighter day asks for, 0 to 1.</param>
    public double ShareAsked(LocalDate startsOn, double lighterFactor)
    {
        var lighter = Days(startsOn).Count(d => KindOn(d) == ExceptionKind.Lighter);
        return (7 - DaysOut(startsOn) - lighter * (1 - lighterFactor)) / 7;
    }

    /// <summary>Hours asked of a week, h: the minutes of its plan table on days that are not out, else the ordinary hours times the share asked.</summary>
    /// <remarks>A planned week that is lighter is written lighter: its minutes count as they are.</remarks>
    /// <param name="startsOn">The week's first day.</param>
    /// <param name="ordinaryHours">Hours of an ordinary week, h; null when unknown.</param>
    /// <param name="lighterFactor">What a lighter day asks for, 0 to 1.</param>
    /// <returns>Null when nothing says.</returns>
    public double? HoursAsked(LocalDate startsOn, double? ordinaryHours, double lighterFactor) => IsPlanned(startsOn)
        ? Days(startsOn).Where(d => !IsOut(d)).Sum(d => Table.On(d).Sum(s => s.Minutes ?? 0)) / 60.0
        : ordinaryHours * ShareAsked(startsOn, lighterFactor);

    /// <summary>The last stretch of days out that ended before a day; null when there is none within so many days.</summary>
    /// <param name="date">The day.</param>
    /// <param name="within">Days before it that are looked at, 1 or more.</param>
    public Absence? AbsenceBefore(LocalDate date, int within)
    {
        for (var back = 1; back <= within; back++)
        {
            var to = date.PlusDays(-back);
            if (!IsOut(to))
                continue;
            var from = to;
            var ill = false;
            for (; IsOut(from); from = from.PlusDays(-1))
                ill |= KindOn(from) == ExceptionKind.Ill;
            return new Absence(from.PlusDays(1), to, ill);
        }
        return null;
    }

    private static IEnumerable<LocalDate> Days(LocalDate startsOn) => Enumerable.Range(0, 7).Select(day => startsOn.PlusDays(day));

    private bool Closed(LocalDate date) => IsOut(date) || KindOn(date) == ExceptionKind.Event;
}
