using System.CommandLine;
using System.Text;
using NodaTime;
using RideAudit.Cli.Output;
using RideAudit.Cli.Terminal;
using RideAudit.Document;
using RideAudit.Document.Json;
using RideAudit.Formatting;
using RideAudit.Report;
using RideAudit.Review;

namespace RideAudit.Cli.Commands;

/// <summary>Every rider of a coach: reviews every sub-folder and writes the overview.</summary>
internal sealed class RosterCommand(Shell shell, ProgramCommand command)
{
    private const string JsonFile = "overview.json";
    private const int PageMeasure = 100;

    private readonly Argument<string> _folder = command.Folder("Folder with one sub-folder a rider, each with ride files and a rider.toml.");
    private readonly Option<string?> _out = command.File("--out", "Folder to write into, made if need be. Default: roster-YYYY-MM-DD in the current folder.", "DIR");
    private readonly Option<LocalDate?> _asOf = command.AsOf();
    private readonly Option<LocalDate?> _week = command.Date("--week", "Review the week that holds this date. Default: the last week that has ended.");
    private readonly Option<Paper> _paper = command.Paper("The paper of the PDFs. Default: a4.");
    private readonly Option<bool> _next = command.Flag("--next", "Lay out everybody's next week as well: in the summary, in next.csv, and a calendar each.");
    private readonly Option<bool> _writePlans = command.Flag("--write-plans", "Write the weeks of --next into plan.csv of each rider's folder; rows made by hand stay as they are.");
    private readonly Option<bool> _strict = command.Strict("files or riders");
    private readonly Option<string?> _failOn = command.FailOn();
    private readonly Option<bool> _quiet = command.Quiet();

    /// <summary>The command, ready to be parsed and run.</summary>
    public static ProgramCommand Create(Shell shell)
    {
        var command = new ProgramCommand(
            "roster",
            "Review every sub-folder of FOLDER, and write one overview ordered by who needs the coach first (PDF, CSV, JSON).",
            ("rideaudit roster riders/", "a review of each sub-folder, and one overview, in roster-YYYY-MM-DD/"),
            ("rideaudit roster riders/ --out monday --as-of 2026-06-22", "as of a date, into a folder of your choice"),
            ("rideaudit roster riders/ --next --write-plans", "everybody's next week too, written into each rider's plan table"));
        var roster = new RosterCommand(shell, command);
        command.Refuses(r => r.GetValue(roster._writePlans) && !r.GetValue(roster._next), "--write-plans writes what --next lays out: give both.");
        command.Does(roster.Run);
        return command;
    }

    private ExitCode Run(ParseResult asked)
    {
        var typed = asked.GetRequiredValue(_folder);
        var folder = RiderFolder.ExistingFolder(shell, typed);
        var asOf = asked.GetValue(_asOf) ?? shell.Today(shell.Zone);
        var typedOut = asked.GetValue(_out) ?? $"roster-{Shown.Iso(asOf)}";
        var output = Path.TrimEndingDirectorySeparator(shell.FullPath(typedOut));
        RefuseRidersFolder(folder, output, typedOut);
        var riders = SubFolders(folder, output);
        if (riders.Count == 0)
            throw new UserError($"{typed} has no sub-folders: a roster has one sub-folder a rider. For one rider, use 'rideaudit review {typed}'.");
        MakeFolder(output, typedOut);
        var next = asked.GetValue(_next) ? new RosterNext(shell, asked.GetValue(_writePlans)) : null;
        var roster = RosterBuilder.Build(asOf, Review(asked, riders, output, next));
        WriteOverview(asked, roster, output);
        next?.Write(roster, output);
        if (!asked.GetValue(_quiet))
        {
            RosterPage.Write(new Page(shell, PageMeasure), roster, typedOut, next is null ? null : next.Lines);
            TellBeside(folder, typed);
        }
        else if (asked.GetValue(_strict))
        {
            TellUnusable(roster);
        }
        return CodeOf(asked, roster);
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

    private RosterInput[] Review(ParseResult asked, List<string> riders, string output, RosterNext? next)
    {
        var inputs = new RosterInput[riders.Count];
        var done = 0;
        using var progress = shell.ShowsProgress && !asked.GetValue(_quiet) ? new ReadProgress(shell, "rider") : null;
        Parallel.For(0, riders.Count, new ParallelOptions { CancellationToken = shell.Cancel, MaxDegreeOfParallelism = Environment.ProcessorCount }, i =>
        {
            inputs[i] = ReviewOrSayWhy(asked, riders[i], output, next);
            progress?.Report(new(Interlocked.Increment(ref done), riders.Count, riders[i]));
        });
        return inputs;
    }

    // Whatever goes wrong stays with that rider.
    private RosterInput ReviewOrSayWhy(ParseResult asked, string folder, string output, RosterNext? next)
    {
        var name = Path.GetFileName(folder);
        try
        {
            return Review(asked, folder, name, output, next);
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

    private RosterInput Review(ParseResult asked, string path, string name, string output, RosterNext? next)
    {
        var folder = RiderFolder.Open(shell, path);
        var request = folder.Request(asked.GetValue(_asOf), asked.GetValue(_week));
        var content = folder.Read(quiet: true);
        next?.Make(folder, name, content, request, output);
        var (document, traces) = ReviewBuilder.ReviewWithTraces(content, folder.Rider, request) ?? throw new UserError(NoRides.Sentence(name, content), ExitCode.NoRide);
        var file = OutputFile.In(output, $"{name}-review-{Shown.Iso(document.Week.StartsOn)}.pdf");
        file.Write(s => Drawing.WritePdf(s, document, traces, new PageOptions { Paper = asked.GetValue(_paper) }), shell.Cancel);
        return new RosterInput(name, document, null, file.Shown) { HasRiderFile = folder.RiderFile is not null };
    }

    private void WriteOverview(ParseResult asked, RosterDocument roster, string output)
    {
        Write("overview.pdf", s => Drawing.WriteRoster(s, roster, new PageOptions { Paper = asked.GetValue(_paper) }));
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

    private ExitCode CodeOf(ParseResult asked, RosterDocument roster)
    {
        if (roster.Riders.All(r => r.Need == RosterNeed.NoReview))
            return ExitCode.NoRide;
        if (asked.GetValue(_strict) && roster.Riders.Any(r => r.Need == RosterNeed.NoReview || r.FilesNotUsed > 0))
            return ExitCode.FilesNotUsed;
        return asked.GetValue(_failOn) is not null && roster.Riders.Any(r => r.Need == RosterNeed.Broken) ? ExitCode.RuleBroken : ExitCode.Done;
    }
}
