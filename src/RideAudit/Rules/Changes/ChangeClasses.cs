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

    /// <summary>With more rides than four a day no pair is tried: there would be millions, and it is no week of training. Common practice, no source.</summary>
    public const int MostRidesForPairs = 28;

    private readonly Limits _limits;
    private readonly WeekFacts _week;
    private readonly RidingDays _room;
    private readonly WeekEdit _edit;
    private readonly KeySessions _keys;
    private readonly List<(RideFigures Ride, int Day)> _rides = [];
    private readonly bool _asksForMore;
    private readonly bool _refusesMore;

    public ChangeClasses(WeekUnderReview review)
    {
        _week = review.Week;
        _limits = review.Plan.Limits;
        _room = new RidingDays(review);
        _edit = new WeekEdit(_week, _limits, _room);
        _keys = new KeySessions(_week);
        var judged = new JudgedWeek(review);
        _asksForMore = judged.AsksForMore;
        _refusesMore = judged.RefusesMore;
        for (var day = 0; day < 7; day++)
        {
            // A race is where it is, and ridden as it is.
            if (_room.IsEvent(day))
                continue;
            foreach (var ride in _week.Days[day].Rides)
                _rides.Add((ride, day));
        }
    }

    /// <summary>The classes of one ride alone, in order, without the rides that are spoken for.</summary>
    /// <param name="taken">Rides that another change speaks of, by file.</param>
    public IEnumerable<IEnumerable<ChangeCandidate>> OneRide(IReadOnlyCollection<string> taken)
    {
        Func<RideFigures, int, IEnumerable<RideEdit>>[] kinds = [Moves, Eased, LeftOut, Lengthened, RiddenLong];
        return kinds.Select(of => _rides.Where(r => !taken.Contains(r.Ride.File)).SelectMany(r => of(r.Ride, r.Day)).Select(e => Changed(e)).OfType<ChangeCandidate>());
    }

    /// <summary>The classes in order.</summary>
    public IEnumerable<IEnumerable<ChangeCandidate>> InOrder =>
        [Single(Moves), Swaps(), Single(Eased), Single(LeftOut), Single(Lengthened), Single(RiddenLong), TwoOfThese()];

    /// <summary>False where no pair of rides is tried.</summary>
    public bool TriesPairs => _rides.Count <= MostRidesForPairs;

    private IEnumerable<ChangeCandidate> Single(Func<RideFigures, int, IEnumerable<RideEdit>> edits) =>
        _rides.SelectMany(r => edits(r.Ride, r.Day)).Select(e => Changed(e)).OfType<ChangeCandidate>();

    private IEnumerable<RideEdit> Moves(RideFigures ride, int from)
    {
        for (var to = 0; to < 7; to++)
        {
            if (to != from && _room.IsOpen(to) && _room.MayMove(ride))
                yield return Moved(ChangeKind.Move, ride, from, to);
        }
    }

    private IEnumerable<ChangeCandidate> Swaps()
    {
        if (!TriesPairs)
            yield break;
        for (var i = 0; i < _rides.Count; i++)
        {
            for (var j = i + 1; j < _rides.Count; j++)
            {
                var (a, b) = (_rides[i], _rides[j]);
                if (a.Day != b.Day && _room.IsOpen(a.Day) && _room.IsOpen(b.Day) && _room.MayMove(a.Ride) && _room.MayMove(b.Ride)
                    && Changed(Moved(ChangeKind.Swap, a.Ride, a.Day, b.Day), Moved(ChangeKind.Swap, b.Ride, b.Day, a.Day)) is { } candidate)
                    yield return candidate;
            }
        }
    }

    private IEnumerable<RideEdit> Eased(RideFigures ride, int day)
    {
        if (ride.IsHard)
            yield return new RideEdit(ChangeKind.Ease, ride, ChangedRide.Eased(ride, _limits), day, day);
    }

    /// <remarks>Nothing is left out of a week that had too few hours, nor lengthened in one that had too many or grew too fast: the review would say both.</remarks>
    private IEnumerable<RideEdit> LeftOut(RideFigures ride, int day)
    {
        if (IsEasy(ride) && !_asksForMore)
            yield return new RideEdit(ChangeKind.LeaveOut, ride, null, day, day);
    }

    private IEnumerable<RideEdit> Lengthened(RideFigures ride, int day)
    {
        var seconds = ChangedRide.LongRideSeconds(_limits);
        if (IsEasy(ride) && ride.DurationSeconds < seconds && seconds <= (1 + MostLengthening) * ride.DurationSeconds && !_refusesMore && _room.MayBeLonger(day))
            yield return new RideEdit(ChangeKind.Lengthen, ride, ChangedRide.Lengthened(ride, _limits), day, day);
    }

    private IEnumerable<RideEdit> RiddenLong(RideFigures ride, int day)
    {
        if (ride.IsHard && !_refusesMore && _room.MayBeLonger(day))
            yield return new RideEdit(ChangeKind.RideLong, ride, ChangedRide.AsLongRide(ride, _limits), day, day);
    }

    private IEnumerable<ChangeCandidate> TwoOfThese()
    {
        if (!TriesPairs)
            yield break;
        RideEdit[][] each = [.. _rides.Select(r => (RideEdit[])
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
        new(kind, ride, ChangedRide.On(ride, _week.Days[to].Date), from, to);

    private ChangeCandidate? Changed(params ReadOnlySpan<RideEdit> edits)
    {
        if (_edit.With(edits) is not { } changed)
            return null;
        var changes = new RideChange[edits.Length];
        double stress = 0;
        for (var i = 0; i < edits.Length; i++)
        {
            changes[i] = ChangeOf(edits[i]);
            stress += CostOf(edits[i]);
        }
        return new ChangeCandidate([.. changes], changed, _keys.Touched(edits), stress);
    }

    private RideChange ChangeOf(in RideEdit edit)
    {
        double? minutes = edit.Kind is ChangeKind.Lengthen or ChangeKind.RideLong ? AsShown.Minutes(edit.Now!.DurationSeconds) : null;
        return new RideChange(edit.Kind, edit.Was.File, _week.Days[edit.From].Date, _week.Days[edit.To].Date, minutes);
    }

    private double CostOf(in RideEdit edit) => edit.Kind is ChangeKind.Move or ChangeKind.Swap ? StressOf(edit.Was)
        : edit.Now is { } now ? Math.Abs(StressOf(now) - StressOf(edit.Was))
        : StressOf(edit.Was);

    /// <summary>A ride's stress; without one, that of the same time ridden easy.</summary>
    private double StressOf(RideFigures ride)
    {
        var ratio = _limits.EasedRatio;
        return ride.Stress ?? ride.DurationSeconds / 3600 * ratio * ratio * 100;
    }

    private static bool IsEasy(RideFigures ride) => ride.Kind is RideKind.Endurance or RideKind.Recovery;
}
