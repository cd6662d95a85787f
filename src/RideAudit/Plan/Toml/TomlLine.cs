using System.Text.RegularExpressions;

namespace RideAudit.Plan.Toml;

/// <summary>A line that is not TOML, in the words of somebody who has never heard of TOML.</summary>
/// <param name="Key">The key it begins with; null when it begins with none.</param>
/// <param name="Column">Where the fault stands, 1 first; null when only the parser knows.</param>
/// <param name="Found">What stands there.</param>
/// <param name="Allowed">What is allowed.</param>
internal sealed partial record TomlLine(string? Key, int? Column, string Found, string Allowed)
{
    public static TomlLine Read(string line)
    {
        if (Pair().Match(line) is not { Success: true } pair)
            return new(null, null, $"{TomlWords.Shortened(line.Trim())}, which is not understood", "a line such as label = \"Rider A\", a heading such as [plan], or # and a comment");
        var key = pair.Groups["key"].Value;
        var (written, column) = (pair.Groups["value"].Value, pair.Groups["value"].Index + 1);
        var shown = TomlWords.Shortened(written);
        if (DecimalComma().IsMatch(written))
            return new(key, column, shown, $"{key}: a number with a point, such as {written.Replace(',', '.')}");
        if (DateLike().IsMatch(written))
            return new(key, column, $"{shown}, which is no date", $"{key}: a date such as 2026-05-18, without quotes");
        if (written.Length == 0)
            return new(key, null, "nothing after =", $"{key}: a value, or # before the line");
        if (written.Count(c => c == '"') % 2 == 1)
            return new(key, column, $"{shown} with one quotation mark missing", $"{key}: text between two quotation marks");
        return Word().IsMatch(written)
            ? new(key, column, shown, $"{key}: text between quotation marks, such as \"{shown}\"")
            : new(key, column, $"{shown}, which is not understood", $"{key}: a number, a date, text between quotation marks, or a list in [ ]");
    }

    [GeneratedRegex(@"^\s*(?<key>[A-Za-z0-9_-]+)\s*=\s*(?<value>[^#]*?)\s*(#.*)?$")]
    private static partial Regex Pair();

    [GeneratedRegex(@"^-?\d+,\d+$")]
    private static partial Regex DecimalComma();

    [GeneratedRegex(@"^\d{1,4}[-/.]\d{1,2}[-/.]\d{1,4}$")]
    private static partial Regex DateLike();

    [GeneratedRegex(@"^[\p{L}][\p{L}\d _/+-]*$")]
    private static partial Regex Word();
}
