using System.Collections.Immutable;

namespace RideAudit.Rules;

/// <summary>Orders findings by how much they matter to the rider: broken before watch, then as each rule ranks itself.</summary>
internal static class Ranking
{
    /// <summary>Broken and watched rules, most serious first.</summary>
    public static ImmutableArray<Finding> MostSerious(ImmutableArray<Finding> findings) =>
        [.. findings.Where(f => f.Verdict is Verdict.Broken or Verdict.Watch).OrderByDescending(f => f.Verdict).ThenBy(f => f.Standing.Rank)];
}
