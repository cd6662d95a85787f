using NodaTime;
using RideAudit.Ingest.Archives;
using RideAudit.Plan;
using RideAudit.Rides;

namespace RideAudit.Ingest;

/// <summary>Reads every ride file under a folder. Opens for reading only; one bad file never stops the rest.</summary>
public static class FolderReader
{
    /// <summary>Reads a folder at any depth.</summary>
    /// <param name="folder">The folder, or one file.</param>
    /// <param name="rider">For the time zone and the CSV column map.</param>
    /// <param name="machineZone">Used when the rider file names no zone.</param>
    /// <param name="progress">Told after each file; may be null.</param>
    /// <param name="cancel">Stops between files.</param>
    /// <exception cref="DirectoryNotFoundException">There is no such folder.</exception>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    public static FolderContent Read(
        string folder, Rider rider, DateTimeZone machineZone, IProgress<IngestProgress>? progress, CancellationToken cancel) =>
        Read(folder, new IngestContext(rider, machineZone), ReadLimits.Default, progress, cancel);

    /// <summary>The same with limits of its own.</summary>
    internal static FolderContent Read(
        string folder, IngestContext context, ReadLimits limits, IProgress<IngestProgress>? progress, CancellationToken cancel)
    {
        if (!Path.Exists(folder))
            throw new DirectoryNotFoundException($"There is no folder {folder}.");
        var (files, walkNotices) = FolderWalker.Walk(folder);
        var opener = new FileOpener(context, limits, cancel);
        var contents = new IReadOnlyList<FileContent>[files.Count];
        var done = 0;
        Parallel.For(0, files.Count, new ParallelOptions { CancellationToken = cancel }, i =>
        {
            contents[i] = ReadFile(files[i], opener);
            progress?.Report(new IngestProgress(Interlocked.Increment(ref done), files.Count, files[i].Name));
        });
        var notices = new List<FileNotice>(walkNotices);
        var distinct = WithoutCopies(contents.SelectMany(c => c), notices);
        var (kept, leftOut) = DuplicateFinder.Split(distinct.SelectMany(c => c.Recordings));
        notices.AddRange(distinct.SelectMany(c => c.Notices));
        DuplicateNotices.Add(notices, leftOut);
        return new FolderContent
        {
            FilesSeen = files.Count,
            Recordings = kept,
            LoggedRides = [.. distinct.SelectMany(c => c.LoggedRides)],
            Notices = [.. notices.OrderBy(n => n.File, StringComparer.Ordinal)],
            TimeZone = context.Zone.Id,
            TimeZoneIsTheMachines = context.Rider.TimeZone is null,
        };
    }

    private static IReadOnlyList<FileContent> ReadFile(FoundFile file, FileOpener opener)
    {
        try
        {
            var length = new FileInfo(file.Path).Length;
            if (length == 0)
                return [FileOpener.Refuse(file.Name, FileKind.Empty)];
            using var stream = new FileStream(file.Path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete, bufferSize: 1);
            return opener.Open(file.Name, stream, length, ArchiveLayers.None(opener.Limits));
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            return [Unread(file, "gone", "This file went away while the folder was read, or its name cannot be understood: rename it and try again.")];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return [Unread(file, "not readable", "This file could not be opened: check its permissions and whether another program holds it.")];
        }
        catch (OutOfMemoryException)
        {
            return [Unread(file, "too large", "There was not enough memory to read this file: check what it is.")];
        }
        catch (Exception e) when (e is not OperationCanceledException)
        {
            // One bad file never stops the rest, not even by a fault of ours: but it is said, so that it can be mended.
            return [FileContent.Unusable(file.Name, "not readable", $"Reading this file failed in a way that should not happen ({e.GetType().Name}): please report it; the other files were read.")];
        }
    }

    private static FileContent Unread(FoundFile file, string problem, string sentence) =>
        RideEndings.Promise(file.Name) ? FileContent.Unusable(file.Name, problem, sentence) : FileContent.Nothing(file.Name);

    private static List<FileContent> WithoutCopies(IEnumerable<FileContent> contents, List<FileNotice> notices)
    {
        // Rows that count seconds take their date from the file's name: equal bytes on two days are two rides.
        var first = new Dictionary<(UInt128 Hash, Instant? Start), string>();
        var distinct = new List<FileContent>();
        foreach (var content in contents.OrderBy(c => c.File, StringComparer.Ordinal))
        {
            var key = (content.Hash, content.Recordings.IsEmpty ? (Instant?)null : content.Recordings[0].Start);
            if (content.HoldsRides && !first.TryAdd(key, content.File))
                notices.Add(new FileNotice(content.File, "duplicate", null, $"The same file as {first[key]}, which is kept.", false));
            else
                distinct.Add(content);
        }
        return distinct;
    }
}
