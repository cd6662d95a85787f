using RideAudit.Plan;
using RideAudit.Rules;

namespace RideAudit.Report.Words;

/// <summary>A limit in words, its unit as the catalogue of limits has it.</summary>
internal static class LimitWords
{
    // Words that a count is of: "3 hard days", where "hard 3 days" would not read.
    private static readonly string[] Counted = ["hard", "high", "threshold"];

    /// <summary><c>long ride margin 15 %</c>, <c>heavy pair stress 100 points</c>, <c>jump least 90 min</c>.</summary>
    public static string Of(NamedNumber limit)
    {
        if (LimitCatalogue.Find(limit.Name) is not { } known || limit.Value is not { } value)
            return NumberWords.Of(limit);
        string name = limit.Name.Replace('_', ' ');
        return known.Unit switch
        {
            "share" => $"{name} {Say.Share(value)}",
            "times" => $"{name} {Say.Plain(value)}",
            "%" => $"{Without(name, "percent")} {Say.Plain(value)}{Say.Joint}%",
            "days" or "weeks" or "rides" or "bouts" => Counting(name, value, known.Unit),
            var unit => $"{Without(name, unit)} {Say.Plain(value)}{Say.Joint}{unit}",
        };
    }

    private static string Counting(string name, double value, string unit)
    {
        string quantity = $"{Say.Plain(value)}{Say.Joint}{(value == 1 ? unit[..^1] : unit)}";
        string[] words = name.Split(' ');
        if (words[^1] == unit && Counted.Contains(words[^2]))
            return $"{string.Join(' ', words[..^2])} {quantity.Replace(Say.Joint, $"{Say.Joint}{words[^2]}{Say.Joint}", StringComparison.Ordinal)}";
        if (words[^1] == unit)
            return $"{string.Join(' ', words[..^1])} {quantity}";
        return words.Contains(unit) ? $"{name} {Say.Plain(value)}" : $"{name} {quantity}";
    }

    private static string Without(string name, string unit) => name.EndsWith(" " + unit, StringComparison.Ordinal) ? name[..^(unit.Length + 1)] : name;
}
