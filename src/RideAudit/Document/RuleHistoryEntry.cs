using System.Collections.Immutable;
using System.Text.Json.Serialization;
using NodaTime;
using RideAudit.Rules;

namespace RideAudit.Document;

/// <summary>One rule over the last weeks: told for the first time, or a habit.</summary>
/// <param name="Rule">Its id.</param>
/// <param name="Weeks">Up to eight weeks, oldest first, the reviewed one last.</param>
public sealed record RuleHistoryEntry(string Rule, ImmutableArray<RuleHistoryEntry.Week> Weeks)
{
    /// <summary>The rule's name.</summary>
    [JsonIgnore]
    public string Name { get; init; } = "";

    /// <summary>What the rule says of one week, judged against that week's own plan.</summary>
    /// <param name="StartsOn">First day.</param>
    public readonly record struct Week(LocalDate StartsOn, Verdict Verdict);
}
