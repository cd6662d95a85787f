using System.IO.Compression;

namespace RideAudit.Ingest.Archives;

/// <summary>Reads the rides in a zip archive, and in archives inside it. Nothing is ever written to disk.</summary>
internal static class ZipReader
{
    public static IReadOnlyList<FileContent> Read(string name, Stream input, ArchiveLayers layers, ArchiveWork work)
    {
        if (layers.Zips >= ArchiveLayers.MostZips)
            return Refused(name, "packed too deep", "An archive inside an archive inside an archive is not read: unpack one of them.");
        try
        {
            using var archive = new ZipArchive(input, ZipArchiveMode.Read, leaveOpen: true);
            var inner = layers with { Zips = layers.Zips + 1, Gzips = 0 };
            var contents = Entries(name, archive, inner, work);
            return contents.Exists(c => c.IsOfUse || !c.Notices.IsEmpty)
                ? contents
                : [.. contents.Where(c => !c.Texts.IsEmpty), .. Refused(name, "no rides", "This archive holds no ride.")];
        }
        catch (Exception e) when (e is InvalidDataException or IOException)
        {
            return Refused(name, "damaged archive", "This archive is cut or damaged and cannot be opened: copy it again from where it came.");
        }
    }

    private static List<FileContent> Entries(string name, ZipArchive archive, ArchiveLayers layers, ArchiveWork work)
    {
        var contents = new List<FileContent>();
        var names = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var entry in archive.Entries)
        {
            work.Cancel.ThrowIfCancellationRequested();
            if (IsFolder(entry.FullName) || ShownName.IsClutter(ShownName.OfEntry(entry.FullName)))
                continue;
            if (!layers.Budget.Enter() || layers.Budget.IsSpent)
            {
                contents.Add(FileContent.Unusable(name, "too large", $"This archive unpacks to more than is read of one archive ({work.Limits.LargestArchiveBytes >> 20} MB, {work.Limits.MostEntries} entries): what comes after that is left out; unpack it into the folder instead."));
                break;
            }
            contents.AddRange(Open(Unique(name, entry, names), entry, layers, work));
        }
        return contents;
    }

    private static IReadOnlyList<FileContent> Open(string name, ZipArchiveEntry entry, ArchiveLayers layers, ArchiveWork work)
    {
        if (entry.IsEncrypted)
            return Refused(name, "encrypted", "This file in the archive is protected by a password: unpack it and put it into the folder.");
        try
        {
            // Photos and the like are not unpacked further than it takes to tell.
            if (!NoRide.IsPromising(name) && !LooksLikeRide(entry, layers))
                return [];
            return Unpack(name, entry, layers, work);
        }
        catch (Exception e) when (e is InvalidDataException or IOException or NotSupportedException)
        {
            return Refused(name, "damaged archive", "This file in the archive is damaged or packed in a way that is not read: unpack it and put it into the folder.");
        }
    }

    private static bool LooksLikeRide(ZipArchiveEntry entry, ArchiveLayers layers)
    {
        using var stream = entry.Open();
        var head = new byte[ContentSniffer.LooksAt];
        var read = stream.ReadAtLeast(head, head.Length, throwOnEndOfStream: false);
        layers.Budget.Spend(read);
        return NoRide.IsWorthReading(ContentSniffer.KindOf(head.AsSpan(0, read)));
    }

    private static IReadOnlyList<FileContent> Unpack(string name, ZipArchiveEntry entry, ArchiveLayers layers, ArchiveWork work)
    {
        using var stream = entry.Open();
        using var unpacked = Unpacking.Read(stream, entry.Length, work.Limits, layers.Budget);
        if (unpacked.Result == Unpacked.Outcome.TooLarge)
            return layers.Budget.IsSpent ? [] : [NoRide.TooLarge(name, work.Limits)];
        if (unpacked.Length == 0)
            return unpacked.Result == Unpacked.Outcome.Damaged ? throw new InvalidDataException() : [NoRide.Refuse(name, FileKind.Empty)];
        var contents = work.Open(name, unpacked, layers);
        var isWhole = unpacked.Result == Unpacked.Outcome.Whole && Crc32.Of(unpacked.Bytes) == entry.Crc32;
        return isWhole ? contents : [.. contents.Select(c => c.With(WithWarning))];
    }

    private static FileContent WithWarning(FileContent content) => content.IsOfUse
        ? content with
        {
            Notices = [new FileNotice(content.File, "damaged archive", "what could be unpacked", "The archive is damaged here: what could be unpacked of this file was read; copy the archive again from where it came.", false)],
        }
        : content;

    private static bool IsFolder(string path) => path.Length == 0 || path[^1] is '/' or '\\';

    /// <summary>An archive may hold two files of one name; shown names are unique.</summary>
    private static string Unique(string archive, ZipArchiveEntry entry, Dictionary<string, int> nextCopies)
    {
        var shown = ShownName.OfEntry(entry.FullName);
        var first = $"{archive}/{shown}";
        var name = first;
        // The next number is kept: of one name over and over, all would be gone through anew for each.
        while (!nextCopies.TryAdd(name, 2))
            name = $"{archive}/{nextCopies[first]++}/{shown}";
        return name;
    }

    private static FileContent[] Refused(string name, string problem, string sentence) =>
        [RideEndings.Promise(name) ? FileContent.Unusable(name, problem, sentence) : FileContent.Nothing(name)];

    /// <summary>The checksum of zip entries: CRC-32 of ISO 3309, polynomial 0xEDB88320 reflected.</summary>
    private static class Crc32
    {
        private static readonly uint[] Table = [.. Enumerable.Range(0, 256).Select(i => Entry((uint)i))];

        public static uint Of(ReadOnlySpan<byte> bytes)
        {
            var crc = uint.MaxValue;
            foreach (var b in bytes)
                crc = Table[(byte)(crc ^ b)] ^ (crc >> 8);
            return ~crc;
        }

        private static uint Entry(uint value)
        {
            for (var bit = 0; bit < 8; bit++)
                value = (value & 1) == 0 ? value >> 1 : 0xEDB88320 ^ (value >> 1);
            return value;
        }
    }
}
