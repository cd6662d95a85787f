using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Plan.Table;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Rules.Changes;

/// <summary>Which days of a week have room for a ride that was not ridden there.</summary>
/// <remarks>
/// Room is what the rider file says is free; without that, the days on which this rider rode in the week and the six weeks before it,
/// and for a ride of two hours or more the most that was ridden on that weekday. Where nothing is known of the weeks before, any day will do for a shorter ride.
/// Common practice, no source.
/// </remarks>
internal sealed class RidingDays
{
    private const int WeeksLookedAt = 6;
    private const double LongFromMinutes = 120;
    private readonly WeekFacts week;
    private readonly Rider rider;
    private readonly bool ill;
    private readonly bool[] mayAsk = new bool[7];
    private readonly bool[] ridden = new bool[7];
    private readonly double[] mostMinutes = new double[7];

    public RidingDays(WeekUnderReview review)
    {
        week = review.Week;
        rider = review.Plan.Rider;
        var calendar = new PlanCalendar(rider, PlanTable.Empty);
        ill = calendar.Week(week.StartsOn).Ill;
        var before = review.Past.Weeks;
        for (var day = 0; day < 7; day++)
        {
            mayAsk[day] = day < week.DaysThatCount && calendar.MayAskForMore(week.Days[day].Date);
            ridden[day] = before.IsEmpty;
            LookAt(week.Days[day], day);
            for (var back = 1; back <= Math.Min(WeeksLookedAt, before.Length); back++)
                LookAt(before[^back].Days[day], day);
        }
    }

    /// <summary>Whether a ride may be moved to a day.</summary>
    /// <param name="day">The day, 0 first.</param>
    public bool IsOpen(int day) => mayAsk[day] && IsRidingDay(day);

    /// <summary>Whether a day may be asked for more riding than there was.</summary>
    /// <param name="day">The day, 0 first.</param>
    public bool MayBeLonger(int day) => mayAsk[day] && !ill;

    /// <summary>Whether an edited day has room for what the edit puts there.</summary>
    /// <param name="edit">The edit, which asks for time on its new day.</param>
    /// <param name="rides">All rides of that day, the edited one among them.</param>
    public bool HasRoom(in RideEdit edit, List<RideFigures> rides)
    {
        if (edit.Now is not { } now)
            return true;
        double minutes = 0;
        var hard = false;
        foreach (var ride in rides)
        {
            minutes += AsShown.Minutes(ride.DurationSeconds);
            hard |= ride.IsHard && !ReferenceEquals(ride, now);
        }
        if (rider.MinutesFree is { } free)
            return minutes <= free.GetValueOrDefault(WeekdayOf(edit.To));
        var isLong = AsShown.Minutes(now.DurationSeconds) >= LongFromMinutes;
        return edit.Kind switch
        {
            ChangeKind.Move or ChangeKind.Swap => !isLong || (!hard && minutes <= mostMinutes[edit.To]),
            ChangeKind.RideLong => now.DurationSeconds <= edit.Was.DurationSeconds * (1 + ChangeClasses.MostLengthening) || minutes <= mostMinutes[edit.To],
            _ => true,
        };
    }

    private void LookAt(DayFacts facts, int day)
    {
        ridden[day] |= !facts.Rides.IsEmpty;
        mostMinutes[day] = Math.Max(mostMinutes[day], AsShown.Minutes(facts.RideSeconds));
    }

    private bool IsRidingDay(int day) =>
        rider.MinutesFree is { } free ? free.GetValueOrDefault(WeekdayOf(day)) > 0
        : !rider.Plan.Days.IsDefaultOrEmpty ? rider.Plan.Days.Contains(WeekdayOf(day))
        : ridden[day];

    private IsoDayOfWeek WeekdayOf(int day) => week.Days[day].Date.DayOfWeek;
}
