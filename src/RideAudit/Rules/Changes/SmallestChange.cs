using System.Collections.Immutable;

namespace RideAudit.Rules.Changes;

/// <summary>The smallest change of a week that would have kept a broken rule.</summary>
/// <param name="Changes">Empty when no change helps.</param>
/// <param name="Keeps">The rules it would have kept.</param>
/// <param name="Sentence">One sentence for the rider.</param>
public sealed record SmallestChange(ImmutableArray<RideChange> Changes, ImmutableArray<string> Keeps, string Sentence);
