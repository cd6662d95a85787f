using NodaTime;
using RideAudit.Figures;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Rules.Changes;

/// <summary>The sessions a coach would change last: two high days and the long ride.</summary>
internal sealed class KeySessions(WeekFacts week)
{
    private const int HighDays = 2;
    private readonly (int High, bool Long) _all = Of(week, []);

    /// <summary>How many of them a change touches, 0 to 3. Of three high days one may be touched; a hard ride put on the long ride’s day touches that.</summary>
    /// <param name="edits">The change.</param>
    public int Touched(ReadOnlySpan<RideEdit> edits)
    {
        var (high, longRide) = Of(week, edits);
        return _all.High - high + (_all.Long && !longRide ? 1 : 0);
    }

    private static (int High, bool Long) Of(WeekFacts week, ReadOnlySpan<RideEdit> edits)
    {
        var (high, longRide) = (0, false);
        foreach (var day in week.Days)
        {
            var isHigh = false;
            foreach (var ride in day.Rides)
            {
                if (IsEdited(ride, edits))
                    continue;
                isHigh |= ride.Kind == RideKind.High;
                longRide |= (ride.Kind == RideKind.Long || ride.LongEnough) && !IsJoined(day.Date, edits);
            }
            high += isHigh ? 1 : 0;
        }
        return (Math.Min(HighDays, high), longRide);
    }

    private static bool IsJoined(LocalDate date, ReadOnlySpan<RideEdit> edits)
    {
        foreach (var edit in edits)
        {
            if (edit.Was.Date != date && edit.Now is { IsHard: true } now && now.Date == date)
                return true;
        }
        return false;
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
}
