using System.Collections.Immutable;
using RideAudit.Rules;

namespace RideAudit.Report.Words;

/// <summary>Rules, verdicts and named numbers in plain words.</summary>
internal static class RuleWords
{
    /// <summary><c>hard-day-spacing</c> as <c>Hard day spacing</c>.</summary>
    public static string Name(string rule) => Say.Capital(rule.Replace('-', ' '));

    /// <summary>The verdict's word.</summary>
    public static string Verdict(Verdict verdict) => verdict switch
    {
        Rules.Verdict.Broken => "broken",
        Rules.Verdict.Watch => "watch",
        Rules.Verdict.Kept => "kept",
        _ => "not judged",
    };

    /// <summary>The evidence in words.</summary>
    public static string Grade(Evidence evidence) => evidence switch
    {
        Evidence.PublishedStudy => "published study",
        Evidence.Handbook => "handbook",
        _ => "common practice",
    };

    /// <summary>Named numbers with their units, parted by commas.</summary>
    public static string Numbers(ImmutableArray<NamedNumber> numbers) => string.Join(", ", numbers.Select(Number));

    /// <summary>One named number: <c>low share 73 %</c>, <c>22.4 h between</c>.</summary>
    public static string Number(NamedNumber number)
    {
        string[] parts = number.Name.Split('_');
        if (number.Value is not { } value)
            return $"{Join(parts)} {Say.Missing}";
        if (parts.Any(IsFraction))
            return $"{Join(parts)} {Say.Percent(value, Math.Abs((value * 100) - Math.Round(value * 100)) < 0.001 ? 0 : 1)}";
        if (Unit(parts[^1]) is { } last)
            return $"{Join(parts[..^1])} {Quantity(value, last)}".TrimStart();
        if (Unit(parts[0]) is { } first)
            return $"{Quantity(value, first)} {Join(parts[1..])}".TrimEnd();
        return $"{Join(parts)} {Plain(value)}";
    }

    private static bool IsFraction(string part) => part is "share" or "margin" or "tolerance";

    private static string Join(string[] parts) => string.Join(' ', parts);

    private static string? Unit(string part) => part switch
    {
        "hours" or "h" => "h",
        "minutes" or "min" => "min",
        "seconds" or "s" => "s",
        "points" => "points",
        "percent" => "%",
        "w" => "W",
        "bpm" => "bpm",
        "days" or "rides" or "weeks" => part,
        _ => null,
    };

    private static string Quantity(double value, string unit) => unit switch
    {
        "s" => Say.Clock(value),
        _ when value == 1 && unit.EndsWith('s') => $"1\u00A0{unit[..^1]}",
        _ => $"{Plain(value)}\u00A0{unit}",
    };

    private static string Plain(double value)
    {
        int decimals = value == Math.Round(value) ? 0 : Math.Abs(value) < 10 && value != Math.Round(value, 1) ? 2 : 1;
        return Say.Number(value, decimals);
    }
}
