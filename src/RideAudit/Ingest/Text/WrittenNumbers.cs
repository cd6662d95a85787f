using System.Globalization;

namespace RideAudit.Ingest.Text;

/// <summary>Reads numbers as people and programs write them.</summary>
internal static class WrittenNumbers
{
    /// <summary>A number, finite; null when the text is none.</summary>
    /// <param name="text">A cell, or the text of an element.</param>
    /// <param name="decimalComma">A comma stands for the decimal point, as it does where the separator is a semicolon or a tab.</param>
    public static double? Parse(string text, bool decimalComma)
    {
        const NumberStyles Styles = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent | NumberStyles.AllowLeadingWhite | NumberStyles.AllowTrailingWhite;
        var number = decimalComma ? text.Replace(',', '.') : text;
        return double.TryParse(number, Styles, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value) ? value : null;
    }

    /// <summary>Words that programs write for "no value".</summary>
    public static bool IsMissing(string text) =>
        text.Length == 0 || text.ToUpperInvariant() is "NAN" or "NULL" or "NONE" or "-" or "--" or "–" or "NA" or "N/A" or "#N/A";
}
