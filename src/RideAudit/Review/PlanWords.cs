using System.Collections.Immutable;
using RideAudit.Formatting;
using RideAudit.Held;
using RideAudit.Rules;

namespace RideAudit.Review;

/// <summary>Says whose a broken rule is, without praise or blame.</summary>
internal static class PlanWords
{
    private const int MostNamed = 2;

    /// <summary>What the plan itself breaks; null where it breaks nothing.</summary>
    public static string? OfPlan(ImmutableArray<Finding> breaks)
    {
        if (breaks.IsEmpty)
            return null;
        var rules = Shown.Count(breaks.Length, "rule");
        return $"Ridden exactly as planned, the week would break {rules}, which is the plan’s doing: {string.Join(' ', breaks.Select(b => b.Sentence))}";
    }

    /// <summary>What a change did to the rules; null where there is nothing to say.</summary>
    /// <param name="against">The rules it put at risk, in the order of the method.</param>
    public static string? OfChange(HeldLine line, ImmutableArray<JudgedByPlan.Loss> against)
    {
        if (against.IsEmpty)
            return line.Outcomes is [HeldOutcome.Moved] ? "No rule is the worse for it." : null;
        return $"That {Shown.List(against.Take(MostNamed).Select(l => l.Effect))}.";
    }
}
