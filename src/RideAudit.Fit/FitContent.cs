using RideAudit.Fit.Protocol;

namespace RideAudit.Fit;

/// <summary>Tells what bytes are by their beginning, whatever their file is called.</summary>
public static class FitContent
{
    private static ReadOnlySpan<byte> ByteOrderMark => [0xEF, 0xBB, 0xBF];

    /// <summary>The kind of the bytes.</summary>
    /// <param name="bytes">The beginning of a file; a few hundred bytes are enough.</param>
    public static FitContentKind Sniff(ReadOnlySpan<byte> bytes)
    {
        if (bytes.IsEmpty)
            return FitContentKind.Empty;
        if (FitHeader.LooksLikeOne(bytes[MarkLength(bytes)..]))
            return FitContentKind.Fit;
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0x1F, 0x8B]))
            return FitContentKind.Gzip;
        if (bytes.StartsWith("PK\u0003\u0004"u8) || bytes.StartsWith("PK\u0005\u0006"u8))
            return FitContentKind.Zip;
        return SniffText(bytes[MarkLength(bytes)..]);
    }

    /// <summary>Length of a byte-order mark at the beginning; 0 if there is none.</summary>
    internal static int MarkLength(ReadOnlySpan<byte> bytes) => bytes.StartsWith(ByteOrderMark) ? ByteOrderMark.Length : 0;

    /// <summary>The kind in words, with article.</summary>
    internal static string Describe(FitContentKind kind) => kind switch
    {
        FitContentKind.Empty => "an empty file",
        FitContentKind.Gzip => "a gzip file",
        FitContentKind.Zip => "a zip archive",
        FitContentKind.Gpx => "a GPX track",
        FitContentKind.Tcx => "a TCX file",
        FitContentKind.Xml => "an XML file",
        FitContentKind.WebPage => "a web page",
        FitContentKind.Json => "JSON text",
        FitContentKind.Text => "plain text",
        _ => "a file of an unknown kind",
    };

    private static FitContentKind SniffText(ReadOnlySpan<byte> bytes)
    {
        var head = bytes[..Math.Min(bytes.Length, 1024)];
        if (head.IndexOfAnyInRange((byte)0, (byte)8) >= 0)
            return FitContentKind.Unknown;
        var text = System.Text.Encoding.UTF8.GetString(head).TrimStart();
        if (text.StartsWith('<'))
            return SniffMarkup(text);
        if (text.StartsWith('{') || text.StartsWith('['))
            return FitContentKind.Json;
        return text.Contains('\uFFFD') || text.Length == 0 ? FitContentKind.Unknown : FitContentKind.Text;
    }

    private static FitContentKind SniffMarkup(string text)
    {
        bool Has(string word) => text.Contains(word, StringComparison.OrdinalIgnoreCase);
        if (Has("<!doctype html") || Has("<html"))
            return FitContentKind.WebPage;
        if (Has("<gpx"))
            return FitContentKind.Gpx;
        return Has("<TrainingCenterDatabase") ? FitContentKind.Tcx : FitContentKind.Xml;
    }
}
