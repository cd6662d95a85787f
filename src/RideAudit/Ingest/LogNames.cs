using NodaTime.Text;
using RideAudit.Rides;

namespace RideAudit.Ingest;

/// <summary>Checks what ride logs say of recorded rides against the recordings.</summary>
internal static class LogNames
{
    /// <summary>The rows, those that name a copy or a second recording naming the one that is kept instead.</summary>
    /// <param name="rows">Rows of all logs, in the order of the logs' names.</param>
    /// <param name="kept">Recordings that count.</param>
    /// <param name="copies">Names of files left out, each with the file kept for it.</param>
    /// <param name="notices">Told of rows whose ride is not there.</param>
    public static IEnumerable<LoggedRide> Resolve(
        IEnumerable<LoggedRide> rows, IReadOnlyList<Recording> kept, IReadOnlyList<(string LeftOut, string Kept)> copies, List<FileNotice> notices)
    {
        var days = kept.Select(r => r.StartsAt.Date).ToHashSet();
        foreach (var row in rows)
        {
            var file = row.RideFile is { } named ? KeptFor(named, kept, copies) : null;
            if (row.RideFile is not null && file is null)
                notices.Add(Missing(row, $"The ride log names {row.RideFile}, which is not among the rides: write the name as the review shows it."));
            if (row is { RideFile: null, Minutes: null, Date: { } date } && !days.Contains(date))
                notices.Add(Missing(row, $"The ride log says what the ride of {LocalDatePattern.Iso.Format(date)} was, and there is none: write its minutes, or another date."));
            yield return row with { RideFile = file ?? row.RideFile };
        }
    }

    /// <summary>A copy may be one of a recording that was left out for another in turn.</summary>
    private static string? KeptFor(string named, IReadOnlyList<Recording> kept, IReadOnlyList<(string LeftOut, string Kept)> copies)
    {
        var name = named;
        for (var hops = 0; name is not null && hops <= 2; hops++)
        {
            var wanted = name;
            if (kept.Any(r => RecordingNames.Match(r.File, wanted)))
                return wanted;
            name = copies.Where(c => RecordingNames.Match(c.LeftOut, wanted)).OrderByDescending(c => c.LeftOut == wanted).FirstOrDefault().Kept;
        }
        return null;
    }

    private static FileNotice Missing(LoggedRide row, string sentence) => new(row.File, "no such ride", null, sentence, false);
}
