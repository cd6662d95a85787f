using System.Text;

namespace RideAudit.Ingest;

/// <summary>The files of a folder that are about the rider and not about a ride.</summary>
public static class FolderFiles
{
    /// <summary>The rider file's name.</summary>
    public const string Rider = "rider.toml";

    /// <summary>The coach's note's name.</summary>
    public const string Note = "note.md";

    /// <summary>The name of the plan table that the program keeps; tables of other names count as well.</summary>
    public const string Plan = "plan.csv";

    /// <summary>More than this nobody reads beside a week, bytes.</summary>
    internal const int LongestNote = 64 << 10;

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>What the reader of a review should know where there is no rider file.</summary>
    public static FileNotice NoRiderFile { get; } = new(
        Rider,
        "assumption",
        null,
        "No rider file was given and the folder has no rider.toml: defaults are used, and threshold power is taken from the recordings or estimated. 'rideaudit new-rider' writes one.",
        Unusable: false);

    /// <summary>A rider file's text.</summary>
    /// <param name="path">The file.</param>
    /// <exception cref="IOException">It is not there or cannot be read.</exception>
    /// <exception cref="DecoderFallbackException">It is not UTF-8.</exception>
    public static string ReadRider(string path) => ReadText(path, Strict, RiderTexts.LargestBytes);

    /// <summary>A note's text; null when there is no such file or nothing in it.</summary>
    /// <param name="path">The file.</param>
    /// <exception cref="IOException">It cannot be read.</exception>
    public static string? ReadNote(string path) => File.Exists(path) && ReadText(path, Encoding.UTF8, LongestNote) is var note && !string.IsNullOrWhiteSpace(note) ? note : null;

    // Pipes and devices have no length, and opening one may never end: but one that the shell has opened already was meant.
    private static string ReadText(string path, Encoding encoding, int most)
    {
        var isHandedOver = path.StartsWith("/dev/fd/", StringComparison.Ordinal) || path == "/dev/stdin";
        if (!isHandedOver && new FileInfo(RealPath.Of(path) ?? path).Length == 0)
            return "";
        using var reader = new StreamReader(path, encoding);
        var text = new char[most + 1];
        var read = reader.ReadBlock(text);
        return read < text.Length ? new string(text, 0, read) : throw new IOException($"it is larger than the {most >> 10} KB read of such a file.");
    }

    /// <summary>A file lies under a folder, links followed.</summary>
    /// <param name="folder">The folder's full path.</param>
    /// <param name="file">The file's full path; it need not be there, its own folder must.</param>
    public static bool IsUnder(string folder, string file)
    {
        var root = RealPath.Of(folder);
        var home = RealPath.Of(Path.GetDirectoryName(file) ?? file);
        return root is not null && home is not null && Directory.Exists(root)
            && (home + Path.DirectorySeparatorChar).StartsWith(Path.TrimEndingDirectorySeparator(root) + Path.DirectorySeparatorChar, StringComparison.Ordinal);
    }
}
