using System.Collections.Immutable;
using RideAudit.Document;
using RideAudit.Held;
using RideAudit.Plan.Table;
using RideAudit.Rules;
using RideAudit.Sessions;
using RideAudit.Weeks;

namespace RideAudit.Review;

/// <summary>Puts what was planned beside what was ridden.</summary>
internal static class PlannedEntries
{
    /// <summary>The week’s entry with what the plan tables say of it; as it is where they say nothing.</summary>
    /// <param name="entry">The week without its plan.</param>
    /// <param name="book">The workbook, opened at that week.</param>
    /// <param name="rules">The rules, to say whose a broken one is; null to say nothing of them.</param>
    public static WeekEntry Add(WeekEntry entry, Workbook book, RuleBook? rules)
    {
        var sessions = book.Calendar.Table.Week(entry.StartsOn);
        if (sessions.IsEmpty)
            return entry;
        var names = new SessionBook(book.Plan.Rider, book.Plan.Limits);
        var rows = sessions.Select(s => SessionOf(s, names)).ToImmutableArray();
        var judged = rules is null ? null : new JudgedByPlan(new WeekUnderReview(book.Week, new Past(book.Before), book.Plan), rules, sessions, names);
        return entry with
        {
            Planned = new PlannedWeekEntry
            {
                Hours = book.Calendar.HoursAsked(entry.StartsOn, null, 1) ?? 0,
                Stress = rows.Sum(r => r.Stress ?? 0),
                Sessions = rows,
                Breaks = judged is null ? [] : [.. judged.Breaks.Select(b => b.Rule)],
                Sentence = judged is null ? null : PlanWords.OfPlan(judged.Breaks),
            },
            PlannedAndRidden = [.. Lines(entry, sessions, book).Select(l => LineOf(l, judged?.Against(l, names), names))],
            Days = [.. entry.Days.Select(d => d with { Planned = [.. rows.Where(r => r.Date == d.Date)] })],
        };
    }

    /// <summary>A session still to come is neither missed nor, on a rest day, kept.</summary>
    private static ImmutableArray<HeldLine> Lines(WeekEntry entry, ImmutableArray<PlannedSession> sessions, Workbook book)
    {
        var week = book.Weeks.First(w => w.StartsOn == entry.StartsOn);
        return [.. HeldWeek.Of(sessions, [.. week.Rides], book.Calendar.KindOn).Where(l => !l.Rides.IsEmpty || l.Date < book.AsOf)];
    }

    private static PlannedSessionEntry SessionOf(PlannedSession session, SessionBook names) => new()
    {
        Date = session.Date,
        Kind = session.Kind,
        Minutes = session.Minutes,
        Session = session.Session,
        Note = session.Note,
        Stress = names.Stress(session),
        Blocks = (session.Blocks ?? (session.Session is { } name ? names.Find(name) : null))?.ToString(),
    };

    private static HeldEntry LineOf(HeldLine line, ImmutableArray<JudgedByPlan.Loss>? against, SessionBook names)
    {
        var hardest = line.Rides.MaxBy(r => (r.Kind, r.Stress));
        var repeats = hardest is not null && line.Planned is { IsRest: false } row && names.Fitted(row) is { } fitted ? HeldRepeats.Of(fitted, hardest) : [];
        return new()
        {
            Planned = line.Planned is { } p ? new HeldEntry.PlannedPart(p.Date, p.Kind, p.Minutes, p.Session) : null,
            Rides = [.. line.Rides.Select(r => r.File)],
            RiddenOn = line.RiddenOn,
            Outcomes = line.Outcomes,
            Against = against is { } rules ? [.. rules.Select(r => r.Rule)] : [],
            Repeats = [.. repeats.Select(r => new RepeatEntry(r.Seconds, r.LowW, r.HighW, r.RiddenW, r.RiddenW is null ? null : hardest!.File, r.StartSecond))],
            RepeatsSentence = RepeatWords.Of(repeats),
            Sentence = against is { } found && PlanWords.OfChange(line, found) is { } did ? $"{line.Sentence} {did}" : line.Sentence,
        };
    }
}
