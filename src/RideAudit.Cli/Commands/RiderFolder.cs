using System.Text;
using NodaTime;
using RideAudit.Cli.Terminal;
using RideAudit.Ingest;
using RideAudit.Plan;
using RideAudit.Review;
using RideAudit.Rules;

namespace RideAudit.Cli.Commands;

/// <summary>A folder of one rider's ride files, or a single file of rides, and the rider file that goes with it.</summary>
internal sealed class RiderFolder
{
    private readonly Shell _shell;
    private readonly string _typed;

    private RiderFolder(Shell shell, string typed, string? riderTyped)
    {
        (_shell, _typed) = (shell, typed);
        Path = Existing(shell, typed);
        var own = System.IO.Path.Combine(Home, FolderFiles.Rider);
        if (riderTyped is not null)
            (RiderFile, Rider) = ReadTyped(shell, riderTyped);
        else if (File.Exists(own))
            (RiderFile, Rider) = (own, ReadRider(own, FolderFiles.Rider));
    }

    /// <summary>The full path.</summary>
    public string Path { get; }

    /// <summary>The rider; defaults without a rider file.</summary>
    public Rider Rider { get; } = new();

    /// <summary>The rider file's full path; null without one.</summary>
    public string? RiderFile { get; }

    /// <summary>The folder that the rider file and the note are looked for in.</summary>
    private string Home => File.Exists(Path) ? System.IO.Path.GetDirectoryName(Path)! : Path;

    /// <summary>Finds the folder and reads the rider file that was named, or the folder's own, or takes the defaults.</summary>
    /// <param name="shell">For relative paths.</param>
    /// <param name="typed">The folder or file as typed.</param>
    /// <param name="rider">The rider file as typed; null: the folder's own.</param>
    /// <exception cref="UserError">Something is missing, unreadable or broken.</exception>
    public static RiderFolder Open(Shell shell, string typed, string? rider = null) => new(shell, typed, rider);

    /// <summary>The rider of a rider file alone; a folder stands for the rider file in it.</summary>
    /// <exception cref="UserError">The file is missing, unreadable or broken.</exception>
    public static Rider RiderOf(Shell shell, string typed) => ReadTyped(shell, typed).Rider;

    /// <summary>The full path of a folder, or of a file that stands for one.</summary>
    /// <exception cref="UserError">There is no such thing.</exception>
    public static string Existing(Shell shell, string typed)
    {
        var path = System.IO.Path.TrimEndingDirectorySeparator(shell.FullPath(typed));
        return System.IO.Path.Exists(path) ? path : throw new UserError($"There is no folder {typed}. Give the folder that holds the ride files.");
    }

    /// <summary>The full path of a folder that is one.</summary>
    /// <exception cref="UserError">There is no such folder.</exception>
    public static string ExistingFolder(Shell shell, string typed) => Existing(shell, typed) is var path && Directory.Exists(path)
        ? path
        : throw new UserError($"{typed} is a file: give the folder that holds the ride files.");

    /// <summary>What to review, and from when.</summary>
    /// <param name="asOf">The date looked back from; null: today.</param>
    /// <param name="week">Any day of the week asked for; null: the last finished one.</param>
    /// <exception cref="UserError">The week has not begun.</exception>
    public ReviewRequest Request(LocalDate? asOf, LocalDate? week = null)
    {
        var request = new ReviewRequest { Today = _shell.Today(Rider.TimeZone ?? _shell.Zone), AsOf = asOf, WeekOf = week };
        return WeekAsked.Refusal(request, Rider) is { } refusal ? throw new UserError($"--week {refusal}") : request;
    }

    /// <summary>Reads the rides, with progress on a terminal.</summary>
    /// <param name="quiet">No progress.</param>
    /// <exception cref="OperationCanceledException">Ctrl-C.</exception>
    public FolderContent Read(bool quiet = false)
    {
        using var progress = _shell.ShowsProgress && !quiet ? new ReadProgress(_shell) : null;
        var content = FolderReader.Read(Path, Rider, _shell.Zone, progress, _shell.Cancel);
        return RiderFile is null ? content with { Notices = [FolderFiles.NoRiderFile, .. content.Notices] } : content;
    }

    /// <summary>The error for a folder without a usable ride.</summary>
    public UserError NoRide(FolderContent content) => new(NoRides.Sentence(_typed, content), ExitCode.NoRide);

    /// <summary>The coach's note where it was given as text or as a file; without text, the folder's own of the week is taken.</summary>
    /// <param name="typed">Text or file; null when not given.</param>
    /// <returns>The text, and the file that must not be written over; each null without one.</returns>
    /// <exception cref="UserError">A file was named that is not there, or it cannot be read.</exception>
    public (string? Text, string? File) Note(string? typed)
    {
        if (typed is null)
            return (null, System.IO.Path.Combine(Home, FolderFiles.Note) is var own && File.Exists(own) ? own : null);
        var path = LooksLikePath(typed) ? _shell.FullPath(typed) : null;
        if (path is not null && File.Exists(path))
            return (ReadNote(path), path);
        if (IsNamedAsFile(typed))
            throw new UserError($"There is no note {typed}. Give a file that is there, or the note itself as text.");
        return (string.IsNullOrWhiteSpace(typed) ? null : typed, null);
    }

    private static string? ReadNote(string path)
    {
        try
        {
            return FolderFiles.ReadNote(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new UserError($"The note {path} cannot be read: {e.Message}");
        }
    }

    // A sentence may end in .txt or hold a slash, but hardly without a space.
    private static bool IsNamedAsFile(string typed) => LooksLikePath(typed)
        && (typed.EndsWith(".md", StringComparison.OrdinalIgnoreCase)
            || typed.EndsWith(".txt", StringComparison.OrdinalIgnoreCase)
            || (!typed.Contains(' ') && typed.IndexOfAny(['/', System.IO.Path.DirectorySeparatorChar]) >= 0));

    private static bool LooksLikePath(string typed) =>
        typed.Length is > 0 and < 1024 && !typed.Contains('\n') && typed.IndexOfAny(System.IO.Path.GetInvalidPathChars()) < 0;

    private static (string Path, Rider Rider) ReadTyped(Shell shell, string typed)
    {
        var path = shell.FullPath(typed);
        if (!Directory.Exists(path))
            return (path, ReadRider(path, typed));
        path = System.IO.Path.Combine(path, FolderFiles.Rider);
        return (path, ReadRider(path, System.IO.Path.Combine(typed, FolderFiles.Rider)));
    }

    private static Rider ReadRider(string path, string shown)
    {
        try
        {
            var result = RiderFileReader.Read(FolderFiles.ReadRider(path), shown, RuleBook.Standard.Ids);
            return result.Rider ?? throw new UserError(string.Join('\n', result.Mistakes.Select(m => Mistake(shown, m))));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new UserError(File.Exists(path)
                ? $"The rider file {shown} cannot be read: {e.Message}"
                : $"There is no rider file {shown}. 'rideaudit new-rider {shown}' writes one.");
        }
        catch (DecoderFallbackException)
        {
            throw new UserError($"The rider file {shown} is not UTF-8: a letter such as é was saved in another encoding. Save it as UTF-8 in your editor.");
        }
    }

    private static string Mistake(string shown, RiderFileMistake mistake) =>
        FormattableString.Invariant($"{shown}:{mistake.Line}:{mistake.Column}: found {mistake.Found}; allowed: {mistake.Allowed}.")
        + (mistake.Nearest is { } nearest ? $" Did you mean '{nearest}'?" : "");
}
