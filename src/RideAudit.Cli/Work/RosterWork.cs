using System.Text;
using RideAudit.Cli.Options;
using RideAudit.Cli.Output;
using RideAudit.Cli.Terminal;
using RideAudit.Document;
using RideAudit.Report;
using RideAudit.Review;

namespace RideAudit.Cli.Work;

/// <summary>Reviews every sub-folder and writes the overview.</summary>
internal static class RosterWork
{
    /// <summary>Runs a roster.</summary>
    /// <exception cref="UserError">Something the user can put right.</exception>
    public static ExitCode Run(Shell shell, RosterArguments asked)
    {
        var folder = FolderArgument.Existing(shell, asked.Folder);
        var today = shell.Today(shell.Zone);
        var typedOut = asked.Out ?? $"roster-{Say.Iso(asked.AsOf ?? today)}";
        var output = shell.FullPath(typedOut);
        var riders = SubFolders(folder, output);
        if (riders.Count == 0)
            throw new UserError($"{asked.Folder} has no sub-folders: a roster has one sub-folder a rider. For one rider, use 'rideaudit review {asked.Folder}'.");
        MakeFolder(output, typedOut);
        var inputs = Review(shell, asked, riders, output);
        var roster = RosterBuilder.Build(asked.AsOf ?? today, inputs);
        WriteOverview(shell, asked, roster, output);
        if (!asked.Quiet)
            RosterPage.Write(new Page(shell, 100), roster, typedOut);
        TellBeside(shell, asked, folder);
        if (asked.Strict && asked.Quiet)
            TellUnusable(shell, roster);
        return CodeOf(asked, roster);
    }

    private static List<string> SubFolders(string folder, string output) =>
        [.. Directory.EnumerateDirectories(folder)
            .Where(d => !Path.GetFileName(d).StartsWith('.') && !string.Equals(d, output, StringComparison.Ordinal))
            .Where(d => !File.Exists(Path.Combine(d, RosterFiles.Json)))
            .Order(StringComparer.Ordinal)];

    // A single rider's folder: its rides would go unread without a word.
    private static void TellBeside(Shell shell, RosterArguments asked, string folder)
    {
        var beside = Directory.EnumerateFiles(folder).Count(f => !Path.GetFileName(f).StartsWith('.'));
        if (beside == 0 || asked.Quiet)
            return;
        shell.Out.Flush();
        shell.Error.Write(new Marks(shell.Unicode).Show(
            $"{Say.Count(beside, "file")} beside the sub-folders of {asked.Folder} {(beside == 1 ? "is" : "are")} not part of any rider. For one rider, use 'rideaudit review {asked.Folder}'.") + "\n");
    }

    private static void TellUnusable(Shell shell, RosterDocument roster)
    {
        foreach (var rider in roster.Riders.Where(r => r.Need == RosterNeed.NoReview || r.FilesNotUsed > 0))
            shell.Error.Write(new Marks(shell.Unicode).Show(
                $"{rider.Folder}: {(rider.FilesNotUsed is { } files ? $"{Say.Count(files, "file")} could not be used." : rider.Why)}") + "\n");
    }

    private static void MakeFolder(string output, string shown)
    {
        try
        {
            Directory.CreateDirectory(output);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new UserError($"The folder {shown} cannot be made: {WriteFault.Of(e)}");
        }
    }

    private static RosterInput[] Review(Shell shell, RosterArguments asked, List<string> riders, string output)
    {
        var inputs = new RosterInput[riders.Count];
        var done = 0;
        using var progress = shell.ShowsProgress && !asked.Quiet ? new ReadProgress(shell, "rider") : null;
        Parallel.For(0, riders.Count, new ParallelOptions { CancellationToken = shell.Cancel, MaxDegreeOfParallelism = Environment.ProcessorCount }, i =>
        {
            inputs[i] = RosterRider.Review(shell, asked, riders[i], output);
            progress?.Report(new(Interlocked.Increment(ref done), riders.Count, riders[i]));
        });
        return inputs;
    }

    private static void WriteOverview(Shell shell, RosterArguments asked, RosterDocument roster, string output)
    {
        Write(RosterFiles.Pdf, s => Drawing.WriteRoster(s, roster, new PageOptions { Paper = asked.Paper }));
        Write(RosterFiles.Json, s => s.Write(Encoding.UTF8.GetBytes(ReviewJson.Write(roster))));
        Write(RosterFiles.Csv, s =>
        {
            using var writer = new StreamWriter(s, new UTF8Encoding(false), leaveOpen: true);
            CsvTable.Write(writer, CsvFields.Roster, roster.Riders);
        });

        void Write(string name, Action<Stream> write) => OutputFile.Write(Path.Combine(output, name), write, shell.Cancel);
    }

    private static ExitCode CodeOf(RosterArguments asked, RosterDocument roster)
    {
        if (roster.Riders.All(r => r.Need == RosterNeed.NoReview))
            return ExitCode.NoRide;
        if (asked.Strict && roster.Riders.Any(r => r.Need == RosterNeed.NoReview || r.FilesNotUsed > 0))
            return ExitCode.FilesNotUsed;
        return asked.FailOnBroken && roster.Riders.Any(r => r.Need == RosterNeed.Broken) ? ExitCode.RuleBroken : ExitCode.Done;
    }
}
