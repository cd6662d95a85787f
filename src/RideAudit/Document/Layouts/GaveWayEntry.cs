using System.Collections.Immutable;

namespace RideAudit.Document.Layouts;

/// <summary>Rules that no layout of a week could keep.</summary>
/// <param name="Rules">Their ids, in the order of the rules.</param>
/// <param name="Sentence">Which they are and why, in one sentence.</param>
public sealed record GaveWayEntry(ImmutableArray<string> Rules, string Sentence);
