using System.Collections.Immutable;
using NodaTime;
using RideAudit.Document.Layouts;
using RideAudit.Plan;
using RideAudit.Plan.Table;

namespace RideAudit.Next;

/// <summary>Weeks laid out as rows of a plan table.</summary>
public static class PlanRows
{
    /// <summary>The rows of days that were laid out: a row a session, and one for a day of rest.</summary>
    /// <remarks>Days already ridden, and what stands in a plan table by hand, are not the layout’s to write.</remarks>
    /// <param name="document">The weeks.</param>
    public static ImmutableArray<PlannedSession> Of(NextDocument document) =>
        [.. document.Weeks.SelectMany(w => w.Days.Where(d => d.Date >= w.From && d.RiddenMinutes == 0).SelectMany(Rows).Select(r => IsLighter(w) ? r with { Exception = ExceptionKind.Lighter } : r))];

    /// <summary>Lays the weeks out in a table. Rows made by hand stay, in this table and in every other, and so do their days.</summary>
    /// <param name="sheet">The table to write into.</param>
    /// <param name="document">The weeks.</param>
    /// <param name="all">All plan tables of the rider together.</param>
    /// <returns>The table, and the days of which nothing was written because a row made by hand stands on them.</returns>
    public static (PlanSheet Sheet, ImmutableArray<LocalDate> KeptDays) Update(PlanSheet sheet, NextDocument document, PlanTable all)
    {
        if (document.Weeks.IsEmpty)
            return (sheet, []);
        var rows = Of(document);
        var byHand = rows.Where(r => all.On(r.Date).Any(s => !s.MadeHere)).Select(r => r.Date).ToHashSet();
        var (updated, leftOut) = PlanTableWriter.Update(
            sheet, [.. rows.Where(r => !byHand.Contains(r.Date))], document.Weeks[0].From, document.Weeks[^1].StartsOn.PlusDays(6));
        return (updated, [.. byHand.Union(leftOut.Select(s => s.Date)).Order()]);
    }

    private static bool IsLighter(NextWeekEntry week) => week.ProposedLighter || week.Exception == ExceptionKind.Lighter;

    private static IEnumerable<PlannedSession> Rows(NextDayEntry day)
    {
        if (day.Sessions.IsEmpty && day.Exception is null or ExceptionKind.Lighter)
            return [new PlannedSession { Date = day.Date, Kind = PlannedKind.Rest }];
        return day.Sessions.Select(s => new PlannedSession
        {
            Date = day.Date,
            Kind = s.Kind,
            Minutes = s.Minutes > 0 ? s.Minutes : null,
            Session = s.Session,
            // A no-break space keeps a figure with its unit on a page; in a table it only looks like another letter.
            Note = s.Sentence.Replace('\u00A0', ' '),
            Stress = s.ExpectedStress,
            Blocks = s.Blocks,
        });
    }
}
