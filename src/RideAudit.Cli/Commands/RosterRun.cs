using System.Text;
using NodaTime;
using RideAudit.Cli.Output;
using RideAudit.Cli.Terminal;
using RideAudit.Document;
using RideAudit.Document.Json;
using RideAudit.Formatting;
using RideAudit.Ingest;
using RideAudit.Report;
using RideAudit.Review;

namespace RideAudit.Cli.Commands;

/// <summary>One pass over a folder of riders: a review of each, and the overview.</summary>
internal sealed class RosterRun(Shell shell)
{
    private const string JsonFile = "overview.json";
    private const int PageMeasure = 100;

    /// <summary>The date looked back from; null: today.</summary>
    public LocalDate? AsOf { get; init; }

    /// <summary>Any day of the week asked for; null: the last finished one.</summary>
    public LocalDate? Week { get; init; }

    /// <summary>The paper of the PDFs.</summary>
    public Paper Paper { get; init; }

    /// <summary>The folder written into, as typed; null: named by the date, in the current folder.</summary>
    public string? Out { get; init; }

    /// <summary>Everybody's next week is laid out as well.</summary>
    public bool Next { get; init; }

    /// <summary>It is written into each rider's plan table.</summary>
    public bool WritePlans { get; init; }

    /// <summary>Nothing is printed.</summary>
    public bool Quiet { get; init; }

    /// <summary>What could not be used is named even so.</summary>
    public bool Strict { get; init; }

    /// <summary>A folder of riders: no rider file of its own, and one in a sub-folder.</summary>
    /// <param name="folder">The full path.</param>
    public static bool IsOfRiders(string folder) =>
        !File.Exists(Path.Combine(folder, FolderFiles.Rider)) && Directory.EnumerateDirectories(folder).Any(d => File.Exists(Path.Combine(d, FolderFiles.Rider)));

    /// <summary>A file lies in a folder that a roster was written into.</summary>
    /// <param name="file">The full path.</param>
    public static bool IsOutput(string file) => File.Exists(Path.Combine(Path.GetDirectoryName(file)!, JsonFile));

    /// <summary>Reviews every sub-folder, and writes and prints the overview.</summary>
    /// <param name="typed">The folder of riders, as typed.</param>
    /// <exception cref="UserError">Something the user can put right.</exception>
    public RosterDocument Run(string typed)
    {
        var folder = RiderFolder.ExistingFolder(shell, typed);
        var asOf = AsOf ?? shell.Today(shell.Zone);
        var typedOut = Out ?? $"roster-{Shown.Iso(asOf)}";
        var output = Path.TrimEndingDirectorySeparator(shell.FullPath(typedOut));
        RefuseRidersFolder(folder, output, typedOut);
        var riders = SubFolders(folder, output);
        if (riders.Count == 0)
            throw new UserError($"{typed} has no sub-folders: a roster has one sub-folder a rider. For one rider, use 'rideaudit review {typed}'.");
        MakeFolder(output, typedOut);
        var next = Next ? new RosterNext(shell, WritePlans) : null;
        var roster = RosterBuilder.Build(asOf, Review(riders, output, next));
        WriteOverview(roster, output);
        next?.Write(roster, output);
        if (!Quiet)
        {
            RosterPage.Write(new Page(shell, PageMeasure), roster, typedOut, next is null ? null : next.Lines);
            TellBeside(folder, typed);
        }
        else if (Strict)
        {
            TellUnusable(roster);
        }

        return roster;
    }

    // A rider's own folder would be written into, and its rides go unread.
    private static void RefuseRidersFolder(string folder, string output, string shown)
    {
        if (Path.GetDirectoryName(output) == folder && Directory.Exists(output)
            && !File.Exists(Path.Combine(output, JsonFile)) && Directory.EnumerateFileSystemEntries(output).Any())
            throw new UserError($"{shown} is a rider's folder: choose another folder to write into.");
    }

    private static List<string> SubFolders(string folder, string output) =>
        [.. Directory.EnumerateDirectories(folder)
            .Where(d => !Path.GetFileName(d).StartsWith('.') && !string.Equals(d, output, StringComparison.Ordinal))
            .Where(d => !File.Exists(Path.Combine(d, JsonFile)))
            .Order(StringComparer.Ordinal)];

