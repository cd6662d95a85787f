using System.Collections.Immutable;
using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Sessions;
using RideAudit.Units;

namespace RideAudit.Next;

/// <summary>Which hard session comes next: the coach's own in turn, else the library's, a step on from what was ridden of late.</summary>
/// <remarks>Common practice, no source.</remarks>
/// <param name="frame">The week.</param>
internal sealed class SessionChoice(WeekFrame frame)
{
    private const int WeeksOfWork = 4;
    private const int WeeksOfHigh = 2;
    private const double MostGrowth = 1.25;
    private const double MostGrowthSeconds = 60;
    private const int LighterStepsBack = 2;
    private const int UsualMinutes = 60;
    // Longer without a break is a test or a race, and no step of a build-up.
    private const int LongestInterval = 12 * 60;
    private const int WeeksBetweenSprints = 2;
    private static readonly LocalDate Monday = new(2020, 1, 6);
    private static readonly SessionPurpose[] High = [SessionPurpose.LongIntervals, SessionPurpose.ShortIntervals];

    // Every fourth time sprints, for riders of some experience who ride high sessions already: variety, and a step that intervals do not train.
    private static readonly SessionPurpose[] HighWithSprints = [SessionPurpose.LongIntervals, SessionPurpose.ShortIntervals, SessionPurpose.LongIntervals, SessionPurpose.Sprints];
    private static readonly SessionPurpose[] Threshold = [SessionPurpose.Threshold, SessionPurpose.SweetSpot, SessionPurpose.OverUnders];
    private readonly Dictionary<(PlannedKind, int, int, int), StockRide?> _chosen = [];

    private bool RodeHigh => frame.Past.TakeLast(WeeksOfHigh).Any(w => w.Rides.Any(r => r.Kind == RideKind.High));

    private int Week => Period.DaysBetween(Monday, frame.StartsOn) / 7;

    /// <summary>The session of a day.</summary>
    /// <param name="kind">High or threshold.</param>
    /// <param name="ordinal">Which of its kind in the week, 0 first.</param>
    /// <param name="room">Minutes free on the day.</param>
    /// <param name="back">Steps back from the one that is next.</param>
    /// <returns>At its usual length; null when none fits the day.</returns>
    public StockRide? Of(PlannedKind kind, int ordinal, int room, int back)
    {
        if (!_chosen.TryGetValue((kind, ordinal, room, back), out var ride))
            _chosen[(kind, ordinal, room, back)] = ride = Choose(kind, ordinal, room, back) is { } session && session.Kind == kind ? session : null;
        return ride;
    }

    /// <summary>The easy ride with some sprints in it: every other week, for riders of some experience who ride high sessions already, where nothing asks for care and the coach has no easy ride of their own.</summary>
    /// <param name="minutes">Its length.</param>
    public StockRide? WithSprints(int minutes) =>
        frame.Rider.Experience != Experience.New && RodeHigh && Week % WeeksBetweenSprints == 0 && frame.Exceptions is { Event: false, Away: false, Ill: false }
        && frame.Calendar.AbsenceBefore(frame.StartsOn, 7) is null && !frame.Stock.OwnOf(PlannedKind.Endurance).Any()
        && frame.Stock.Of(SessionLibrary.EasyWithSprints, minutes) is { Kind: PlannedKind.Endurance } ride ? ride : null;

    /// <summary>The same session in another time of day; null where it does not fit.</summary>
    public StockRide? Again(StockRide ride, int minutes) => minutes == ride.Minutes ? ride
        : ride.Purpose is { } purpose && SessionLibrary.Find(ride.Name!) is { } session && session.Purpose == purpose ? frame.Stock.Of(session, minutes)
        : frame.Rider.Sessions.FirstOrDefault(s => s.Session == ride.Name) is { } own ? frame.Stock.Of(own, minutes)
        : null;

