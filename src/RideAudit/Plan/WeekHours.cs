using NodaTime;

namespace RideAudit.Plan;

/// <summary>Hours of one past week: what planned hours are derived from, known before any ride has a kind.</summary>
/// <param name="StartsOn">The week's first day.</param>
/// <param name="Hours">Timer time ridden, h.</param>
/// <param name="Excepted">The rider file excepts the week, for any reason.</param>
/// <param name="FirstRideOn">For the week of the first ride of all, its day; null for every other week.</param>
public readonly record struct WeekHours(LocalDate StartsOn, double Hours, bool Excepted = false, LocalDate? FirstRideOn = null)
{
    /// <summary>A first week whose first ride is later than its second day: a part of a week says nothing of a whole one.</summary>
    public bool BeginsLate => FirstRideOn > StartsOn.PlusDays(1);
}
