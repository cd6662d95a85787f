using RideAudit.Cli.Terminal;
using RideAudit.Document.Layouts;
using RideAudit.Formatting;
using RideAudit.Ingest;
using RideAudit.Plan;
using RideAudit.Sessions;

namespace RideAudit.Cli.Output;

/// <summary>A folder of FIT workout files, one a session, for a head unit to play.</summary>
internal sealed class WorkoutFolder
{
    // Disks take 255 bytes, and a letter may have four; date and ending are beside it.
    private const int LongestName = 50;

    private readonly string _path;
    private readonly string _shown;

    private WorkoutFolder(string path, string shown) => (_path, _shown) = (path, shown);

    /// <summary>Looks at a folder that a user named, and makes it where it is not there.</summary>
    /// <param name="shell">For relative paths.</param>
    /// <param name="typed">The path as typed.</param>
    /// <param name="read">The folder that is read, full path.</param>
    /// <exception cref="UserError">It cannot be written, or lies where it would be read as rides.</exception>
    public static WorkoutFolder Named(Shell shell, string typed, string read)
    {
        var path = Path.TrimEndingDirectorySeparator(shell.FullPath(typed));
        if (path == read || FolderFiles.IsUnder(read, path))
            throw new UserError($"{typed} lies in the folder that is read: workouts are no rides. Choose a folder outside it.");
        try
        {
            Directory.CreateDirectory(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new UserError($"The folder {typed} cannot be made: {WriteFault.Of(e)}");
        }
        return OutputFile.WhyNot(path) is { } problem ? throw new UserError($"The folder {typed} cannot be written: {problem}") : new WorkoutFolder(path, typed);
    }

    /// <summary>Writes a file for each session that says what to ride.</summary>
    /// <param name="document">The weeks.</param>
    /// <param name="rider">For thresholds: steps aim at what the rider has.</param>
    /// <param name="cancel">Looked at before each file is moved into place.</param>
    /// <returns>What was written, for a message.</returns>
    public string Write(NextDocument document, Rider rider, CancellationToken cancel)
    {
        var written = 0;
        foreach (var day in document.Weeks.SelectMany(w => w.Days))
        {
            foreach (var session in day.Sessions)
            {
                if (session.Blocks is not { } blocks || FittedSession.Fit(blocks, session.Minutes) is not { } fitted)
                    continue;
                // A head unit shows the name: of what it shows nothing moves or turns.
                var called = PlainText.Of(session.Session ?? Words.Of(session.Kind), ' ');
                var bytes = WorkoutFile.Write(fitted, called, day.Date, SessionMeasures.Of(rider, day.Date));
                var second = day.Sessions.IndexOf(session) is > 0 and var which ? $"-{Shown.Number(which + 1)}" : "";
                OutputFile.In(_path, $"{Shown.Iso(day.Date)}-{FileName(called)}{second}.fit", _shown).Write(s => s.Write(bytes), cancel);
                written++;
            }
        }
        return $"{_shown}{Path.DirectorySeparatorChar} ({Shown.Tally(written, "workout")})";
    }

    private static string FileName(string name) =>
        string.Join('-', new string([.. name.Select(c => char.IsLetterOrDigit(c) ? char.ToLowerInvariant(c) : ' ').Take(LongestName)]).Split(' ', StringSplitOptions.RemoveEmptyEntries));
}
