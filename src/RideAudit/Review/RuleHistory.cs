using System.Collections.Immutable;
using RideAudit.Document;
using RideAudit.Rules;

namespace RideAudit.Review;

/// <summary>What the rules say of the weeks before the reviewed one, each judged against its own plan.</summary>
internal static class RuleHistory
{
    private const int MostWeeks = 8;

    /// <summary>One entry a rule, in the order of the method.</summary>
    /// <param name="weeks">The weeks up to the reviewed one.</param>
    /// <param name="findings">What the rules say of the reviewed week.</param>
    public static ImmutableArray<RuleHistoryEntry> Write(PastWeeks weeks, ImmutableArray<Finding> findings, RuleBook rules)
    {
        var first = Math.Max(0, weeks.Count - MostWeeks);
        return
        [
            .. findings.Zip(rules.Rules, (finding, rule) => new RuleHistoryEntry(
                finding.Rule,
                [
                    .. Enumerable.Range(first, weeks.Count - 1 - first).Select(week => new RuleHistoryEntry.Week(weeks[week].StartsOn, weeks.VerdictOf(rule, week))),
                    new RuleHistoryEntry.Week(weeks[weeks.Count - 1].StartsOn, finding.Verdict),
                ])
            {
                Name = finding.Name,
            }),
        ];
    }
}
