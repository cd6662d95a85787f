using NodaTime;

namespace RideAudit.Plan;

/// <summary>Days out in a row.</summary>
/// <param name="From">The first.</param>
/// <param name="To">The last.</param>
/// <param name="Ill">At least one of them was an ill day.</param>
internal readonly record struct Absence(LocalDate From, LocalDate To, bool Ill)
{
    /// <summary>Their number, 1 or more.</summary>
    public int Days => Period.DaysBetween(From, To) + 1;
}
