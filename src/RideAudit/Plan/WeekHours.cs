using NodaTime;

namespace RideAudit.Plan;

/// <summary>Hours of one past week: what planned hours are derived from, known before any ride has a kind.</summary>
/// <param name="StartsOn">The week's first day.</param>
/// <param name="Hours">Timer time ridden, h.</param>
/// <param name="Excepted">The rider file excepts the week, for any reason.</param>
public readonly record struct WeekHours(LocalDate StartsOn, double Hours, bool Excepted = false);
