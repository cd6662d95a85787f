using System.Collections.Immutable;
using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;

namespace RideAudit.Weeks;

/// <summary>Lays rides out in weeks, every week from the first ride's on, none left out.</summary>
internal static class WeekTable
{
    /// <summary>The first day of the week that holds a date.</summary>
    /// <param name="firstDay">The week's first day.</param>
    public static LocalDate StartOf(LocalDate date, IsoDayOfWeek firstDay) =>
        date.PlusDays(-(((int)date.DayOfWeek - (int)firstDay + 7) % 7));

    /// <summary>Builds the weeks.</summary>
    /// <param name="rides">All rides before the as-of date, in any order.</param>
    /// <param name="others">Activities that are not cycling.</param>
    /// <param name="firstDay">The week's first day.</param>
    /// <param name="lastWeek">First day of the last week to build.</param>
    /// <param name="asOf">Days from this date on do not count.</param>
    /// <param name="limits">The limits in force.</param>
    /// <param name="exceptionOf">What the rider file excepts a week for, by its first day.</param>
    /// <returns>Oldest first; only the last week when there is no ride before it.</returns>
    public static ImmutableArray<WeekFacts> Build(
        IReadOnlyCollection<RideFigures> rides, IReadOnlyCollection<OtherActivity> others, IsoDayOfWeek firstDay,
        LocalDate lastWeek, LocalDate asOf, Limits limits, Func<LocalDate, ExceptionKind?> exceptionOf)
    {
        var ridesByDate = rides.ToLookup(r => r.Date);
        var othersByDate = others.ToLookup(o => o.Date);
        LocalDate? first = rides.Count > 0 ? rides.Min(r => r.Date) : null;
        var weeks = ImmutableArray.CreateBuilder<WeekFacts>();
        var load = new LoadState(0, 0);
        for (var start = StartOf(first is { } f && f < lastWeek ? f : lastWeek, firstDay); start <= lastWeek; start = start.PlusDays(7))
        {
            var days = ImmutableArray.CreateBuilder<DayFacts>(7);
            for (var date = start; days.Count < 7; date = date.PlusDays(1))
                days.Add(DayFacts.Build(date, ridesByDate[date], othersByDate[date].Sum(o => o.DurationSeconds), limits));
            var counting = Math.Clamp(Period.DaysBetween(start, asOf), 0, 7);
            var week = WeekFacts.Build(days.MoveToImmutable(), load, first, exceptionOf(start), counting);
            weeks.Add(week);
            load = week.LoadAfter;
        }
        return weeks.ToImmutable();
    }
}
