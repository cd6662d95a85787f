using System.Text;
using System.Text.Unicode;

namespace RideAudit.Ingest.Text;

/// <summary>Finds out how text is encoded: by its byte-order mark, else by what its bytes can be.</summary>
internal static class TextBytes
{
    private const int LooksAt = 4096;

    /// <summary>The encoding and the length of the byte-order mark.</summary>
    /// <remarks>Text that is no valid UTF-8 is taken as Latin-1, where every byte is a character.</remarks>
    public static (Encoding Encoding, int Mark) EncodingOf(ReadOnlySpan<byte> bytes)
    {
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF]))
            return (Encoding.UTF8, 3);
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE, 0, 0]))
            return (Encoding.UTF32, 4);
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE]))
            return (Encoding.Unicode, 2);
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF]))
            return (Encoding.BigEndianUnicode, 2);
        if (WideWithoutMark(bytes[..Math.Min(bytes.Length, LooksAt)]) is { } wide)
            return (wide, 0);
        return (Utf8.IsValid(WithoutCutCharacter(bytes)) ? Encoding.UTF8 : Encoding.Latin1, 0);
    }

    /// <summary>UTF-8 without a byte-order mark.</summary>
    public static bool IsPlainUtf8(ReadOnlySpan<byte> bytes) => EncodingOf(bytes) is var (encoding, mark) && ReferenceEquals(encoding, Encoding.UTF8) && mark == 0;

    /// <summary>The same text as UTF-8 without byte-order mark; the very same array where it is that already.</summary>
    public static byte[] ToUtf8(byte[] bytes)
    {
        var (encoding, mark) = EncodingOf(bytes);
        if (ReferenceEquals(encoding, Encoding.UTF8))
            return mark == 0 ? bytes : bytes[mark..];
        return Encoding.Convert(encoding, Encoding.UTF8, bytes, mark, bytes.Length - mark);
    }

    /// <summary>A reader that stands on the first character that is no white space: exporters write blanks before an XML declaration.</summary>
    public static TextReader Reader(byte[] bytes)
    {
        var (encoding, mark) = EncodingOf(bytes);
        var reader = new StreamReader(new MemoryStream(bytes, mark, bytes.Length - mark, writable: false), encoding, detectEncodingFromByteOrderMarks: false);
        while (reader.Peek() is ' ' or '\t' or '\r' or '\n' or '\uFEFF')
            reader.Read();
        return reader;
    }

    /// <summary>Western text as UTF-16 has a zero in every other byte.</summary>
    private static Encoding? WideWithoutMark(ReadOnlySpan<byte> bytes)
    {
        Span<int> zeros = [0, 0];
        for (var i = 0; i < bytes.Length; i++)
            zeros[i & 1] += bytes[i] == 0 ? 1 : 0;
        var most = bytes.Length / 2 * 9 / 10;
        if (bytes.Length < 16)
            return null;
        return zeros[1] >= most && zeros[0] == 0 ? Encoding.Unicode
            : zeros[0] >= most && zeros[1] == 0 ? Encoding.BigEndianUnicode
            : null;
    }

    private static ReadOnlySpan<byte> WithoutCutCharacter(ReadOnlySpan<byte> bytes)
    {
        for (var back = 1; back <= 3 && back <= bytes.Length; back++)
            if (bytes[^back] >= 0xC0)
                return bytes[..^back];
        return bytes;
    }
}
