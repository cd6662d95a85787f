using NodaTime;

namespace RideAudit.Plan;

/// <summary>One dated line of the rider file’s planned hours.</summary>
/// <param name="From">In force for weeks that begin on this date or later.</param>
/// <param name="Weekly">Planned hours a week, h.</param>
public sealed record HoursEntry(LocalDate From, double Weekly);
