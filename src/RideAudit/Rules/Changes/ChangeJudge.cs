using System.Collections.Immutable;
using RideAudit.Weeks;

namespace RideAudit.Rules.Changes;

/// <summary>Judges candidates by the same rules as the week itself.</summary>
internal sealed class ChangeJudge
{
    private readonly RuleBook book;
    private readonly Background background;
    private readonly List<(Rule Rule, Verdict Before)> sought = [];
    private readonly List<(Rule Rule, Verdict Before)> others = [];

    public ChangeJudge(WeekUnderReview review, RuleBook book)
    {
        this.book = book;
        background = new Background(review);
        var week = new JudgedWeek(review.Week, background);
        foreach (var rule in book.Rules)
            (rule.IsChangeSought ? sought : others).Add((rule, rule.Decide(week).Verdict));
    }

    /// <summary>The rules it looks at that are broken, in the order of the method.</summary>
    public IEnumerable<Rule> Broken => sought.Where(w => w.Before == Verdict.Broken).Select(w => w.Rule);

    /// <summary>How many broken rules a changed week keeps; 0 when it keeps none of those looked at or worsens any.</summary>
    public int Gain(WeekFacts changed)
    {
        var week = new JudgedWeek(changed, background);
        var kept = Kept(sought, week);
        if (kept is null or 0)
            return 0;
        return Kept(others, week) is { } more ? kept.Value + more : 0;
    }

    /// <summary>The broken rules that a changed week keeps, in the order of the method.</summary>
    public ImmutableArray<Rule> Keeps(WeekFacts changed)
    {
        var week = new JudgedWeek(changed, background);
        var kept = sought.Concat(others).Where(w => w.Before == Verdict.Broken && w.Rule.Decide(week).Verdict == Verdict.Kept).Select(w => w.Rule).ToHashSet();
        return [.. book.Rules.Where(kept.Contains)];
    }

    /// <summary>How many broken rules are kept now; null when a verdict is worse than before.</summary>
    private static int? Kept(List<(Rule Rule, Verdict Before)> rules, JudgedWeek week)
    {
        var kept = 0;
        foreach (var (rule, before) in rules)
        {
            var after = rule.Decide(week).Verdict;
            if (Rank(after) > Rank(before))
                return null;
            kept += before == Verdict.Broken && after == Verdict.Kept ? 1 : 0;
        }
        return kept;
    }

    /// <summary>Better to worse. A verdict that can no longer be given is worse than a rule kept.</summary>
    private static int Rank(Verdict verdict) => verdict switch
    {
        Verdict.Kept => 0,
        Verdict.NotJudged => 1,
        Verdict.Watch => 2,
        _ => 3,
    };
}
