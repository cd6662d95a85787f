using System.Collections.Immutable;
using RideAudit.Rules;

namespace RideAudit.Review;

/// <summary>Says of a week what could not be judged, where that is much.</summary>
internal static class Unjudged
{
    private const double MuchOfWhatMatters = 0.4;

    /// <summary>More than half of all, or two fifths of what guards the rider, of easy hours and of intensity, has no verdict. A coach's setting aside is none of it, nor that a week is not over.</summary>
    /// <param name="finished">The week is over.</param>
    /// <param name="findings">Its findings.</param>
    public static bool IsMuch(bool finished, ImmutableArray<Finding> findings)
    {
        if (!finished)
            return false;
        var applied = findings.Where(f => f.SetAside is null).ToArray();
        return IsMore(applied, 0.5) || IsMore([.. applied.Where(Matters)], MuchOfWhatMatters);
    }

    /// <summary>The headline of such a week.</summary>
    /// <param name="watch">The finding to watch that matters most; null without one.</param>
    public static string Headline(Finding? watch, ImmutableArray<Finding> findings)
    {
        var open = findings.Where(f => f.Verdict == Verdict.NotJudged && f.SetAside is null).OrderBy(f => f.Standing.Rank).ToArray();
        var reason = open.GroupBy(f => f.Reason).OrderByDescending(g => g.Count()).ThenBy(g => g.Min(f => f.Standing.Rank)).First().Key;
        var look = watch is null ? "" : $" Worth a look: {watch.Headline}.";
        return $"Much of this week could not be judged: {reason}.{look}";
    }

    private static bool Matters(Finding finding) => finding.Standing.Protects || finding.Standing.Group is RuleGroup.Endurance or RuleGroup.Intensity;

    private static bool IsMore(Finding[] findings, double share) => findings.Count(f => f.Verdict == Verdict.NotJudged) > share * findings.Length;
}