    private StockRide? Choose(PlannedKind kind, int ordinal, int room, int back)
    {
        if (kind == PlannedKind.High && ordinal == 0 && frame.TestDue && SessionLibrary.Test is var test && test.ShortestDay <= room)
            return frame.Stock.Of(test, Length(test.ShortestDay, room));
        OwnSession[] own = [.. frame.Stock.OwnOf(kind).Where(s => FittedSession.LeastMinutes(s.Blocks) <= room)];
        if (own.Length > 0)
        {
            var next = own[(Week + ordinal) % own.Length];
            return frame.Stock.Of(next, Math.Min(room, Math.Max(next.Minutes, FittedSession.LeastMinutes(next.Blocks))));
        }
        var purposes = kind != PlannedKind.High ? Threshold : frame.Rider.Experience == Experience.New || !RodeHigh ? High : HighWithSprints;
        var turn = Week * (purposes == HighWithSprints ? Math.Max(1, frame.Aim.HighDays) : 1) + ordinal;
        for (var i = 0; i < purposes.Length; i++)
        {
            if (Step(purposes[(turn + i) % purposes.Length], room, back + (frame.IsLighter || frame.Exceptions.Event ? LighterStepsBack : 0)) is { } session)
                return frame.Stock.Of(session, Length(session.ShortestDay, room));
        }
        return null;
    }

    private static int Length(int least, int room) => Math.Min(room, Math.Max(UsualMinutes, (least + 4) / 5 * 5));

    private LibrarySession? Step(SessionPurpose purpose, int room, int back)
    {
        var steps = SessionLibrary.For(purpose, frame.Rider.Experience, room);
        if (steps.IsEmpty)
            return null;
        var last = Recent(purpose);
        var most = last > 0 ? last * MostGrowth + MostGrowthSeconds : 0;
        var at = FirstStep(steps);
        for (var i = 1; i < steps.Length; i++)
        {
            if (frame.Stock.Of(steps[i], steps[i].ShortestDay) is { } ride && WorkOf(ride.Figures, purpose) <= most)
                at = Math.Max(at, i);
        }
        return steps[Math.Max(0, at - back)];
    }

    // Where nothing is known of the work in the rider's rides (none yet, or a log of them alone), their word counts, and a step less of it:
    // a racing rider does not begin where a new one does.
    private int FirstStep(ImmutableArray<LibrarySession> steps)
    {
        if (frame.Past.Any(w => w.Rides.Any(r => r.Bands.Total > 0)) || frame.Rider.Experience == Experience.New)
            return 0;
        for (var i = 0; i < steps.Length; i++)
        {
            if (steps[i].Experience >= frame.Rider.Experience - 1)
                return i;
        }
        return 0;
    }

    private double Recent(SessionPurpose purpose)
    {
        var kind = HighWithSprints.Contains(purpose) ? RideKind.High : RideKind.Threshold;
        double most = 0;
        for (var i = frame.Past.Length - 1; i >= 0 && i >= frame.Past.Length - WeeksOfWork; i--)
        {
            foreach (var ride in frame.Past[i].Rides)
                most = ride.Kind == kind ? Math.Max(most, WorkOf(ride, purpose)) : most;
        }
        return most;
    }

    private static double WorkOf(RideFigures ride, SessionPurpose purpose) => purpose switch
    {
        SessionPurpose.ShortIntervals => Math.Max(ride.BoutSeconds, Intervals(ride)),
        SessionPurpose.Sprints => ride.BoutSeconds,
        SessionPurpose.LongIntervals => Intervals(ride),
        _ => ride.AtThresholdShare?.SustainedSeconds ?? ride.Bands.Middle + ride.Bands.High,
    };

    // Without power, the time that heart rate was as high: less than the work, for the heart follows late.
    private static double Intervals(RideFigures ride) =>
        ride.AtHighShare is { } work ? work.Runs.Select(r => r.End - r.Start).Where(s => s <= LongestInterval).Sum() : ride.Bands.High;
}