    private static void MakeFolder(string output, string shown)
    {
        string? problem;
        try
        {
            Directory.CreateDirectory(output);
            problem = OutputFile.WhyNot(output);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new UserError($"The folder {shown} cannot be made: {WriteFault.Of(e)}");
        }
        if (problem is not null)
            throw new UserError($"The folder {shown} cannot be written: {problem}");
    }

    private RosterInput[] Review(List<string> riders, string output, RosterNext? next)
    {
        var inputs = new RosterInput[riders.Count];
        var names = Names(riders);
        var done = 0;
        using var progress = shell.ShowsProgress && !Quiet ? new ReadProgress(shell, "rider") : null;
        Parallel.For(0, riders.Count, new ParallelOptions { CancellationToken = shell.Cancel, MaxDegreeOfParallelism = Environment.ProcessorCount }, i =>
        {
            inputs[i] = ReviewOrSayWhy(riders[i], names[i], output, next);
            progress?.Report(new(Interlocked.Increment(ref done), riders.Count, riders[i]));
        });
        return inputs;
    }

    // Fit to be shown and to name files; folders that differ only in what is not are counted.
    private static string[] Names(IEnumerable<string> folders)
    {
        var taken = new HashSet<string>(StringComparer.Ordinal);
        string Unique(string name)
        {
            var unique = name;
            for (var copy = 2; !taken.Add(unique); copy++)
                unique = $"{name}-{Shown.Number(copy)}";
            return unique;
        }
        return [.. folders.Select(f => Unique(PlainText.Of(Path.GetFileName(f), '\uFFFD')))];
    }

    // Whatever goes wrong stays with that rider.
    private RosterInput ReviewOrSayWhy(string folder, string name, string output, RosterNext? next)
    {
        try
        {
            return Review(folder, name, output, next);
        }
        catch (UserError error)
        {
            return new RosterInput(name, null, error.Message, null);
        }
        catch (Exception fault) when (fault is not OperationCanceledException)
        {
            return new RosterInput(name, null, $"A fault of the program: {fault.GetType().Name}: {fault.Message}", null);
        }
    }

    private RosterInput Review(string path, string name, string output, RosterNext? next)
    {
        var folder = RiderFolder.Open(shell, path);
        var request = folder.Request(AsOf, Week);
        var content = folder.Read(quiet: true);
        next?.Make(folder, name, content, request, output);
        var (document, traces) = ReviewBuilder.ReviewWithTraces(content, folder.Rider, request) ?? throw new UserError(NoRides.Sentence(name, content), ExitCode.NoRide);
        var file = OutputFile.In(output, $"{name}-review-{Shown.Iso(document.Week.StartsOn)}.pdf");
        file.Write(s => Drawing.WritePdf(s, document, traces, new PageOptions { Paper = Paper }), shell.Cancel);
        return new RosterInput(name, document, null, file.Shown) { HasRiderFile = folder.RiderFile is not null };
    }

    private void WriteOverview(RosterDocument roster, string output)
    {
        Write("overview.pdf", s => Drawing.WriteRoster(s, roster, new PageOptions { Paper = Paper }));
        Write("overview.csv", s =>
        {
            using var writer = new StreamWriter(s, new UTF8Encoding(false), leaveOpen: true);
            CsvTable.Write(writer, CsvFields.Roster, roster.Riders);
        });
        Write(JsonFile, s => s.Write(Encoding.UTF8.GetBytes(ReviewJson.Write(roster))));

        void Write(string name, Action<Stream> write) => OutputFile.In(output, name, Path.Combine(output, name)).Write(write, shell.Cancel);
    }

    // A single rider's folder: its rides would go unread without a word.
    private void TellBeside(string folder, string typed)
    {
        var beside = Directory.EnumerateFiles(folder).Count(f => !Path.GetFileName(f).StartsWith('.'));
        if (beside > 0)
            shell.Tell($"{Shown.Tally(beside, "file")} beside the sub-folders of {typed} {Shown.Noun(beside, "is", "are")} not part of any rider. For one rider, use 'rideaudit review {typed}'.");
    }

    private void TellUnusable(RosterDocument roster)
    {
        foreach (var rider in roster.Riders.Where(r => r.Need == RosterNeed.NoReview || r.FilesNotUsed > 0))
            shell.Tell($"{rider.Folder}: {(rider.FilesNotUsed is { } files ? $"{Shown.Tally(files, "file")} could not be used." : rider.Why)}");
    }
}
