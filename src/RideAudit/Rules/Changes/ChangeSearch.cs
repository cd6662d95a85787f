using System.Collections.Immutable;

namespace RideAudit.Rules.Changes;

/// <summary>Finds the smallest change of a week that would have kept a broken rule.</summary>
/// <remarks>
/// It looks at the rules that say a change is sought for them: those on spacing, hard days, rest days, rest after load, and the long ride.
/// The classes, smallest first: one ride on another day; two rides' days swapped; two rides each on another day; one hard ride eased; one easy ride lengthened.
/// The first class with a candidate that keeps one of those and worsens no rule wins; in it the one that keeps most,
/// then the least moved stress, then the earlier new date.
/// </remarks>
public static class ChangeSearch
{
    /// <summary>Searches the classes in order; every candidate is judged by the same rules.</summary>
    /// <param name="week">The week as ridden.</param>
    /// <param name="findings">Its findings.</param>
    /// <param name="book">The rules; null: the method’s.</param>
    /// <returns>Null when no rule it looks at is broken; no changes and a sentence when nothing helps.</returns>
    public static SmallestChange? Find(WeekUnderReview week, ImmutableArray<Finding> findings, RuleBook? book = null)
    {
        if (!findings.Any(f => f.Verdict == Verdict.Broken))
            return null;
        var judge = new ChangeJudge(week, book ?? RuleBook.Standard);
        var broken = judge.Broken.ToImmutableArray();
        if (broken.IsEmpty)
            return null;
        foreach (var candidates in new ChangeClasses(week.Week, week.Plan).InOrder)
        {
            if (Best(candidates, judge) is not { } best)
                continue;
            var keeps = judge.Keeps(best.Week);
            return new SmallestChange(best.Changes, [.. keeps.Select(r => r.Id)], ChangeSentence.For(best.Changes, keeps, week.Week));
        }
        return new SmallestChange([], [], ChangeSentence.None(broken));
    }

    private static ChangeCandidate? Best(IEnumerable<ChangeCandidate> candidates, ChangeJudge judge)
    {
        ChangeCandidate? best = null;
        var most = 0;
        foreach (var candidate in candidates)
        {
            var gain = judge.Gain(candidate.Week);
            if (gain == 0 || gain < most)
                continue;
            if (gain > most || ChangeCandidate.Compare(candidate, best!) < 0)
                (best, most) = (candidate, gain);
        }
        return best;
    }
}
