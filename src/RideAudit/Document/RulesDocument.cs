using System.Collections.Immutable;

namespace RideAudit.Document;

/// <summary>The rules in force for a rider.</summary>
/// <param name="Schema">Always <c>rideaudit-rules/1</c>.</param>
/// <param name="Rules">In the order of the method.</param>
public sealed record RulesDocument(string Schema, ImmutableArray<RuleEntry> Rules);
