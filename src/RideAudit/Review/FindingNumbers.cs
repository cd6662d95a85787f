using RideAudit.Rules;

namespace RideAudit.Review;

/// <summary>Looks numbers up in a finding by name.</summary>
internal static class FindingNumbers
{
    /// <summary>The first value of that name among the occurrences; null without one.</summary>
    public static double? Number(this Finding finding, string name) =>
        finding.Occurrences.SelectMany(o => o.Numbers).FirstOrDefault(n => n.Name == name && n.Value is not null).Value;

    /// <summary>The smallest value of that name among the occurrences; null without one.</summary>
    public static double? Smallest(this Finding finding, string name) =>
        finding.Occurrences.SelectMany(o => o.Numbers).Where(n => n.Name == name).Min(n => n.Value);

    /// <summary>A limit by name; null without it.</summary>
    public static double? Limit(this Finding finding, string name) =>
        finding.Limits.FirstOrDefault(n => n.Name == name).Value;
}
