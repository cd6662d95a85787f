using System.Collections.Immutable;
using NodaTime;

namespace RideAudit.Document;

/// <summary>Every rider of a roster, those who need the coach first at the top.</summary>
/// <param name="Schema">Always <c>rideaudit-roster/1</c>.</param>
/// <param name="AsOf">The date asked for, or today.</param>
/// <param name="Riders">In order of risk to the rider.</param>
public sealed record RosterDocument(string Schema, LocalDate AsOf, ImmutableArray<RosterEntry> Riders)
{
    /// <summary>Findings of several riders, most serious first.</summary>
    public ImmutableArray<RosterShared> Shared { get; init; } = [];
}
