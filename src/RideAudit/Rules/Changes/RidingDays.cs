using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
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
    private readonly WeekFacts _week;
    private readonly Rider _rider;
    private readonly bool _ill;
    private readonly bool[] _mayAsk = new bool[7];
    private readonly bool[] _events = new bool[7];
    private readonly bool[] _ridden = new bool[7];
    private readonly double[] _mostMinutes = new double[7];

    public RidingDays(WeekUnderReview review)
    {
        _week = review.Week;
        _rider = review.Plan.Rider;
        var background = new Background(review);
        var calendar = background.Calendar;
        _ill = background.Exceptions.Ill;
        var before = review.Past.Weeks;
        for (var day = 0; day < 7; day++)
        {
            _mayAsk[day] = day < _week.DaysThatCount && calendar.MayAskForMore(_week.Days[day].Date);
            _events[day] = calendar.KindOn(_week.Days[day].Date) == ExceptionKind.Event;
            _ridden[day] = before.IsEmpty;
            LookAt(_week.Days[day], day);
            for (var back = 1; back <= Math.Min(WeeksLookedAt, before.Length); back++)
                LookAt(before[^back].Days[day], day);
        }
    }

    /// <summary>Whether a ride may be moved to a day.</summary>
    /// <param name="day">The day, 0 first.</param>
    public bool IsOpen(int day) => _mayAsk[day] && IsRidingDay(day);

    /// <summary>Whether a day may be asked for more riding than there was.</summary>
    /// <param name="day">The day, 0 first.</param>
    public bool MayBeLonger(int day) => _mayAsk[day] && !_ill;

    /// <summary>Whether a ride is one that stands: the event itself.</summary>
    /// <param name="day">Its day, 0 first.</param>
    public bool IsEvent(int day) => _events[day];

    /// <summary>Whether a ride may be put on another day: not the longest ride of a day on which one stands every week.</summary>
    /// <param name="ride">The ride.</param>
    public bool MayMove(RideFigures ride) =>
        !_rider.FixedRides.Any(f => f.Day == ride.Date.DayOfWeek) || _week.Rides.Any(r => r.Date == ride.Date && r.DurationSeconds > ride.DurationSeconds);

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
        var moves = edit.Kind is ChangeKind.Move or ChangeKind.Swap;
        var isLong = AsShown.Minutes(now.DurationSeconds) >= LongFromMinutes;
        if (moves && isLong && hard)
            return false;
        if (_rider.MinutesFree is { } free)
            return minutes <= free.GetValueOrDefault(WeekdayOf(edit.To));
        return edit.Kind switch
        {
            _ when moves => !isLong || minutes <= _mostMinutes[edit.To],
            ChangeKind.RideLong => now.DurationSeconds <= edit.Was.DurationSeconds * (1 + ChangeClasses.MostLengthening) || minutes <= _mostMinutes[edit.To],
            _ => true,
        };
    }

    private void LookAt(DayFacts facts, int day)
    {
        _ridden[day] |= !facts.Rides.IsEmpty;
        _mostMinutes[day] = Math.Max(_mostMinutes[day], AsShown.Minutes(facts.RideSeconds));
    }

    private bool IsRidingDay(int day) =>
        _rider.MinutesFree is { } free ? free.GetValueOrDefault(WeekdayOf(day)) > 0
        : !_rider.Plan.Days.IsDefaultOrEmpty ? _rider.Plan.Days.Contains(WeekdayOf(day))
        : _ridden[day];

    private IsoDayOfWeek WeekdayOf(int day) => _week.Days[day].Date.DayOfWeek;
}
