using System.Collections.Concurrent;
using System.Collections.Immutable;
using NodaTime;
using RideAudit.Document;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Rules;
using RideAudit.Tests.Review;
using RideAudit.Tests.Rules;
using RideAudit.Tests.Simulation;

namespace RideAudit.Tests.Coach;

/// <summary>Drawn weeks as they were ridden: simulated rides, with their history, judged by the rules.</summary>
internal static class RiddenWeeks
{
    public const int WeeksOfHistory = 13;

    private const int WeeksBetweenLighter = 4;
    private const int RidesOfASession = 50;

    private static readonly SimulatedRider Rider = new();
    private static readonly ConcurrentDictionary<(string Session, int Seconds, int Seed, Limits Limits), RideFigures> Known = new();

    public static LocalDate Monday { get; } = Sample.Monday;

    /// <summary>The plan that a drawn week belongs to.</summary>
    public static PlanInForce PlanOf(TradeWeek week, params PlanException[] exceptions) => PlanOf(week.Hours, week.Experience, exceptions);

    public static PlanInForce PlanOf(double? hours, Experience experience, params PlanException[] exceptions) => PlanInForce.For(
        Rider.File with { Experience = experience, Plan = new TrainingPlan { WeeklyHours = hours }, Exceptions = [.. exceptions] }, [], Monday);

    /// <summary>Thirteen weeks of a drawn week, lighter every fourth.</summary>
    /// <param name="usual">The week.</param>
    /// <param name="plan">Its plan.</param>
    /// <param name="seed">Which of its rides.</param>
    /// <param name="lighterAgo">Weeks since the last lighter one, 1 to 3; null without lighter weeks.</param>
    public static IEnumerable<RideFigures> History(TradeWeek usual, PlanInForce plan, int seed, int? lighterAgo) =>
        Enumerable.Range(1, WeeksOfHistory).SelectMany(ago =>
        {
            var lighter = plan.Tier != Tier.Low && ago % WeeksBetweenLighter == lighterAgo;
            return Rides(lighter ? usual.Lighter : usual, plan, Monday.PlusDays(-7 * ago), seed + ago);
        });

    /// <summary>The rides of one drawn week.</summary>
    public static IEnumerable<RideFigures> Rides(TradeWeek week, PlanInForce plan, LocalDate startsOn, int seed) =>
        week.Rides.Select((r, i) => Ride(r.Session, plan, startsOn.PlusDays(r.Day), r.Hour, seed + 3 * i));

    /// <summary>One ride.</summary>
    public static RideFigures Ride(Session session, PlanInForce plan, LocalDate date, int hour, int seed)
    {
        var start = date.At(new LocalTime(hour, 0)).WithOffset(Offset.Zero);
        var key = (session.Name, session.Seconds, Seed: 1 + seed % RidesOfASession, plan.Limits);
        var figures = Known.GetOrAdd(key, k => FigureBuilder.Build([Simulator.Ride(session, k.Seed, Rider).RideAt(start)], Rider.File, plan.Limits)[0]);
        return figures with { StartsAt = start, File = SimulatedFiles.NameAt(start) + ".fit", Parts = [], Bests = figures.Bests, Power = null };
    }

    /// <summary>Judges a week after the usual ones, a lighter one among the last three.</summary>
    public static ImmutableArray<Finding> Judge(TradeWeek usual, TradeWeek week, int seed, params PlanException[] exceptions)
    {
        var plan = PlanOf(usual, exceptions);
        return Judge(History(usual, plan, seed, 1 + seed % 3).Where(r => !IsOut(r.Date, exceptions)).Concat(Rides(week, plan, Monday, seed)), plan);
    }

    /// <summary>Judges a week with a fault, after one that was not lighter.</summary>
    public static ImmutableArray<Finding> Judge(Fault fault, int seed)
    {
        var plan = PlanOf(fault.Usual, fault.Exceptions);
        return Judge(RidesOf(fault, plan, seed), plan);
    }

    /// <summary>The review of a week with a fault, and the week that it is of.</summary>
    public static (ReviewDocument Document, WeekUnderReview Week) Review(Fault fault, int seed)
    {
        var plan = PlanOf(fault.Usual, fault.Exceptions);
        RideFigures[] rides = [.. RidesOf(fault, plan, seed)];
        var week = Sample.Review(rides, plan);
        return (RandomReviews.Of(week, rides, []), week);
    }

    public static ImmutableArray<Finding> Judge(IEnumerable<RideFigures> rides, PlanInForce plan) => RuleBook.Standard.Judge(Sample.Review(rides, plan));

    /// <summary>Broken and watched rules, the worst first and of equals the one that stands before.</summary>
    public static IEnumerable<Finding> Wanting(ImmutableArray<Finding> findings) =>
        findings.Where(f => f.Verdict is Verdict.Watch or Verdict.Broken).OrderByDescending(f => f.Verdict).ThenBy(f => f.Standing.Rank);

    /// <summary>What was wanting, for a test's message.</summary>
    public static string Text(ImmutableArray<Finding> findings) => string.Join('\n', Wanting(findings).Select(f => $"{f.Rule} {f.Verdict}: {f.Sentence}"));

    private static IEnumerable<RideFigures> RidesOf(Fault fault, PlanInForce plan, int seed) =>
        History(fault.Usual, plan, seed, fault.LighterWeeks ? 2 + seed % 2 : null).Where(r => !IsOut(r.Date, fault.Exceptions))
            .Concat(Rides(fault.Week, plan, Monday, seed));

    private static bool IsOut(LocalDate date, PlanException[] exceptions) =>
        exceptions.Any(e => e.Kind is ExceptionKind.Ill or ExceptionKind.Away && e.From <= date && date <= e.To);
}
