using System.Globalization;
using Tomlyn;
using Tomlyn.Syntax;

namespace RideAudit.Plan.Toml;

/// <summary>TOML values in plain words, as mistakes name them.</summary>
internal static class TomlWords
{
    private const int LongestQuote = 40;

    public static string Found(ValueSyntax value) => value switch
    {
        StringValueSyntax text => $"the text \"{Shortened(text.Value ?? "")}\"",
        IntegerValueSyntax number => number.Value.ToString(CultureInfo.InvariantCulture),
        FloatValueSyntax number => number.Value.ToString(CultureInfo.InvariantCulture),
        BooleanValueSyntax flag => flag.Value ? "true" : "false",
        ArraySyntax => "a list",
        InlineTableSyntax => "a table",
        DateTimeValueSyntax { Value.Kind: TomlDateTimeKind.LocalDate } date =>
            date.Value.DateTime.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
        DateTimeValueSyntax => "a time of day or a date with a time",
        _ => "something else",
    };

    public static string Shortened(string text) =>
        text.Length <= LongestQuote ? text : string.Concat(text.AsSpan(0, LongestQuote), "…");
}
