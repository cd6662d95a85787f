namespace RideAudit.Formatting;

/// <summary>Text from other people without what moves a cursor, breaks a line or turns the reading direction.</summary>
/// <remarks>Controls: C0 and C1 of ISO/IEC 6429. Reading direction: the marks, embeddings, overrides and isolates of Unicode's UAX #9. U+2028 and U+2029 break lines.</remarks>
public static class PlainText
{
    /// <summary>A character that must not reach a terminal, a page or a file unescaped; a line feed is one.</summary>
    public static bool Harms(char c) => char.IsControl(c)
        || c is >= '\u2028' and <= '\u202E' or >= '\u2066' and <= '\u2069' or '\u200E' or '\u200F' or '\u061C';

    /// <summary>The text with a harmless character for each harmful one.</summary>
    /// <param name="text">Any text.</param>
    /// <param name="instead">What stands for a harmful character.</param>
    /// <param name="keepLines">Line feeds stay.</param>
    public static string Of(string text, char instead, bool keepLines = false)
    {
        bool Goes(char c) => Harms(c) && !(keepLines && c == '\n');
        return text.Any(Goes) ? string.Concat(text.Select(c => Goes(c) ? instead : c)) : text;
    }
}
