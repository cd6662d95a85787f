using System.Collections.Immutable;
using RideAudit.Formatting;

namespace RideAudit.Rules.Changes;

/// <summary>Sees to it that what would have kept one rule and the smallest change of the week never say opposite things.</summary>
/// <remarks>
/// A rule that the smallest change keeps has that very sentence. Another broken one for which a change is sought has a change of its own,
/// judged by the same rules and of other rides; else its own words, unless they speak of a ride that the smallest change speaks of.
/// </remarks>
internal static class Remedies
{
    private const string NoOther = "Nothing else in one ride, without costing another rule.";

    /// <summary>The findings with what would have kept each.</summary>
    /// <param name="findings">The findings as the rules tell them.</param>
    /// <param name="change">The smallest change; null when none was sought.</param>
    /// <param name="week">The week as ridden.</param>
    /// <param name="book">The rules.</param>
    public static ImmutableArray<Finding> With(ImmutableArray<Finding> findings, SmallestChange? change, WeekUnderReview week, RuleBook book)
    {
        if (change is null)
            return findings;
        var lead = RuleBook.MostSerious(findings)[0].Rule;
        string[] taken = [.. change.Changes.Select(c => c.Ride)];
        return [.. findings.Select(f => f.WouldHaveKept is null ? f : f with { WouldHaveKept = For(f) })];

        string For(Finding finding)
        {
            if (change.Keeps.Contains(finding.Rule) || finding.Rule == lead)
                return change.Sentence;
            var clashes = change.Changes.Any(c => Names(finding.WouldHaveKept!, c));
            var rule = book.Rules.FirstOrDefault(r => r.Id == finding.Rule);
            var own = rule is { IsChangeSought: true } && (clashes || finding.Verdict == Verdict.Broken) ? ChangeSearch.OneRide(week, rule, taken, book) : null;
            return own ?? (clashes ? NoOther : finding.WouldHaveKept!);
        }
    }

    private static bool Names(string words, RideChange change) =>
        words.Contains(Shown.Weekday(change.From), StringComparison.Ordinal) || words.Contains(Shown.Weekday(change.To), StringComparison.Ordinal);
}
