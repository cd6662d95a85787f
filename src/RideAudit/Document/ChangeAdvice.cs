using System.Text.Json.Serialization;
using RideAudit.Rules;

namespace RideAudit.Document;

/// <summary>One of the things to change on page one.</summary>
/// <param name="Rule">The rule it comes from.</param>
/// <param name="Title">What to do, one short sentence.</param>
/// <param name="Detail">The numbers, the evidence and the source, one or two sentences.</param>
public sealed record ChangeAdvice(string Rule, string Title, string Detail)
{
    /// <summary>What the rule came to.</summary>
    [JsonIgnore]
    public Verdict Verdict { get; init; } = Verdict.Watch;
}
