using System.Collections.Immutable;
using NodaTime;
using RideAudit.Document;
using RideAudit.Plan;

namespace RideAudit.Review;

/// <summary>What a roster shows of a rider besides the reviewed week: the weeks before it day by day, and the next event.</summary>
internal static class LastWeeks
{
    private const int Most = 4;

    /// <summary>Up to four weeks, the reviewed one last.</summary>
    /// <param name="book">The weeks up to the reviewed one.</param>
    public static ImmutableArray<SmallWeek> Of(Workbook book) =>
        [.. book.Weeks.Skip(Math.Max(0, book.Weeks.Length - Most)).Select(week => new SmallWeek(
            week.StartsOn,
            [.. week.Days.Select(day => new SmallWeek.Day
            {
                Date = day.Date,
                Kind = day.Date < book.AsOf || !day.Rides.IsEmpty ? day.Kind : null,
                Hours = day.RideSeconds / 3600,
                Stress = day.Rides.IsEmpty || day.Rides.Any(r => r.Stress is not null) ? day.Stress : null,
                Exception = book.Calendar.KindOn(day.Date),
            })]))];

    /// <summary>The next event from the as-of date on, one under way included; null when none is known.</summary>
    /// <param name="calendar">The rider file and the plan tables.</param>
    /// <param name="asOf">The date looked back from.</param>
    public static RosterEntry.Event? NextEvent(PlanCalendar calendar, LocalDate asOf)
    {
        var next = calendar.RiderWithEvents.Exceptions
            .Where(e => e.Kind == ExceptionKind.Event && e.To >= asOf)
            .OrderBy(e => e.From).ThenByDescending(e => e.To)
            .FirstOrDefault();
        if (next is null)
            return null;
        var named = calendar.Table.Sessions.FirstOrDefault(s => s.Kind == PlannedKind.Event && s.Date >= next.From && s.Date <= next.To);
        return new RosterEntry.Event(next.From, next.To, named?.Session);
    }
}
