using System.Text;

namespace RideAudit.Ingest;

/// <summary>Tells what a file is from its content, never from its ending.</summary>
internal static class ContentSniffer
{
    private const int LooksAt = 4096;

    public static FileKind KindOf(ReadOnlySpan<byte> bytes)
    {
        if (bytes.IsEmpty)
            return FileKind.Empty;
        if (bytes.Length >= 12 && bytes.Slice(8, 4).SequenceEqual(".FIT"u8))
            return FileKind.Fit;
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0x1F, 0x8B]))
            return FileKind.Gzip;
        if (bytes.StartsWith("PK\x03\x04"u8) || bytes.StartsWith("PK\x05\x06"u8))
            return FileKind.Zip;
        if (bytes.StartsWith("%PDF"u8))
            return FileKind.Pdf;
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0x89, (byte)'P', (byte)'N', (byte)'G']) || bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xD8, 0xFF]))
            return FileKind.Image;
        return KindOfText(bytes[..Math.Min(bytes.Length, LooksAt)]);
    }

    private static FileKind KindOfText(ReadOnlySpan<byte> bytes)
    {
        var wide = bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE]) || bytes.StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF]);
        if (!wide && bytes.Contains((byte)0))
            return FileKind.Binary;
        var encoding = !wide ? Encoding.UTF8 : bytes[0] == 0xFF ? Encoding.Unicode : Encoding.BigEndianUnicode;
        var text = encoding.GetString(bytes).TrimStart('\uFEFF', ' ', '\t', '\r', '\n');
        if (text.StartsWith('{') || text.StartsWith('['))
            return FileKind.Json;
        if (!text.StartsWith('<'))
            return LooksWritten(text) ? FileKind.Text : FileKind.Binary;
        if (text.Contains("<TrainingCenterDatabase", StringComparison.Ordinal))
            return FileKind.Tcx;
        if (text.Contains("<gpx", StringComparison.OrdinalIgnoreCase))
            return FileKind.Gpx;
        return text.Contains("<html", StringComparison.OrdinalIgnoreCase) || text.StartsWith("<!doctype html", StringComparison.OrdinalIgnoreCase)
            ? FileKind.WebPage
            : FileKind.OtherXml;
    }

    private static bool LooksWritten(string text) =>
        text.Count(c => char.IsControl(c) && c is not ('\t' or '\r' or '\n')) <= text.Length / 100;
}
