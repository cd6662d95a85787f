using System.Buffers.Binary;
using NodaTime;

namespace RideAudit.Cli.Work;

/// <summary>One look at a watched folder: every file that matters, with its size and time.</summary>
internal static class FolderLook
{
    // What the program itself writes would otherwise set off the next review.
    private static readonly HashSet<string> Outputs = new(StringComparer.OrdinalIgnoreCase) { ".pdf", ".png", ".json", ".ics" };

    /// <summary>Looks at a folder.</summary>
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

    // A FIT file's header says how many bytes of data follow; two more are its check.
    private static bool IsWhole(FileInfo file)
    {
        if (!file.Extension.Equals(".fit", StringComparison.OrdinalIgnoreCase))
            return true;
        using var stream = new FileStream(file.FullName, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        Span<byte> head = stackalloc byte[12];
        if (stream.ReadAtLeast(head, head.Length, throwOnEndOfStream: false) < head.Length)
            return false;
        var isFit = head[8..12].SequenceEqual(".FIT"u8);
        return !isFit || stream.Length >= head[0] + (long)BinaryPrimitives.ReadUInt32LittleEndian(head[4..]) + 2;
    }
}
