using System.Globalization;

namespace RideAudit.Ingest.Csv;

/// <summary>Reads cells as numbers.</summary>
internal static class CsvNumbers
{
    /// <summary>A number, finite; null when the cell is none.</summary>
    /// <param name="text">The cell.</param>
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
