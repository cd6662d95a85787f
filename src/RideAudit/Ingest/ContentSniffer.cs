using RideAudit.Fit;
using RideAudit.Ingest.Text;

namespace RideAudit.Ingest;

/// <summary>Tells what a file is from its content, never from its ending.</summary>
internal static class ContentSniffer
{
    /// <summary>Bytes that are enough to tell.</summary>
    public const int LooksAt = 4096;

    private static readonly (byte[] Start, FileKind Kind)[] Signatures =
    [
        ([0x1F, 0x8B], FileKind.Gzip),
        ([.. "PK\x03\x04"u8], FileKind.Zip),
        ([.. "PK\x05\x06"u8], FileKind.Zip),
        ([.. "7z"u8, 0xBC, 0xAF, 0x27, 0x1C], FileKind.OtherArchive),
        ([.. "Rar!"u8, 0x1A], FileKind.OtherArchive),
        ([.. "BZh"u8], FileKind.OtherArchive),
        ([0xFD, .. "7zXZ"u8], FileKind.OtherArchive),
        ([.. "%PDF"u8], FileKind.Pdf),
        ([0x89, .. "PNG"u8], FileKind.Image),
        ([0xFF, 0xD8, 0xFF], FileKind.Image),
        ([.. "GIF8"u8], FileKind.Image),
    ];

    /// <param name="bytes">A file's beginning, or all of it.</param>
    public static FileKind KindOf(ReadOnlySpan<byte> bytes)
    {
        if (bytes.IsEmpty)
            return FileKind.Empty;
        if (FitContent.Sniff(bytes) == FitContentKind.Fit)
            return FileKind.Fit;
        foreach (var (start, kind) in Signatures)
            if (bytes.StartsWith(start))
                return kind;
        if (bytes.Length > 262 && bytes[257..].StartsWith("ustar"u8))
            return FileKind.OtherArchive;
        return KindOfText(bytes[..Math.Min(bytes.Length, LooksAt)]);
    }

    private static FileKind KindOfText(ReadOnlySpan<byte> bytes)
    {
        var (encoding, mark) = TextBytes.EncodingOf(bytes);
        var text = encoding.GetString(bytes[mark..]).TrimStart(' ', '\t', '\r', '\n');
        if (text.StartsWith('{') || text.StartsWith('['))
            return FileKind.Json;
        if (!text.StartsWith('<'))
            return LooksWritten(text) ? FileKind.Text : FileKind.Binary;
        bool Has(string word) => text.Contains(word, StringComparison.OrdinalIgnoreCase);
        if (Has("<html") || Has("<!doctype html"))
            return FileKind.WebPage;
        if (Has("TrainingCenterDatabase"))
            return FileKind.Tcx;
        return Has("<gpx") || Has(":gpx") ? FileKind.Gpx : FileKind.OtherXml;
    }

    private static bool LooksWritten(string text) =>
        text.Length > 0 && text.Count(c => char.IsControl(c) && c is not ('\t' or '\r' or '\n')) <= text.Length / 100;
}
