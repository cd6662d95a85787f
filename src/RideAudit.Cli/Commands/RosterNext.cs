using System.Collections.Concurrent;
using System.Text;
using RideAudit.Cli.Output;
using RideAudit.Cli.Terminal;
using RideAudit.Document;
using RideAudit.Document.Layouts;
using RideAudit.Formatting;
using RideAudit.Ingest;
using RideAudit.Next;
using RideAudit.Review;

namespace RideAudit.Cli.Commands;

/// <summary>The week to come of every rider of a roster, and its way into their plan tables.</summary>
/// <param name="shell">The world.</param>
/// <param name="writesPlans">Each rider's plan table is updated.</param>
internal sealed class RosterNext(Shell shell, bool writesPlans)
{
    private const string CsvFile = "next.csv";

    private readonly ConcurrentDictionary<string, (NextDocument Document, string? Said)> _made = new(StringComparer.Ordinal);

    /// <summary>Lays one rider's week out.</summary>
    /// <param name="folder">The rider's folder.</param>
    /// <param name="name">Its name under the roster's.</param>
    /// <param name="content">What it holds.</param>
    /// <param name="request">From when.</param>
    /// <param name="output">The folder that the roster is written into.</param>
    public void Make(RiderFolder folder, string name, FolderContent content, ReviewRequest request, string output)
    {
        var document = NextBuilder.Build(content, folder.Rider, request, 1, content.Plan);
        if (document.Weeks.FirstOrDefault() is { } week)
        {
            var calendar = CalendarFile.Write(document);
            OutputFile.In(output, $"{name}-next-{Shown.Iso(week.StartsOn)}.ics").Write(s => s.Write(Encoding.UTF8.GetBytes(calendar)), shell.Cancel);
        }
        // A table that cannot be written is said and takes nothing else away.
        string? said = null;
        try
        {
            if (writesPlans && !document.Weeks.IsEmpty)
                said = PlanTarget.In(folder.Path, name).Write(document, content.Plan, shell.Cancel);
        }
        catch (UserError error)
        {
            said = error.Message;
        }
        _made[name] = (document, said);
    }

    /// <summary>Writes the table of all riders’ sessions beside the overview.</summary>
    /// <param name="roster">The riders, in the order of the overview.</param>
    /// <param name="output">The folder that the roster is written into.</param>
    public void Write(RosterDocument roster, string output) => OutputFile.In(output, CsvFile, Path.Combine(output, CsvFile)).Write(
        s =>
        {
            using var writer = new StreamWriter(s, new UTF8Encoding(false), leaveOpen: true);
            CsvTable.Write(writer, CsvFields.Next, roster.Riders.SelectMany(Rows));
        },
        shell.Cancel);

    /// <summary>What a rider’s week to come is, and what is to be known of it, a line each; empty without one.</summary>
    /// <param name="folder">The rider's folder under the roster's.</param>
    public IEnumerable<string> Lines(string folder)
    {
        if (!_made.TryGetValue(folder, out var made))
            yield break;
        foreach (var week in made.Document.Weeks)
        {
            var sessions = week.Days.SelectMany(d => d.Sessions.Select(s => $"{Shown.ShortDay(d.Date)} {Words.Of(s.Kind)}{(s.Minutes > 0 ? $" {Shown.Length(s.Minutes * 60)}" : "")}"));
            yield return $"Next, {Shown.Hours(week.Hours)}: {string.Join(", ", sessions)}.";
            if (week.GaveWay is { } gave)
                yield return gave.Sentence;
        }
        if (made.Document.Weeks.IsEmpty)
            yield return string.Join(' ', made.Document.Notes);
        if (made.Said is { } said)
            yield return said;
    }

    private IEnumerable<RosterSession> Rows(RosterEntry rider) => _made.TryGetValue(rider.Folder, out var made)
        ? made.Document.Weeks.SelectMany(w => w.Days).SelectMany(d => d.Sessions.Select(s => new RosterSession(rider.Folder, rider.Label, d.Date, s)))
        : [];
}
