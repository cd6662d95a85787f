using System.Collections.Immutable;
using NodaTime;
using RideAudit.Document.Layouts;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Plan.Blocks;
using RideAudit.Rules;
using RideAudit.Sessions;
using RideAudit.Tests.Demo;
using RideAudit.Tests.Simulation;
using RideAudit.Weeks;
using Ridden = RideAudit.Tests.Simulation.Session;

namespace RideAudit.Tests.Next;

/// <summary>Laid-out weeks ridden on an uneven road, each ride somewhere in its printed range, and judged by the code that judges all rides.</summary>
internal static class OnTheRoad
{
    /// <summary>The week as ridden.</summary>
    public static WeekFacts Ride(NextWeekEntry week, Rider rider, PlanInForce plan, ImmutableArray<WeekFacts> past, int seed)
    {
        var random = new DemoRandom((ulong)seed * 31 + 5);
        ImmutableArray<DayFacts> days = [.. week.Days.Select((d, i) => DayFacts.Build(d.Date, d.Sessions.Where(s => s.Minutes > 0).Select(s => RideOf(s, d.Date, rider, plan.Limits, random, seed * 10 + i)), 0, plan.Limits))];
        var first = past.IsEmpty ? days.FirstOrDefault(d => !d.Rides.IsEmpty)?.Date : past[^1].FirstRideOn;
        return WeekFacts.Build(days, past.IsEmpty ? default : past[^1].LoadAfter, first, WeekExceptions.For(rider.Exceptions, week.StartsOn).Leading);
    }

    /// <summary>The week ridden exactly as written, each ride at a length of its range.</summary>
    public static WeekFacts OnPaper(NextWeekEntry week, Rider rider, PlanInForce plan, ImmutableArray<WeekFacts> past, Func<NextSessionEntry, int> minutesOf)
    {
        ImmutableArray<DayFacts> days = [.. week.Days.Select(d => DayFacts.Build(d.Date, d.Sessions.Where(s => s.Minutes > 0).Select(s => PaperRide(s, d.Date)), 0, plan.Limits))];
        var first = past.IsEmpty ? days.FirstOrDefault(d => !d.Rides.IsEmpty)?.Date : past[^1].FirstRideOn;
        return WeekFacts.Build(days, past.IsEmpty ? default : past[^1].LoadAfter, first, WeekExceptions.For(rider.Exceptions, week.StartsOn).Leading);

        RideFigures PaperRide(NextSessionEntry session, LocalDate date)
        {
            var minutes = minutesOf(session);
            var fitted = FittedSession.Fit(BlocksOf(session, minutes, rider), minutes)!;
            return PlannedTrace.FiguresOf(fitted, date, rider, plan.Limits) with { File = $"{date} {session.Session}" };
        }
    }

    /// <summary>The plan that a review of the week goes by.</summary>
    public static PlanInForce PlanOf(Rider rider, ImmutableArray<WeekFacts> past, LocalDate startsOn) => PlanInForce.For(
        rider, [.. past.Select(w => new WeekHours(w.StartsOn, w.Hours, !WeekExceptions.For(rider.Exceptions, w.StartsOn).None))], startsOn);

    /// <summary>The rules that a week does not keep.</summary>
    public static ImmutableArray<Finding> Wanting(WeekFacts week, PlanInForce plan, ImmutableArray<WeekFacts> past) =>
        [.. RuleBook.Standard.Judge(new WeekUnderReview(week, new Past(past), plan)).Where(f => f.Verdict is Verdict.Watch or Verdict.Broken)];

    /// <summary>The rider, knowing of a week that the layout made lighter.</summary>
    public static Rider Knowing(Rider rider, NextWeekEntry week) => week.ProposedLighter
        ? rider with { Exceptions = [.. rider.Exceptions.Append(new PlanException(week.StartsOn, week.StartsOn.PlusDays(6), ExceptionKind.Lighter)).OrderBy(e => e.From)] }
        : rider;

    /// <summary>A session at some length, ridden on a simulated road.</summary>
    public static SimulatedRide Simulated(NextSessionEntry session, int minutes, Rider rider, int seed)
    {
        var fitted = FittedSession.Fit(BlocksOf(session, minutes, rider), minutes)!;
        var threshold = rider.Thresholds[0];
        return Simulator.Ride(
            new Ridden(session.Session ?? "", Surroundings.Road, [.. fitted.Steps.Select(s => new SessionBlock(s.Seconds, EffortShares.At(s.Effort, s.Seconds / 2, s.Seconds)))]),
            seed,
            new SimulatedRider(threshold.Power!.Value.Value, 48, threshold.HeartRateBpm!.Value));
    }

    // What stands without blocks is ridden as such a ride usually is.
    private static SessionBlocks BlocksOf(NextSessionEntry session, int minutes, Rider rider) => session.Blocks ?? UsualSession.Of(session.Kind, minutes, rider.Experience);

    private static RideFigures RideOf(NextSessionEntry session, LocalDate date, Rider rider, Limits limits, DemoRandom random, int seed)
    {
        var minutes = random.Between(session.MinutesFrom, session.MinutesTo);
        var threshold = rider.Thresholds[0];
        var ride = Simulated(session, minutes, rider, seed).RideAt((date + LocalTime.Noon).WithOffset(Offset.Zero));
        return FigureBuilder.Build(ride, new ThresholdInForce(threshold.Power!.Value, ThresholdSource.RiderFile), threshold.HeartRateBpm, rider, limits);
    }
}
