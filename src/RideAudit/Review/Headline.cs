using System.Collections.Immutable;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Rules;

namespace RideAudit.Review;

/// <summary>Puts the week's verdict in one sentence.</summary>
internal static class Headline
{
    public static string Of(WeekUnderReview week, ImmutableArray<Finding> ranked, ImmutableArray<Finding> findings)
    {
        if (week.Week.RideCount == 0)
            return week.Week.Finished ? "No rides this week." : "No rides yet this week.";
        if (findings.All(f => f.Verdict == Verdict.NotJudged))
            return "Too little is known to judge this week.";
        if (ranked.IsEmpty && findings.Count(f => f.Verdict == Verdict.NotJudged) > findings.Length / 2)
            return "Little of this week could be judged; what could was kept.";
        if (ranked.IsEmpty)
            return week.Week.Finished ? "The week kept the plan." : "So far the week keeps the plan.";
        if (week.Week.Exception is ExceptionKind.Away)
            return $"A week away, with {Shown.Count(week.Week.RideCount, "ride")}.";
        var broken = ranked.Where(f => f.Verdict == Verdict.Broken).ToArray();
        if (broken.Length == 0)
            return $"The plan was kept; worth a look: {ranked[0].Headline}.";
        var second = broken.Skip(1).FirstOrDefault(f => !SameGroup(f, broken[0]));
        var first = Shown.Capital(broken[0].Headline ?? broken[0].Name);
        return second is null ? first + "." : $"{first}, and {second.Headline}.";
    }

    private static bool SameGroup(Finding a, Finding b) => a.Standing.Group != RuleGroup.None && a.Standing.Group == b.Standing.Group;
}
