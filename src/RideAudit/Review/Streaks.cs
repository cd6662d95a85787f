using System.Collections.Immutable;
using RideAudit.Plan;
using RideAudit.Rules;
using RideAudit.Weeks;

namespace RideAudit.Review;

/// <summary>Counts for how many weeks before a finding stood as it stands now, so that a review need not say the same for ever.</summary>
internal static class Streaks
{
    private const int MostWeeks = 8;

    private static readonly string[] Ordinals = ["second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth"];

    /// <summary>The findings with the weeks before in which the same rule was met no better, and their sentences saying so from the second week on.</summary>
    /// <param name="findings">The week’s findings.</param>
    /// <param name="book">The rules they come from.</param>
    /// <param name="weeks">Every week up to the judged one, oldest first.</param>
    /// <param name="plan">The judged week’s plan: the rider file, for the plans of the weeks before.</param>
    public static ImmutableArray<Finding> Count(ImmutableArray<Finding> findings, RuleBook book, ImmutableArray<WeekFacts> weeks, PlanInForce plan)
    {
        var judged = new List<JudgedWeek>();
        return [.. findings.Select(f => With(f, book.Rules.FirstOrDefault(r => r.Id == f.Rule), WeekBefore))];

        JudgedWeek? WeekBefore(int back)
        {
            while (judged.Count < back && weeks.Length - 1 > judged.Count)
                judged.Add(Judged(weeks, weeks.Length - 2 - judged.Count, plan.Rider));
            return back <= judged.Count ? judged[back - 1] : null;
        }
    }

    private static Finding With(Finding finding, Rule? rule, Func<int, JudgedWeek?> weekBefore)
    {
        if (rule is null || finding.Verdict is not (Verdict.Watch or Verdict.Broken))
            return finding;
        var count = 0;
        while (count < MostWeeks && weekBefore(count + 1) is { } week && rule.Decide(week).Verdict >= finding.Verdict)
            count++;
        return count == 0 ? finding : finding with { WeeksInARow = count, Sentence = $"{finding.Sentence} {InWords(count)}" };
    }

    private static string InWords(int before) =>
        before == MostWeeks ? "It is so for more than eight weeks now." : $"It is the {Ordinals[before - 1]} week in a row.";

    private static JudgedWeek Judged(ImmutableArray<WeekFacts> weeks, int index, Rider rider)
    {
        var hours = weeks.Take(index).Select((w, i) => new WeekHours(
            w.StartsOn, w.Hours, !WeekExceptions.For(rider.Exceptions, w.StartsOn).None, i == 0 ? w.FirstRideOn : null));
        var plan = PlanInForce.For(rider, [.. hours], weeks[index].StartsOn);
        return new JudgedWeek(new WeekUnderReview(weeks[index], new Past(weeks[..index]), plan));
    }
}
