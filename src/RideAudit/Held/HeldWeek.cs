using System.Collections.Immutable;
using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Plan.Table;

namespace RideAudit.Held;

/// <summary>Holds a week that was ridden against what was planned for it. No score: a moved session is as good as one on its day, as far as the rules are kept.</summary>
internal static class HeldWeek
{
    private const double RestMinutes = 60;
    private const int MostGroupings = 10;

    // Smaller than any difference of costs that means something: of equal ways, the one on earlier days.
    private const double Later = 1e-6;

    /// <summary>One line a planned session and one a ride that nobody planned, by date.</summary>
    /// <param name="planned">The sessions of one week.</param>
    /// <param name="rides">The rides of the same week; those without a kind are too short to stand for anything and left out.</param>
    /// <param name="kindOn">What a day is excepted for, so that a session missed while ill is said so.</param>
    public static ImmutableArray<HeldLine> Of(
        ImmutableArray<PlannedSession> planned, ImmutableArray<RideFigures> rides, Func<LocalDate, ExceptionKind?> kindOn)
    {
        PlannedSession[] sessions = [.. planned.Where(s => !s.IsRest).OrderBy(s => s.Date)];
        RideFigures[] ridden = [.. rides.Where(r => r.Kind != Units.RideKind.None).OrderBy(r => r.Date).ThenBy(r => r.StartsAt.LocalDateTime)];
        var (groups, columns) = Assign(sessions, ridden);
        Swap(sessions, groups, columns);
        var lines = new List<HeldLine>();
        var taken = new HashSet<int>();
        for (var i = 0; i < sessions.Length; i++)
        {
            var group = columns[i] < groups.Count ? groups[columns[i]] : (RiddenGroup?)null;
            if (group is not null)
                taken.Add(columns[i]);
            lines.Add(LineOf(sessions[i], group, kindOn));
        }
        lines.AddRange(groups.Where((_, i) => !taken.Contains(i)).SelectMany(g => g.Rides).Select(r => new HeldLine(null, [r], [HeldOutcome.Added], HeldSentence.Added(r))));
        lines.AddRange(planned.Where(s => s.IsRest).Select(s => RestLine(s, [.. ridden.Where(r => r.Date == s.Date)])));
        return [.. lines.OrderBy(l => l.Date).ThenBy(l => l.Planned is null)];
    }

    /// <summary>Rides of one day and class stand together or each alone, whichever fits the sessions better.</summary>
    private static (List<RiddenGroup> Groups, int[] Columns) Assign(PlannedSession[] sessions, RideFigures[] rides)
    {
        var together = rides.GroupBy(r => (r.Date, r.IsHard)).Select(g => new RiddenGroup([.. g])).OrderBy(g => g.Date).ToList();
        var several = Enumerable.Range(0, together.Count).Where(i => together[i].Rides.Length > 1).Take(MostGroupings).ToList();
        (double Cost, List<RiddenGroup> Groups, int[] Columns)? best = null;
        for (var choice = 0; choice < 1 << several.Count; choice++)
        {
            var alone = several.Where((_, bit) => (choice >> bit & 1) == 1).ToHashSet();
            List<RiddenGroup> groups = [.. together.SelectMany((g, i) => alone.Contains(i) ? g.Rides.Select(r => new RiddenGroup([r])) : [g])];
            var costs = Costs(sessions, groups);
            var columns = LeastCost.Assign(costs);
            var total = columns.Select((column, row) => costs[row, column]).Sum();
            if (best is null || total < best.Value.Cost - Later / 2)
                best = (total, groups, columns);
        }
        return (best!.Value.Groups, best.Value.Columns);
    }

    /// <summary>Two sessions ridden on each other's days are one change of plan, not two: the days between them count once.</summary>
    private static void Swap(PlannedSession[] sessions, List<RiddenGroup> groups, int[] columns)
    {
        for (var a = 0; a < sessions.Length; a++)
        {
            for (var b = a + 1; b < sessions.Length; b++)
            {
                if (!IsOnItsDay(a) || !IsOnItsDay(b) || sessions[a].Date == sessions[b].Date)
                    continue;
                var (onA, onB) = (groups[columns[a]], groups[columns[b]]);
                var stayed = HeldCost.Of(sessions[a], onA) + HeldCost.Of(sessions[b], onB);
                if (HeldCost.OfSwap(sessions[a], onB, sessions[b], onA) < stayed)
                    (columns[a], columns[b]) = (columns[b], columns[a]);
            }
        }

        bool IsOnItsDay(int row) => columns[row] < groups.Count && groups[columns[row]].Date == sessions[row].Date;
    }

    private static double[,] Costs(PlannedSession[] sessions, List<RiddenGroup> groups)
    {
        var size = sessions.Length + groups.Count;
        var costs = new double[size, size];
        for (var row = 0; row < size; row++)
        {
            for (var column = 0; column < size; column++)
            {
                costs[row, column] = (row < sessions.Length, column < groups.Count) switch
                {
                    (true, true) => HeldCost.Of(sessions[row], groups[column]) + Later * column,
                    (true, false) => HeldCost.SessionLeft,
                    (false, true) => HeldCost.RideLeft * groups[column].Rides.Length,
                    _ => 0,
                };
            }
        }
        return costs;
    }

    private static HeldLine LineOf(PlannedSession session, RiddenGroup? group, Func<LocalDate, ExceptionKind?> kindOn)
    {
        if (group is not { } ridden)
            return new HeldLine(session, [], [HeldOutcome.Missed], HeldSentence.Missed(session, kindOn(session.Date)));
        var outcomes = ImmutableArray.CreateBuilder<HeldOutcome>();
        if (ridden.Date != session.Date)
            outcomes.Add(HeldOutcome.Moved);
        if (LengthOutcome(session, ridden) is { } length)
            outcomes.Add(length);
        if (HeldCost.Rank(PlannedKinds.RiddenAs(session.Kind)) is { } meant && HeldCost.Rank(ridden.Kind) is { } was && was != meant)
            outcomes.Add(was > meant ? HeldOutcome.Harder : HeldOutcome.Easier);
        if (outcomes.Count == 0)
            outcomes.Add(HeldOutcome.Done);
        var found = outcomes.ToImmutable();
        return new HeldLine(session, ridden.Rides, found, HeldSentence.Ridden(session, ridden, found));
    }

    /// <summary>Beyond a fifth and ten minutes, in whole minutes as they are shown.</summary>
    private static HeldOutcome? LengthOutcome(PlannedSession session, RiddenGroup ridden)
    {
        if (session.Minutes is not { } minutes)
            return null;
        var beyond = Math.Round(ridden.Minutes) - minutes;
        return Math.Abs(beyond) <= 0.2 * minutes || Math.Abs(beyond) <= 10 ? null : beyond < 0 ? HeldOutcome.Shorter : HeldOutcome.Longer;
    }

    private static HeldLine RestLine(PlannedSession rest, ImmutableArray<RideFigures> rides)
    {
        var minutes = rides.Sum(r => r.DurationSeconds) / 60;
        var isRidden = rides.Any(r => r.IsHard) || Math.Round(minutes) > RestMinutes;
        return isRidden
            ? new HeldLine(rest, rides, [HeldOutcome.RestRidden], HeldSentence.RestRidden(rest, rides))
            : new HeldLine(rest, [], [HeldOutcome.Done], HeldSentence.Rested(rest));
    }
}
