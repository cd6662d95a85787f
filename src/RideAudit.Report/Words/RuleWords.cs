using System.Collections.Immutable;
using RideAudit.Rules;

namespace RideAudit.Report.Words;

/// <summary>Rules and verdicts in plain words, and lists of their numbers.</summary>
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

    /// <summary>An occurrence's numbers with their units, parted by commas.</summary>
    public static string Numbers(ImmutableArray<NamedNumber> numbers) => string.Join(", ", numbers.Select(NumberWords.Of));

    /// <summary>Limits with their units, parted by commas; limits without a value are left out.</summary>
    public static string Limits(ImmutableArray<NamedNumber> limits) =>
        string.Join(", ", limits.Where(limit => limit.Value is not null).Select(LimitWords.Of));
}
