using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Rules.Changes;

/// <summary>The classes of changes, smallest first, each with all its candidates.</summary>
internal sealed class ChangeClasses
{
    private readonly PlanInForce plan;
    private readonly WeekFacts week;
    private readonly WeekEdit edit;
    private readonly List<(RideFigures Ride, int Day)> rides = [];
    private readonly List<int> targets = [];

    public ChangeClasses(WeekFacts week, PlanInForce plan)
    {
        this.week = week;
        this.plan = plan;
        edit = new WeekEdit(week, plan.Limits);
        for (var day = 0; day < 7; day++)
        {
            foreach (var ride in week.Days[day].Rides)
                rides.Add((ride, day));
            var allowed = plan.Rider.Plan.Days.IsDefaultOrEmpty || plan.Rider.Plan.Days.Contains(week.Days[day].Date.DayOfWeek);
            if (allowed && day < week.DaysThatCount)
                targets.Add(day);
        }
    }

    /// <summary>The classes in order.</summary>
    public IEnumerable<IEnumerable<ChangeCandidate>> InOrder => [OneMove(), Swaps(), TwoMoves(), Eased(), Lengthened()];

    private IEnumerable<ChangeCandidate> OneMove()
    {
        foreach (var (ride, from) in rides)
        {
            foreach (var to in targets)
            {
                if (to != from && Moved((ride, from, to)) is { } candidate)
                    yield return candidate;
            }
        }
    }

    private IEnumerable<ChangeCandidate> Swaps()
    {
        for (var i = 0; i < rides.Count; i++)
        {
            for (var j = i + 1; j < rides.Count; j++)
            {
                var (a, b) = (rides[i], rides[j]);
                if (a.Day != b.Day && targets.Contains(a.Day) && targets.Contains(b.Day)
                    && Changed(ChangeKind.Swap, (a.Ride, a.Day, b.Day), (b.Ride, b.Day, a.Day)) is { } candidate)
                    yield return candidate;
            }
        }
    }

    private IEnumerable<ChangeCandidate> TwoMoves()
    {
        for (var i = 0; i < rides.Count; i++)
        {
            for (var j = i + 1; j < rides.Count; j++)
            {
                foreach (var first in targets.Where(t => t != rides[i].Day))
                {
                    foreach (var second in targets.Where(t => t != rides[j].Day))
                    {
                        if (Moved((rides[i].Ride, rides[i].Day, first), (rides[j].Ride, rides[j].Day, second)) is { } candidate)
                            yield return candidate;
                    }
                }
            }
        }
    }

    private IEnumerable<ChangeCandidate> Eased()
    {
        foreach (var (ride, day) in rides.Where(r => r.Ride.IsHard))
        {
            if (InPlace(ChangeKind.Ease, ride, ChangedRide.Eased(ride, plan.Limits), day) is { } candidate)
                yield return candidate;
        }
    }

    private IEnumerable<ChangeCandidate> Lengthened()
    {
        var seconds = plan.Limits.LongRideHours * 3600;
        foreach (var (ride, day) in rides.Where(r => r.Ride.Kind is RideKind.Endurance or RideKind.Recovery && r.Ride.DurationSeconds < seconds))
        {
            if (InPlace(ChangeKind.Lengthen, ride, ChangedRide.Lengthened(ride, plan.Limits), day) is { } candidate)
                yield return candidate;
        }
    }

    private ChangeCandidate? Moved(params ReadOnlySpan<(RideFigures Ride, int From, int To)> moves) => Changed(ChangeKind.Move, moves);

    private ChangeCandidate? Changed(ChangeKind kind, params ReadOnlySpan<(RideFigures Ride, int From, int To)> moves)
    {
        var edits = new RideEdit[moves.Length];
        var changes = new RideChange[moves.Length];
        double stress = 0;
        for (var i = 0; i < moves.Length; i++)
        {
            var (ride, from, to) = moves[i];
            edits[i] = new RideEdit(ride, ChangedRide.On(ride, week.Days[to].Date), from, to);
            changes[i] = new RideChange(kind, ride.File, week.Days[from].Date, week.Days[to].Date, null);
            stress += StressOf(ride);
        }
        return edit.With(edits) is { } changed ? new ChangeCandidate([.. changes], changed, stress) : null;
    }

    private ChangeCandidate? InPlace(ChangeKind kind, RideFigures was, RideFigures now, int day)
    {
        if (edit.With(new RideEdit(was, now, day, day)) is not { } changed)
            return null;
        double? minutes = kind == ChangeKind.Lengthen ? now.DurationSeconds / 60 : null;
        var change = new RideChange(kind, was.File, week.Days[day].Date, week.Days[day].Date, minutes);
        return new ChangeCandidate([change], changed, Math.Abs(StressOf(now) - StressOf(was)));
    }

    /// <summary>A ride's stress; without one, that of the same time ridden easy.</summary>
    private double StressOf(RideFigures ride)
    {
        var ratio = plan.Limits.EasedRatio;
        return ride.Stress ?? ride.DurationSeconds / 3600 * ratio * ratio * 100;
    }
}
