using RideAudit.Weeks;

namespace RideAudit.Next;

/// <summary>One day of a layout while it is searched for.</summary>
/// <param name="Kind">What the day is to be.</param>
/// <param name="Minutes">Timer time, min; 0 for a rest day.</param>
/// <param name="WorkMinutes">Of it, minutes above the low band.</param>
internal readonly record struct PlannedDay(DayKind Kind, int Minutes, int WorkMinutes = 0)
{
    public static PlannedDay Rest => new(DayKind.Rest, 0);

    public bool IsHard => Kind is DayKind.High or DayKind.Threshold;
}
