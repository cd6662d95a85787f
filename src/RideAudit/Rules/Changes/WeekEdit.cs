using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Rules.Changes;

/// <summary>Builds a week again with some of its rides elsewhere or otherwise.</summary>
/// <remarks>
/// What no coach would ask for is left out, common practice: two hard rides on one day, two rides put on one day to pass for a long ride,
/// a ride of two hours or more onto a hard day or one without room for it,
/// and a ride within an hour of another on its new day, where the two would be one ride.
/// </remarks>
internal sealed class WeekEdit(WeekFacts week, Limits limits, RidingDays room)
{
    private static readonly Duration Clearance = Duration.FromMinutes(60);

    /// <summary>The week with some rides in place of others; null when the result is not one a coach would ask for.</summary>
    /// <param name="edits">Each ride as it was and as it would be, with both days.</param>
    public WeekFacts? With(params ReadOnlySpan<RideEdit> edits)
    {
        var days = week.Days.ToBuilder();
        for (var day = 0; day < days.Count; day++)
        {
            if (!IsTouched(day, edits))
                continue;
            var rides = RidesOf(day, edits);
            if (!IsPossible(day, rides, edits))
                return null;
            days[day] = DayFacts.Build(days[day].Date, rides, days[day].OtherSeconds, limits);
        }
        return WeekFacts.Build(days.MoveToImmutable(), week.LoadBefore, week.FirstRideOn, week.Exception, week.DaysThatCount);
    }

    private static bool IsTouched(int day, ReadOnlySpan<RideEdit> edits)
    {
        foreach (var edit in edits)
        {
            if (edit.From == day || edit.To == day)
                return true;
        }
        return false;
    }

    private List<RideFigures> RidesOf(int day, ReadOnlySpan<RideEdit> edits)
    {
        var rides = new List<RideFigures>(4);
        foreach (var ride in week.Days[day].Rides)
        {
            if (!IsEdited(ride, edits))
                rides.Add(ride);
        }
        foreach (var edit in edits)
        {
            if (edit.To == day && edit.Now is { } now)
                rides.Add(now);
        }
        return rides;
    }

    private static bool IsEdited(RideFigures ride, ReadOnlySpan<RideEdit> edits)
    {
        foreach (var edit in edits)
        {
            if (ReferenceEquals(edit.Was, ride))
                return true;
        }
        return false;
    }

    private bool IsPossible(int day, List<RideFigures> rides, ReadOnlySpan<RideEdit> edits)
    {
        foreach (var edit in edits)
        {
            if (edit.To != day || edit.TakesNoMoreTime)
                continue;
            if (!room.HasRoom(edit, rides))
                return false;
            foreach (var other in rides)
            {
                if (!ReferenceEquals(other, edit.Now) && (Collide(other, edit.Now!) || (other.IsHard && edit.Now!.IsHard) || MakeALongRide(other, edit.Now!)))
                    return false;
            }
        }
        return true;
    }

    private bool MakeALongRide(RideFigures a, RideFigures b) =>
        !IsLong(a) && !IsLong(b) && KindOfRide.MeetsLength(a.DurationSeconds + b.DurationSeconds, limits);

    private static bool IsLong(RideFigures ride) => ride.LongEnough || ride.Kind == RideKind.Long;

    private static bool Collide(RideFigures a, RideFigures b) =>
        a.StartsAt.ToInstant() <= b.EndsAt.ToInstant() + Clearance && b.StartsAt.ToInstant() <= a.EndsAt.ToInstant() + Clearance;
}
