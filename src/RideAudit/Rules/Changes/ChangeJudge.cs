using System.Collections.Immutable;
using RideAudit.Weeks;

namespace RideAudit.Rules.Changes;

/// <summary>Judges candidates by the same rules as the week itself.</summary>
internal sealed class ChangeJudge
{
    private readonly Background _background;
    private readonly Rule _lead;
    private readonly bool _inFull;
    private readonly Measured[] _rules;

    /// <summary>Judges changes of a week.</summary>
    /// <param name="review">The week as ridden.</param>
    /// <param name="book">The rules.</param>
    /// <param name="lead">The rule that a change must keep.</param>
    /// <param name="inFull">The change must give the week what the rule asks for, and not only keep its letter.</param>
    public ChangeJudge(WeekUnderReview review, RuleBook book, Rule lead, bool inFull = false)
    {
        _inFull = inFull;
        _lead = lead;
        _background = new Background(review);
        var week = new JudgedWeek(review.Week, _background);
        _rules = [.. book.Rules.Select(r => new Measured(r, r.Decide(week).Verdict, r.IsChangeSought || r == lead))];
    }

    /// <summary>How many broken rules of those it looks at a changed week keeps; 0 when it does not keep the one it must, or worsens any.</summary>
    public int Gain(WeekFacts changed)
    {
        var week = new JudgedWeek(changed, _background);
        if (_inFull ? !_lead.IsCured(week) : _lead.Decide(week).Verdict != Verdict.Kept)
            return 0;
        var kept = 0;
        foreach (var (rule, before, counts) in _rules)
        {
            var after = rule.Decide(week).Verdict;
            if (Rank(after) > Rank(before))
                return 0;
            kept += counts && before == Verdict.Broken && after == Verdict.Kept ? 1 : 0;
        }
        return kept;
    }

    /// <summary>The broken rules of those it looks at that a changed week keeps, in the order of the method.</summary>
    public ImmutableArray<Rule> Keeps(WeekFacts changed)
    {
        var week = new JudgedWeek(changed, _background);
        return [.. _rules.Where(m => m.Counts && m.Before == Verdict.Broken && m.Rule.Decide(week).Verdict == Verdict.Kept).Select(m => m.Rule)];
    }

    /// <summary>Better to worse. A verdict that can no longer be given is worse than a rule kept.</summary>
    private static int Rank(Verdict verdict) => verdict switch
    {
        Verdict.Kept => 0,
        Verdict.NotJudged => 1,
        Verdict.Watch => 2,
        _ => 3,
    };

    /// <summary>A rule, what it said of the week as ridden, and whether a change is sought for it.</summary>
    private readonly record struct Measured(Rule Rule, Verdict Before, bool Counts);
}
