using System.Buffers.Binary;
using NodaTime;

namespace RideAudit.Ingest;

/// <summary>One look at a folder without reading it through: what would be read, with its size and time.</summary>
public static class FolderLook
{
    private const int HeaderBytes = 12;

    // What is written from a review is no ride file: seen as one, it would set off the next review.
    private static readonly HashSet<string> Outputs = new(StringComparer.OrdinalIgnoreCase) { ".pdf", ".png", ".json", ".ics" };

    /// <summary>A file at a look.</summary>
    /// <param name="Length">Bytes; −1 when the file just went away.</param>
    /// <param name="Changed">When it was last written.</param>
    /// <param name="Whole">False while its own header promises more bytes than there are.</param>
    public readonly record struct FileState(long Length, Instant Changed, bool Whole);

    /// <summary>Looks at a folder at any depth. Names that begin with a dot are passed over.</summary>
    /// <param name="folder">The full path.</param>
    /// <returns>Files by path; null while the folder is not there.</returns>
    public static Dictionary<string, FileState>? Take(string folder)
    {
        try
        {
            var files = new Dictionary<string, FileState>();
            var options = new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.None };
            foreach (var file in new DirectoryInfo(folder).EnumerateFiles("*", options))
                if (!file.Name.StartsWith('.') && !Outputs.Contains(file.Extension))
                    files[file.FullName] = StateOf(file);
            return files;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private static FileState StateOf(FileInfo file)
    {
        try
        {
            return new FileState(file.Length, Instant.FromDateTimeUtc(file.LastWriteTimeUtc), IsWhole(file));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // A file that just went away, or a link to nothing: the reader will name it.
            return new FileState(-1, Instant.MinValue, Whole: true);
        }
    }

    // FIT protocol, file header: byte 0 is its size, bytes 4 to 7 how many bytes of data follow, 8 to 11 the mark; two bytes of check come last.
    private static bool IsWhole(FileInfo file)
    {
        if (!RideEndings.IsFit(file.Name) || !file.Extension.Equals(".fit", StringComparison.OrdinalIgnoreCase))
            return true;
        using var stream = new FileStream(file.FullName, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        Span<byte> head = stackalloc byte[HeaderBytes];
        if (stream.ReadAtLeast(head, head.Length, throwOnEndOfStream: false) < head.Length)
            return false;
        var isFit = head[8..12].SequenceEqual(".FIT"u8);
        return !isFit || stream.Length >= head[0] + (long)BinaryPrimitives.ReadUInt32LittleEndian(head[4..]) + 2;
    }
}
