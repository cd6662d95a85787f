using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Rules.Changes;

/// <summary>The classes of changes, smallest first, each with all its candidates.</summary>
internal sealed class ChangeClasses
{
    /// <summary>An easy ride is lengthened by this share of itself at most: more would be another ride. Common practice, no source.</summary>
    public const double MostLengthening = 0.5;

    private readonly Limits limits;
    private readonly WeekFacts week;
    private readonly RidingDays room;
    private readonly WeekEdit edit;
    private readonly KeySessions keys;
    private readonly List<(RideFigures Ride, int Day)> rides = [];

    public ChangeClasses(WeekUnderReview review)
    {
        week = review.Week;
        limits = review.Plan.Limits;
        room = new RidingDays(review);
        edit = new WeekEdit(week, limits, room);
        keys = new KeySessions(week);
        for (var day = 0; day < 7; day++)
        {
            foreach (var ride in week.Days[day].Rides)
                rides.Add((ride, day));
        }
    }

    /// <summary>The classes in order.</summary>
    public IEnumerable<IEnumerable<ChangeCandidate>> InOrder =>
        [Single(Moves), Swaps(), Single(Eased), Single(LeftOut), Single(Lengthened), Single(RiddenLong), TwoOfThese()];

    private IEnumerable<ChangeCandidate> Single(Func<RideFigures, int, IEnumerable<RideEdit>> edits) =>
        rides.SelectMany(r => edits(r.Ride, r.Day)).Select(e => Changed(e)).OfType<ChangeCandidate>();

    private IEnumerable<RideEdit> Moves(RideFigures ride, int from)
    {
        for (var to = 0; to < 7; to++)
        {
            if (to != from && room.IsOpen(to))
                yield return Moved(ChangeKind.Move, ride, from, to);
        }
    }

    private IEnumerable<ChangeCandidate> Swaps()
    {
        for (var i = 0; i < rides.Count; i++)
        {
            for (var j = i + 1; j < rides.Count; j++)
            {
                var (a, b) = (rides[i], rides[j]);
                if (a.Day != b.Day && room.IsOpen(a.Day) && room.IsOpen(b.Day)
                    && Changed(Moved(ChangeKind.Swap, a.Ride, a.Day, b.Day), Moved(ChangeKind.Swap, b.Ride, b.Day, a.Day)) is { } candidate)
                    yield return candidate;
            }
        }
    }

    private IEnumerable<RideEdit> Eased(RideFigures ride, int day)
    {
        if (ride.IsHard)
            yield return new RideEdit(ChangeKind.Ease, ride, ChangedRide.Eased(ride, limits), day, day);
    }

    private IEnumerable<RideEdit> LeftOut(RideFigures ride, int day)
    {
        if (IsEasy(ride))
            yield return new RideEdit(ChangeKind.LeaveOut, ride, null, day, day);
    }

    private IEnumerable<RideEdit> Lengthened(RideFigures ride, int day)
    {
        var seconds = ChangedRide.LongRideSeconds(limits);
        if (IsEasy(ride) && ride.DurationSeconds < seconds && seconds <= (1 + MostLengthening) * ride.DurationSeconds && room.MayBeLonger(day))
            yield return new RideEdit(ChangeKind.Lengthen, ride, ChangedRide.Lengthened(ride, limits), day, day);
    }

    private IEnumerable<RideEdit> RiddenLong(RideFigures ride, int day)
    {
        if (ride.IsHard && room.MayBeLonger(day))
            yield return new RideEdit(ChangeKind.RideLong, ride, ChangedRide.AsLongRide(ride, limits), day, day);
    }

    private IEnumerable<ChangeCandidate> TwoOfThese()
    {
        RideEdit[][] each = [.. rides.Select(r => (RideEdit[])
            [.. Moves(r.Ride, r.Day), .. Eased(r.Ride, r.Day), .. LeftOut(r.Ride, r.Day), .. Lengthened(r.Ride, r.Day), .. RiddenLong(r.Ride, r.Day)])];
        for (var i = 0; i < each.Length; i++)
        {
            for (var j = i + 1; j < each.Length; j++)
            {
                foreach (var first in each[i])
                {
                    foreach (var second in each[j])
                    {
                        if (Changed(first, second) is { } candidate)
                            yield return candidate;
                    }
                }
            }
        }
    }

    private RideEdit Moved(ChangeKind kind, RideFigures ride, int from, int to) =>
        new(kind, ride, ChangedRide.On(ride, week.Days[to].Date), from, to);

    private ChangeCandidate? Changed(params ReadOnlySpan<RideEdit> edits)
    {
        if (edit.With(edits) is not { } changed)
            return null;
        var changes = new RideChange[edits.Length];
        double stress = 0;
        for (var i = 0; i < edits.Length; i++)
        {
            changes[i] = ChangeOf(edits[i]);
            stress += CostOf(edits[i]);
        }
        return new ChangeCandidate([.. changes], changed, keys.Touched(edits), stress);
    }

    private RideChange ChangeOf(in RideEdit edit)
    {
        double? minutes = edit.Kind is ChangeKind.Lengthen or ChangeKind.RideLong ? AsShown.Minutes(edit.Now!.DurationSeconds) : null;
        return new RideChange(edit.Kind, edit.Was.File, week.Days[edit.From].Date, week.Days[edit.To].Date, minutes);
    }

    private double CostOf(in RideEdit edit) => edit.Kind is ChangeKind.Move or ChangeKind.Swap ? StressOf(edit.Was)
        : edit.Now is { } now ? Math.Abs(StressOf(now) - StressOf(edit.Was))
        : StressOf(edit.Was);

    /// <summary>A ride's stress; without one, that of the same time ridden easy.</summary>
    private double StressOf(RideFigures ride)
    {
        var ratio = limits.EasedRatio;
        return ride.Stress ?? ride.DurationSeconds / 3600 * ratio * ratio * 100;
    }

    private static bool IsEasy(RideFigures ride) => ride.Kind is RideKind.Endurance or RideKind.Recovery;
}
