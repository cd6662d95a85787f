using System.Buffers.Binary;
using System.Security.Cryptography;
using NodaTime;
using RideAudit.Plan;
using RideAudit.Rides;

namespace RideAudit.Ingest;

/// <summary>Reads every ride file under a folder. Opens for reading only; one bad file never stops the rest.</summary>
public static class FolderReader
{
    /// <summary>Reads a folder at any depth.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="rider">For the time zone and the CSV column map.</param>
    /// <param name="machineZone">Used when the rider file names no zone.</param>
    /// <param name="progress">Told after each file; may be null.</param>
    /// <param name="cancel">Stops between files.</param>
    /// <exception cref="DirectoryNotFoundException">There is no such folder.</exception>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    public static FolderContent Read(
        string folder, Rider rider, DateTimeZone machineZone, IProgress<IngestProgress>? progress, CancellationToken cancel)
    {
        if (!Directory.Exists(folder))
            throw new DirectoryNotFoundException($"There is no folder {folder}.");
        var context = new IngestContext(rider, machineZone);
        var (files, walkNotices) = FolderWalker.Walk(folder);
        var contents = new FileContent[files.Count];
        var hashes = new UInt128[files.Count];
        var done = 0;
        Parallel.For(0, files.Count, new ParallelOptions { CancellationToken = cancel }, i =>
        {
            (contents[i], hashes[i]) = ReadFile(files[i], context);
            progress?.Report(new IngestProgress(Interlocked.Increment(ref done), files.Count, files[i].Name));
        });
        var notices = new List<FileNotice>(walkNotices);
        var distinct = WithoutCopies(files, contents, hashes, notices);
        var all = FileContent.Combine(distinct);
        var (kept, leftOut) = DuplicateFinder.Split(all.Recordings);
        notices.AddRange(all.Notices);
        notices.AddRange(leftOut.Select(d => new FileNotice(
            d.LeftOut.File, "duplicate", null, $"The same riding as {d.Kept.File}, which is kept.", false)));
        return new FolderContent
        {
            FilesSeen = files.Count,
            Recordings = kept,
            LoggedRides = all.LoggedRides,
            Notices = [.. notices.OrderBy(n => n.File, StringComparer.Ordinal)],
            TimeZone = context.Zone.Id,
            TimeZoneIsTheMachines = rider.TimeZone is null,
        };
    }

    private static (FileContent Content, UInt128 Hash) ReadFile(FoundFile file, IngestContext context)
    {
        try
        {
            var bytes = File.ReadAllBytes(file.Path);
            var hash = BinaryPrimitives.ReadUInt128BigEndian(SHA256.HashData(bytes));
            return (FileOpener.Open(file.Name, bytes, file.LooksLikeRide, context), hash);
        }
        catch (FileNotFoundException)
        {
            return (FileContent.Unusable(file.Name, "broken link", "A link to a file that is not there: remove it or restore the file."), default);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return (FileContent.Unusable(file.Name, "not readable", "This file could not be opened: check its permissions and whether another program holds it."), default);
        }
    }

    private static List<FileContent> WithoutCopies(
        List<FoundFile> files, FileContent[] contents, UInt128[] hashes, List<FileNotice> notices)
    {
        var first = new Dictionary<UInt128, string>();
        var distinct = new List<FileContent>();
        for (var i = 0; i < files.Count; i++)
        {
            var holdsRides = !contents[i].Recordings.IsEmpty || !contents[i].LoggedRides.IsEmpty;
            if (holdsRides && !first.TryAdd(hashes[i], files[i].Name))
                notices.Add(new FileNotice(files[i].Name, "duplicate", null, $"The same file as {first[hashes[i]]}, which is kept.", false));
            else
                distinct.Add(contents[i]);
        }
        return distinct;
    }
}
