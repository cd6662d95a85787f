using NodaTime;

namespace RideAudit.Plan;

/// <summary>A ride that stands every week, whatever is laid out around it.</summary>
/// <param name="Day">Its weekday.</param>
/// <param name="Kind">What it usually is; neither rest nor event.</param>
/// <param name="Minutes">Its length, min.</param>
/// <param name="Session">Its name; null without one.</param>
public sealed record FixedRide(IsoDayOfWeek Day, PlannedKind Kind, int Minutes, string? Session);
