using System.Collections.Immutable;

namespace RideAudit.Document;

/// <summary>All rides of a folder.</summary>
/// <param name="Schema">Always <c>rideaudit-rides/1</c>.</param>
/// <param name="Rides">In order of start.</param>
/// <param name="Notices">As in a review.</param>
public sealed record RidesDocument(string Schema, ImmutableArray<RideEntry> Rides, ImmutableArray<NoticeEntry> Notices);
