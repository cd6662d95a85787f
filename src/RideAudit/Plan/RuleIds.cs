using System.Collections.Immutable;

namespace RideAudit.Plan;

/// <summary>The ids of the rules, as a rider file may name them, in the order of the method.</summary>
internal static class RuleIds
{
    /// <summary>All of them.</summary>
    public static ImmutableArray<string> All { get; } =
    [
        "hard-day-spacing", "hard-day-count", "rest-days", "rest-after-load", "long-ride", "endurance-volume", "intensity-split",
        "weekly-hours", "chronic-ramp", "weekly-growth", "longest-ride-jump", "growth-is-endurance", "easy-rides-easy", "lighter-week",
        "monotony", "long-ride-first", "return-to-riding", "threshold-fresh",
    ];
}
