using System.Collections.Immutable;
using RideAudit.Document;
using RideAudit.Plan.Table;
using RideAudit.Rules;
using RideAudit.Weeks;

namespace RideAudit.Review;

/// <summary>Judges the weeks before the reviewed one, each against its own plan.</summary>
internal static class RuleHistory
{
    private const int MostWeeks = 8;

    /// <summary>One entry a rule, in the order of the method.</summary>
    /// <param name="book">The weeks up to the reviewed one.</param>
    /// <param name="findings">What the rules say of the reviewed week.</param>
    /// <param name="table">The plan tables.</param>
    public static ImmutableArray<RuleHistoryEntry> Write(Workbook book, ImmutableArray<Finding> findings, RuleBook rules, PlanTable table)
    {
        var first = Math.Max(0, book.Weeks.Length - MostWeeks);
        var judged = new List<(WeekFacts Week, ImmutableArray<Finding> Findings)>();
        for (var week = first; week < book.Weeks.Length - 1; week++)
            judged.Add((book.Weeks[week], rules.Judge(new WeekUnderReview(book.Weeks[week], new Past(book.Weeks[..week]), PlansByWeek.Of(book, week, table)))));
        judged.Add((book.Week, findings));
        return
        [
            .. findings.Select((finding, rule) => new RuleHistoryEntry(
                finding.Rule, [.. judged.Select(w => new RuleHistoryEntry.Week(w.Week.StartsOn, w.Findings[rule].Verdict))])
            {
                Name = finding.Name,
            }),
        ];
    }
}
