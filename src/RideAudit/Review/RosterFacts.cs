using NodaTime;
using RideAudit.Document;
using RideAudit.Document.Notes;
using RideAudit.Formatting;
using RideAudit.Rules;

namespace RideAudit.Review;

/// <summary>What is known of a rider of a roster besides the reason for the place, a line each: the rules by name, the figures, what is planned, the coach's note.</summary>
internal static class RosterFacts
{
    private const int NoteLength = 240;

    /// <summary>The lines.</summary>
    /// <param name="rider">The rider.</param>
    /// <param name="asOf">The date that an event is counted from.</param>
    public static IEnumerable<string> Of(RosterEntry rider, LocalDate asOf)
    {
        if (Named(rider, Verdict.Broken) is { Length: > 0 } broken)
            yield return $"Broken: {broken}.";
        if (Named(rider, Verdict.Watch) is { Length: > 0 } watch)
            yield return $"To watch: {watch}.";
        if (rider.Hours is not null)
            yield return string.Join(" · ", Figures(rider));
        if (rider.NextEvent is { } next)
            yield return $"Next event: {Event(next, asOf)}.";
        if (rider.FilesNotUsed is > 0 and var files)
            yield return $"{Shown.Tally(files, "file")} not used.";
        if (!string.IsNullOrWhiteSpace(rider.Note))
            yield return "Note: " + Beginning(string.Join(' ', NoteReader.Read(rider.Note).Select(p => string.Concat(p.Spans.Select(s => s.Text)))));
    }

    // The whole note stands on the rider's own page.
    private static string Beginning(string note)
    {
        var words = note.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        var text = string.Join(' ', words);
        if (text.Length <= NoteLength)
            return text;
        var cut = text.LastIndexOf(' ', NoteLength);
        return text[..(cut > 0 ? cut : NoteLength)] + "…";
    }

    private static string Named(RosterEntry rider, Verdict verdict) =>
        string.Join(", ", rider.Verdicts.Where(one => one.Verdict == verdict).Select(one => char.ToLowerInvariant(one.Name[0]) + one.Name[1..]));

    private static IEnumerable<string> Figures(RosterEntry rider)
    {
        yield return rider.PlannedHours is { } planned
            ? $"{Shown.Number(rider.Hours, 1)}{Shown.Joint}of{Shown.Joint}{Shown.Hours(planned)}"
            : Shown.Hours(rider.Hours);
        yield return $"stress{Shown.Joint}{Shown.Number(rider.Stress)}";
        if (rider.LowShare is { } low)
            yield return $"{Shown.Share(low)}{Shown.Joint}low";
        if (rider.RampPerWeek is { } ramp)
            yield return $"ramp{Shown.Joint}{Shown.Signed(ramp)}";
        if (rider is { PlannedSessions: > 0 and var sessions, PlannedSessionsDone: { } done })
            yield return $"{Shown.Number(done)} of {Shown.Tally(sessions, "planned session")} ridden";
        if (rider.Exception is { } exception)
            yield return $"{Words.Of(exception)} week";
    }

    private static string Event(RosterEntry.Event next, LocalDate asOf)
    {
        var days = Period.DaysBetween(asOf, next.From);
        var when = days switch { < 0 => "under way", 0 => "today", 1 => "tomorrow", _ => $"in {Shown.Tally(days, "day")}" };
        var name = next.Name is { } known ? known + ", " : "";
        var dates = next.From == next.To ? Shown.Date(next.From) : $"{Shown.Date(next.From)} to {Shown.Date(next.To)}";
        return $"{name}{dates}, {when}";
    }
}
