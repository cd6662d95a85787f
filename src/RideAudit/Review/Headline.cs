using System.Collections.Immutable;
using RideAudit.Formatting;
using RideAudit.Rules;

namespace RideAudit.Review;

/// <summary>Puts the week's verdict in one sentence: what guards the rider first, then what was missed; never that the plan was kept where much could not be judged.</summary>
internal static class Headline
{
    /// <summary>Rules to watch that have said the same for so many weeks before no longer lead.</summary>
    private const int WeeksThatTire = 2;

    public static string Of(WeekUnderReview week, ImmutableArray<Finding> ranked, ImmutableArray<Finding> findings)
    {
        if (ExceptedWeek.Headline(week, ranked) is { } excepted)
            return excepted;
        if (week.Week.RideCount == 0)
            return week.Week.Finished ? "No rides this week." : "No rides yet this week.";
        if (findings.All(f => f.Verdict == Verdict.NotJudged))
            return "Too little is known to judge this week.";
        var broken = ranked.Where(f => f.Verdict == Verdict.Broken).ToArray();
        if (broken.Length > 0)
            return Broken(broken);
        var watch = ranked.FirstOrDefault(f => f.WeeksInARow < WeeksThatTire);
        if (Unjudged.IsMuch(week.Week.Finished, findings))
            return Unjudged.Headline(watch, findings);
        if (watch is not null)
            return week.Week.Finished ? $"The plan was kept; worth a look: {watch.Headline}." : $"So far the week keeps the plan; worth a look: {watch.Headline}.";
        if (!ranked.IsEmpty)
            return "The plan was kept, and nothing new is worth a look.";
        return week.Week.Finished ? "The week kept the plan." : "So far the week keeps the plan.";
    }

    private static string Broken(Finding[] broken)
    {
        var second = broken.Skip(1).FirstOrDefault(f => !SameGroup(f, broken[0]));
        var first = Shown.Capital(broken[0].Headline ?? broken[0].Name);
        return second is null ? first + "." : $"{first}, and {second.Headline}.";
    }

    private static bool SameGroup(Finding a, Finding b) => a.Standing.Group != RuleGroup.None && a.Standing.Group == b.Standing.Group;
}
