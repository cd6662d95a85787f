using System.Collections.Immutable;
using NodaTime;

namespace RideAudit.Plan.Table;

/// <summary>Everything that is planned: the sessions of all plan tables of a rider together.</summary>
public sealed class PlanTable
{
    private readonly ILookup<LocalDate, PlannedSession> _byDate;

    private PlanTable(ImmutableArray<PlannedSession> sessions, ImmutableArray<PlanMistake> mistakes)
    {
        Sessions = sessions;
        Mistakes = mistakes;
        _byDate = sessions.ToLookup(s => s.Date);
    }

    /// <summary>No plan.</summary>
    public static PlanTable Empty { get; } = new([], []);

    /// <summary>The sessions by date; those of one day in the order of the tables.</summary>
    public ImmutableArray<PlannedSession> Sessions { get; }

    /// <summary>Every row that cannot be used, in the order of the tables.</summary>
    public ImmutableArray<PlanMistake> Mistakes { get; }

    /// <summary>Puts tables together.</summary>
    /// <remarks>
    /// Two rows of one date and name are one session written twice: the first counts, the second is a mistake.
    /// Rows without a name are each a session of their own within one table (two commutes); in two tables they are the same when their kind is.
    /// Rest and riding on one day are a mistake, unless one of them is the program's: it gives way to the row made by hand.
    /// </remarks>
    /// <param name="sheets">The tables, in the order in which their rows count.</param>
    public static PlanTable Merge(IEnumerable<PlanSheet> sheets)
    {
        var kept = new List<(PlannedSession Session, PlanSheet Sheet)>();
        var mistakes = ImmutableArray.CreateBuilder<PlanMistake>();
        foreach (var sheet in sheets)
        {
            mistakes.AddRange(sheet.Mistakes);
            foreach (var row in sheet.Rows)
            {
                if (row.Session is not { } session)
                    continue;
                if (kept.Exists(k => Yields(session, k.Session)))
                    continue;
                kept.RemoveAll(k => Yields(k.Session, session));
                if (kept.Find(k => k.Session.Date == session.Date && Clash(k, session, sheet) is not null) is { Session: not null } there)
                    mistakes.Add(sheet.MistakeAt(row, PlanColumn.Date, Clash(there, session, sheet)!, $"one row a session (the first is in {there.Sheet.Name})"));
                else
                    kept.Add((session, sheet));
            }
        }
        return new PlanTable([.. kept.Select(k => k.Session).OrderBy(s => s.Date)], mistakes.ToImmutable());
    }

    /// <summary>The sessions of a day; empty without any.</summary>
    /// <param name="date">The day.</param>
    public IEnumerable<PlannedSession> On(LocalDate date) => _byDate[date];

    /// <summary>The sessions of a week, by day.</summary>
    /// <param name="startsOn">The week's first day.</param>
    public ImmutableArray<PlannedSession> Week(LocalDate startsOn) =>
        [.. Enumerable.Range(0, 7).SelectMany(day => _byDate[startsOn.PlusDays(day)])];

    /// <summary>What the rows except days for, beside the rider file: events, and days that a row says are lighter, away or ill.</summary>
    /// <param name="anewFrom">From this day on rows made by the program do not count, because they are laid out anew; null: all count.</param>
    internal IEnumerable<PlanException> Exceptions(LocalDate? anewFrom = null) => Sessions
        .Where(s => !(s.MadeHere && s.Date >= anewFrom))
        .Select(s => (s.Date, Kind: s.Kind == PlannedKind.Event ? ExceptionKind.Event : s.Exception))
        .Where(s => s.Kind is not null)
        .Distinct()
        .Select(s => new PlanException(s.Date, s.Date, s.Kind!.Value));

    /// <summary>Where one row rests and the other rides, the row of the program gives way to the one made by hand.</summary>
    private static bool Yields(PlannedSession row, PlannedSession other) =>
        row.MadeHere && !other.MadeHere && row.Date == other.Date && row.IsRest != other.IsRest;

    private static string? Clash((PlannedSession Session, PlanSheet Sheet) there, PlannedSession session, PlanSheet sheet)
    {
        var date = session.Date.ToString("uuuu-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
        if (there.Session.IsRest != session.IsRest)
            return $"rest and riding on {date}";
        if (session.Session is { } name)
            return name.Equals(there.Session.Session, StringComparison.OrdinalIgnoreCase) ? $"\"{name}\" on {date} a second time" : null;
        var same = there.Session.Session is null && there.Session.Kind == session.Kind && (there.Sheet != sheet || session.IsRest);
        return same ? $"{PlannedKinds.WordOf(session.Kind)} on {date} a second time" : null;
    }
}
