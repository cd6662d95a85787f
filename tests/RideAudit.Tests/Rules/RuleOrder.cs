namespace RideAudit.Tests.Rules;

/// <summary>The rules as the method lists them.</summary>
internal static class RuleOrder
{
    public static string[] Ids { get; } =
    [
        "hard-day-spacing", "hard-day-count", "rest-days", "rest-after-load", "long-ride", "endurance-volume", "intensity-split", "weekly-hours",
        "chronic-ramp", "weekly-growth", "longest-ride-jump", "growth-is-endurance", "easy-rides-easy", "lighter-week", "monotony", "long-ride-first",
        "return-to-riding", "threshold-fresh",
    ];
}
