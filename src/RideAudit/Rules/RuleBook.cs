using System.Collections.Immutable;

namespace RideAudit.Rules;

/// <summary>All rules, in the order of the method.</summary>
public static class RuleBook
{
    /// <summary>The rules.</summary>
    public static ImmutableArray<IRule> All { get; } = [];

    /// <summary>Judges a week by every rule.</summary>
    public static ImmutableArray<Finding> Judge(WeekUnderReview week) => [.. All.Select(r => r.Judge(week))];
}
