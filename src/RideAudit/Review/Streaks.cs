using System.Collections.Immutable;
using RideAudit.Rules;

namespace RideAudit.Review;

/// <summary>Counts for how many weeks before a finding stood as it stands now, so that a review need not say the same for ever.</summary>
internal static class Streaks
{
    private const int MostWeeks = 8;

    private static readonly string[] Ordinals = ["second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth"];

    /// <summary>The findings with the weeks before in which the same rule was met no better, and their sentences saying so from the second week on.</summary>
    /// <param name="findings">The week’s findings.</param>
    /// <param name="rules">The rules they come from.</param>
    /// <param name="weeks">Every week up to the judged one.</param>
    public static ImmutableArray<Finding> Count(ImmutableArray<Finding> findings, RuleBook rules, PastWeeks weeks) =>
        [.. findings.Zip(rules.Rules, (finding, rule) => With(finding, rule, weeks))];

    private static Finding With(Finding finding, Rule rule, PastWeeks weeks)
    {
        if (finding.Verdict is not (Verdict.Watch or Verdict.Broken))
            return finding;
        var count = 0;
        while (count < MostWeeks && count + 1 < weeks.Count && weeks.VerdictOf(rule, weeks.Count - 2 - count) is var before && IsNoBetter(before, finding.Verdict))
            count++;
        return count == 0 ? finding : finding with { WeeksInARow = count, Sentence = $"{finding.Sentence} {InWords(count)}" };
    }

    private static bool IsNoBetter(Verdict before, Verdict now) => before is Verdict.Watch or Verdict.Broken && before >= now;

    private static string InWords(int before) =>
        before == MostWeeks ? "It is so for more than eight weeks now." : $"It is the {Ordinals[before - 1]} week in a row.";
}
