using System.Collections.Immutable;

namespace RideAudit.Rules.Changes;

/// <summary>Finds the smallest change of a week that would have kept the rule its review leads with, as a coach would make it.</summary>
/// <remarks>
/// It is sought where a rule on return, spacing, hard days, rest days, rest after load or the long ride is broken.
/// The classes, smallest first: one ride to another day; two rides' days swapped; one hard ride ridden easy; one easy ride left out;
/// one easy ride lengthened; one hard ride ridden as the long ride; two of these.
/// The first class with a candidate that keeps the leading rule and worsens none wins; in it the one that keeps most of the rules looked at,
/// then leaves the key sessions alone, then moves the least stress, then has the earlier new date.
/// </remarks>
internal static class ChangeSearch
{
    /// <summary>Searches the classes in order; every candidate is judged by the same rules.</summary>
    /// <param name="week">The week as ridden.</param>
    /// <param name="book">The rules; null: the method’s.</param>
    /// <returns>Null when no rule it looks at is broken, or nothing helps and the leading rule asks for more riding; no changes and a sentence when nothing helps another.</returns>
    public static SmallestChange? Find(WeekUnderReview week, ImmutableArray<Finding> findings, RuleBook? book = null)
    {
        var rules = (book ?? RuleBook.Standard).Rules;
        var broken = RuleBook.MostSerious(findings).Where(f => f.Verdict == Verdict.Broken).Select(f => rules.FirstOrDefault(r => r.Id == f.Rule)).OfType<Rule>().ToArray();
        if (!broken.Any(r => r.IsChangeSought))
            return null;
        var lead = broken[0];
        var classes = new ChangeClasses(week);
        // What the rule asks for comes before its letter: of three hard days without a long ride, one ridden easy is no long ride.
        foreach (var inFull in (ReadOnlySpan<bool>)[true, false])
        {
            var judge = new ChangeJudge(week, book ?? RuleBook.Standard, lead, inFull);
            foreach (var candidates in classes.InOrder)
            {
                if (Best(candidates, judge) is not { } best)
                    continue;
                var keeps = judge.Keeps(best.Week);
                return new SmallestChange(best.Changes, [.. keeps.Select(r => r.Id)], ChangeSentence.For(best.Changes, keeps, week.Week));
            }
        }
        // Missing hours and easy riding are told by what is missing: that no change of what was ridden makes up for it goes without saying.
        return lead.IsChangeSought ? new SmallestChange([], [], ChangeSentence.None(lead, classes.TriesPairs)) : null;
    }

    /// <summary>The smallest change of one ride that keeps a rule and worsens none, without the rides of a change already made; null when there is none.</summary>
    /// <param name="week">The week as ridden.</param>
    /// <param name="taken">Rides that are spoken for, by file.</param>
    /// <param name="book">The rules.</param>
    internal static string? OneRide(WeekUnderReview week, Rule rule, IReadOnlyCollection<string> taken, RuleBook book)
    {
        var judge = new ChangeJudge(week, book, rule, inFull: true);
        foreach (var candidates in new ChangeClasses(week).OneRide(taken))
        {
            if (Best(candidates, judge) is { } best)
                return ChangeSentence.For(best.Changes, [rule], week.Week);
        }
        return null;
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
