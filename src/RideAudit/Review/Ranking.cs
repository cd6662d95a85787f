using System.Collections.Immutable;
using RideAudit.Rules;

namespace RideAudit.Review;

/// <summary>Orders findings by how much they matter to the rider: broken before watch, what protects before what refines.</summary>
internal static class Ranking
{
    private static readonly string[] MostSeriousFirst =
    [
        "hard-day-spacing", "rest-after-load", "hard-day-count", "rest-days", "long-ride-first", "long-ride", "endurance-volume",
        "intensity-split", "chronic-ramp", "growth-is-endurance", "easy-rides-easy", "longest-ride-jump", "weekly-growth", "monotony",
        "lighter-week", "weekly-hours", "threshold-fresh",
    ];

    /// <summary>Broken and watched rules, most serious first.</summary>
    public static ImmutableArray<Finding> MostSerious(ImmutableArray<Finding> findings) =>
        [.. findings
            .Where(f => f.Verdict is Verdict.Broken or Verdict.Watch)
            .OrderByDescending(f => f.Verdict)
            .ThenBy(f => IsFarBelowPlan(f) ? -1 : Array.IndexOf(MostSeriousFirst, f.Rule) is var at and >= 0 ? at : MostSeriousFirst.Length)];

    /// <summary>Less than half the hours: nothing else of such a week says as much.</summary>
    private static bool IsFarBelowPlan(Finding finding) =>
        finding.Rule == "weekly-hours" && finding.Verdict == Verdict.Broken && finding.Number("hours") < finding.Number("planned_hours") / 2;

    /// <summary>The same without the missing long ride where the long ride in place of a hard day is asked for already.</summary>
    public static IEnumerable<Finding> ToChange(ImmutableArray<Finding> mostSerious) =>
        mostSerious.Where(f => f.Rule != "long-ride" || !mostSerious.Any(o => o.Rule == "long-ride-first"));
}
