using System.Collections.Immutable;

namespace RideAudit.Plan;

/// <summary>A rider, or everything that is wrong with the file.</summary>
/// <param name="Rider">The rider; null when there are mistakes.</param>
/// <param name="Mistakes">Every mistake, in the order of the file.</param>
public sealed record RiderFileResult(Rider? Rider, ImmutableArray<RiderFileMistake> Mistakes);
