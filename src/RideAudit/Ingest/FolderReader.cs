using NodaTime;
using RideAudit.Plan;
using RideAudit.Units;

namespace RideAudit.Ingest;

/// <summary>Brings every file under a folder to an intake. Opens for reading only; one bad file never stops the rest.</summary>
public static class FolderReader
{
    /// <summary>Reads a folder at any depth.</summary>
    /// <param name="folder">Its path, or that of one file; what lies under a folder is found at any depth.</param>
    /// <param name="rider">For the time zone and the CSV column map.</param>
    /// <param name="machineZone">Used when the rider file names no zone.</param>
    /// <param name="progress">Told after each file; may be null.</param>
    /// <param name="cancel">Stops between files.</param>
    /// <exception cref="DirectoryNotFoundException">There is no such folder.</exception>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    public static FolderContent Read(
        string folder, Rider rider, DateTimeZone machineZone, IProgress<IngestProgress>? progress, CancellationToken cancel) =>
        Read(folder, new Intake(rider, machineZone, cancel) { KeepsOnlyWhatIsJudged = true }, progress, cancel);

    /// <summary>The same with an intake of its own.</summary>
    internal static FolderContent Read(string folder, Intake intake, IProgress<IngestProgress>? progress, CancellationToken cancel)
    {
        if (!Path.Exists(folder))
            throw new DirectoryNotFoundException($"There is no folder {folder}.");
        var (files, walkNotices) = Listed(folder);
        walkNotices.ForEach(intake.Tell);
        var done = 0;
        Parallel.For(0, files.Count, new ParallelOptions { CancellationToken = cancel }, i =>
        {
            intake.Take(files[i].Name, () => Open(files[i].Path));
            progress?.Report(new IngestProgress(Interlocked.Increment(ref done), files.Count, files[i].Name));
        });
        return intake.Finish();
    }

    private static (List<FolderWalker.FoundFile> Files, List<FileNotice> Notices) Listed(string folder)
    {
        using var listing = Phase.Begin("listing");
        return FolderWalker.Walk(folder);
    }

    /// <summary>Pipes and devices have no length; opening one may never end.</summary>
    private static Stream Open(string path) => new FileInfo(path).Length == 0
        ? Stream.Null
        : new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete, bufferSize: 1);
}
