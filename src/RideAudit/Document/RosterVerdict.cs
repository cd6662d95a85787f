using RideAudit.Rules;

namespace RideAudit.Document;

/// <summary>What one rule says of one rider's week.</summary>
/// <param name="Rule">The rule, by id.</param>
/// <param name="Name">Its name.</param>
/// <param name="Verdict">The verdict.</param>
public sealed record RosterVerdict(string Rule, string Name, Verdict Verdict);
