using System.Globalization;

namespace RideAudit.Ingest.Text;

/// <summary>Reads numbers as people and programs write them.</summary>
internal static class WrittenNumbers
{
    private const int MostExactDigits = 15;

    /// <summary>A number, finite; null when the text is none.</summary>
    /// <param name="text">A cell, or the text of an element.</param>
    /// <param name="decimalComma">A comma stands for the decimal point, as it does where the separator is a semicolon or a tab.</param>
    public static double? Parse(string text, bool decimalComma)
    {
        if (Plain(text, decimalComma ? ',' : '.') is { } plain)
            return plain;
        const NumberStyles Styles = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent | NumberStyles.AllowLeadingWhite | NumberStyles.AllowTrailingWhite;
        var number = decimalComma ? text.Replace(',', '.') : text;
        return double.TryParse(number, Styles, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value) ? value : null;
    }

    /// <summary>Up to 15 digits with or without a decimal sign, as nearly every cell of a recording is: a quotient of two numbers that are exact, rounded once, as the parser rounds.</summary>
    private static double? Plain(ReadOnlySpan<char> text, char point)
    {
        var (number, digits, divisor) = (0L, 0, 0L);
        foreach (var letter in text)
        {
            if (char.IsAsciiDigit(letter) && digits < MostExactDigits)
                (number, digits, divisor) = (number * 10 + (letter - '0'), digits + 1, divisor * 10);
            else if (letter == point && divisor == 0)
                divisor = 1;
            else
                return null;
        }
        return digits == 0 ? null : (double)number / Math.Max(1, divisor);
    }

    /// <summary>Words that programs write for "no value".</summary>
    public static bool IsMissing(string text) =>
        text.Length == 0 || text.ToUpperInvariant() is "NAN" or "NULL" or "NONE" or "-" or "--" or "–" or "NA" or "N/A" or "#N/A";
}
