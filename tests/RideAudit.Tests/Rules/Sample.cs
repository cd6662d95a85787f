using System.Collections.Immutable;
using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Rules;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Tests.Rules;

/// <summary>Rides and weeks for the rules' tests, made of figures alone: what a ride was, not its samples.</summary>
internal static class Sample
{
    public static LocalDate Monday { get; } = new(2026, 5, 4);

    public static ThresholdInForce Threshold { get; } = new(new Watts(250), ThresholdSource.RiderFile);

    /// <summary>A ride of a kind with bands and an intensity ratio that such a ride has.</summary>
    public static RideFigures Ride(LocalDate date, RideKind kind, double minutes, int hour = 18, int minute = 0, double? lowShare = null)
    {
        var (low, middle, ratio) = kind switch
        {
            RideKind.Recovery => (1.00, 0.00, 0.55),
            RideKind.Endurance => (0.96, 0.04, 0.65),
            RideKind.Long => (0.94, 0.05, 0.68),
            RideKind.Threshold => (0.55, 0.38, 0.86),
            RideKind.High => (0.65, 0.08, 0.90),
            _ => (1.00, 0.00, 0.60),
        };
        if (lowShare is { } share)
            (low, middle) = (share, middle * (1 - share) / Math.Max(1e-9, 1 - low));
        if (lowShare is not null && kind is RideKind.Recovery)
            middle = 1 - low;
        var seconds = minutes * 60;
        var unrated = kind == RideKind.Unrated;
        return new RideFigures
        {
            File = $"{date:uuuu-MM-dd}-{hour:00}{minute:00}.fit",
            StartsAt = date.At(new LocalTime(hour, minute)).WithOffset(Offset.FromHours(1)),
            DurationSeconds = seconds,
            ElapsedSeconds = seconds,
            Kind = kind,
            MeasuredBy = unrated ? MeasureSource.None : MeasureSource.Power,
            IntensityRatio = unrated ? null : ratio,
            NormalisedPower = unrated ? null : new Watts(ratio * 250),
            Stress = unrated ? null : minutes / 60 * ratio * ratio * 100,
            StressFrom = unrated ? StressSource.Unknown : StressSource.Power,
            Threshold = unrated ? null : Threshold,
            Bands = unrated ? default : new BandSeconds(low * seconds, middle * seconds, (1 - low - middle) * seconds),
            PowerCoverage = unrated ? 0 : 1,
        };
    }

    public static PlanInForce Plan(double? hours = 6.5, Experience experience = Experience.Regular, TrainingPlan? plan = null, params PlanException[] exceptions)
    {
        var rider = new Rider
        {
            Experience = experience,
            Plan = (plan ?? new TrainingPlan()) with { WeeklyHours = hours },
            Thresholds = [new ThresholdEntry(new LocalDate(2025, 1, 1), new Watts(250), 168)],
            Exceptions = [.. exceptions],
        };
        return PlanInForce.For(rider, []);
    }

    /// <summary>The usual plan with minutes free on some days, none on the others.</summary>
    public static PlanInForce WithFree(params (IsoDayOfWeek Day, int Minutes)[] free)
    {
        var plan = Plan();
        return plan with { Rider = plan.Rider with { MinutesFree = free.ToImmutableSortedDictionary(f => f.Day, f => f.Minutes) } };
    }

    /// <summary>The usual plan with limits of its own.</summary>
    public static PlanInForce WithLimits(params (string Name, double Value)[] limits) =>
        Plan(plan: new TrainingPlan { LimitOverrides = limits.ToImmutableDictionary(l => l.Name, l => l.Value) });

    public static WeekFacts Week(
        IEnumerable<RideFigures> rides, LocalDate? startsOn = null, LoadState loadBefore = default, LocalDate? firstRideOn = null,
        Limits? limits = null, int daysThatCount = 7, ExceptionKind? exception = null)
    {
        var first = startsOn ?? Monday;
        var all = rides.ToList();
        var days = Enumerable.Range(0, 7)
            .Select(i => DayFacts.Build(first.PlusDays(i), all.Where(r => r.Date == first.PlusDays(i)), 0, limits))
            .ToImmutableArray();
        return WeekFacts.Build(days, loadBefore, firstRideOn ?? all.Select(r => (LocalDate?)r.Date).Min(), exception, daysThatCount);
    }

    /// <summary>A week under review from rides of any date: weeks before the judged one become its past.</summary>
    public static WeekUnderReview Review(IEnumerable<RideFigures> rides, PlanInForce plan, LocalDate? startsOn = null, int daysThatCount = 7)
    {
        var judged = startsOn ?? Monday;
        var all = rides.ToList();
        var firstRide = all.Count == 0 ? (LocalDate?)null : all.Min(r => r.Date);
        var past = ImmutableArray.CreateBuilder<WeekFacts>();
        var load = default(LoadState);
        var start = judged;
        while (firstRide < start)
            start = start.PlusDays(-7);
        for (; start < judged; start = start.PlusDays(7))
        {
            past.Add(Week(Of(all, start), start, load, firstRide, plan.Limits, 7, WeekExceptions.For(plan.Rider.Exceptions, start).Leading));
            load = past[^1].LoadAfter;
        }
        var week = Week(Of(all, judged), judged, load, firstRide, plan.Limits, daysThatCount, WeekExceptions.For(plan.Rider.Exceptions, judged).Leading);
        return new WeekUnderReview(week, new Past(past.ToImmutable()), plan);
    }

    public static Finding Judge(string rule, WeekUnderReview week) => RuleBook.Standard.All.Single(r => r.Id == rule).Judge(week);

    private static IEnumerable<RideFigures> Of(List<RideFigures> rides, LocalDate start) =>
        rides.Where(r => r.Date >= start && r.Date < start.PlusDays(7));
}
