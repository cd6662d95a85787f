using NodaTime;

namespace RideAudit.Rules.Changes;

/// <summary>One change to one ride.</summary>
/// <param name="Kind">What.</param>
/// <param name="Ride">The ride, by file.</param>
/// <param name="From">Its day.</param>
/// <param name="To">The day it would have had; the same day unless moved or swapped.</param>
/// <param name="Minutes">The new length when lengthened or ridden as the long ride, whole minutes; null otherwise.</param>
public sealed record RideChange(ChangeKind Kind, string Ride, LocalDate From, LocalDate To, double? Minutes);
