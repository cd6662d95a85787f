using System.Collections.Immutable;
using NodaTime;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Rules;
using RideAudit.Weeks;

namespace RideAudit.Next;

/// <summary>Why a layout looks as it does.</summary>
/// <param name="notes">Where the sentences go.</param>
/// <param name="startsOn">The week's first day.</param>
/// <param name="plan">The plan in force.</param>
/// <param name="aim">The hours aimed at.</param>
/// <param name="past">The weeks up to the reviewed one, oldest first.</param>
/// <param name="exception">What the week is excepted for, or is to be.</param>
internal sealed class NextWeekNotes(
    ImmutableArray<string>.Builder notes, LocalDate startsOn, PlanInForce plan, NextWeekAim aim, ImmutableArray<WeekFacts> past, ExceptionKind? exception)
{
    private const double NearShare = 0.95;

    public void Add(NextWeekFound found)
    {
        AddStep();
        AddHours(found);
        AddHardDays(found);
        AddSplit(found.Days);
        AddLongRide(found.Days);
        if (past[^1].Days[6] is { } last && (last.IsHard || last.Kind == DayKind.Long) && found.Days[0].Minutes == 0 && CanRide(startsOn))
            notes.Add($"{Shown.Weekday(startsOn)} is free after the loaded day before it.");
        if (plan.PlannedHoursFromHistory)
            notes.Add("The rider file plans no hours: those of the weeks before are used.");
    }

    private void AddStep()
    {
        if (!aim.IsStep || aim.MeanHours is not { } mean)
            return;
        var weeks = aim.WeeksBehindMean == 1 ? "The last ordinary week" : $"The last {Shown.Count(aim.WeeksBehindMean, "ordinary week")}";
        var had = aim.WeeksBehindMean == 1 ? "had" : "had on average";
        notes.Add($"The plan asks for {Shown.Hours(aim.PlannedHours)}. {weeks} {had} {Shown.Hours(mean)}, so this one aims at {Shown.Hours(aim.Hours)}, {Shown.Number(plan.Limits.GrowthRatio, 1)} times that, "
            + "and its hard days, rest days and long ride are those of that volume. Until the plan is reached its review will find hours short of it: a lower weekly_hours in the rider file says what is meant now.");
    }

    private void AddHours(NextWeekFound found)
    {
        var minutes = found.Days.Sum(d => d.Minutes);
        if (minutes >= NearShare * found.AimedMinutes)
            return;
        var reason = found.WithFullHours is { } full && Worse(full, found.Days) is { Length: > 0 } rules
            ? $"more would not keep {rules}."
            : found.WithFullHours is null
                ? "the days to ride on and the length of the longest ride of late leave no room for more."
                : "the days that keep the hard days apart and rested leave no room for more.";
        notes.Add($"{Shown.Hours(minutes / 60.0)} of {Shown.Hours(found.AimedMinutes / 60)}: {reason}");
    }

    private void AddHardDays(NextWeekFound found)
    {
        var hard = found.Days.Count(d => d.IsHard);
        var allowed = $"the plan allows {Shown.Count(aim.Plan.Limits.HighDaysAtMost, "high day")}.";
        var count = hard switch
        {
            0 => "No hard day",
            1 => "One hard day",
            _ => $"{Shown.Capital(Shown.Count(hard, "hard day"))} with at least one easier day between",
        };
        notes.Add($"{count}; {allowed}{WhyNotMore(found, hard)}");
    }

    private string WhyNotMore(NextWeekFound found, int hard)
    {
        if (hard >= found.HardDaysAtMost)
            return exception == ExceptionKind.Lighter && hard < aim.Plan.Limits.HighDaysAtMost ? " A lighter week holds no more than one." : "";
        if (found.WithOneMoreHardDay is not { } more)
            return " The days to ride on leave no room for another.";
        return Worse(more, found.Days) is { Length: > 0 } rules ? $" Another would not keep {rules}." : "";
    }

    // Rules that one layout keeps and another does not, or keeps less well.
    private string Worse(ImmutableArray<PlannedDay> other, ImmutableArray<PlannedDay> chosen)
    {
        var kept = Judge(chosen).ToDictionary(f => f.Rule, f => f.Verdict);
        return Shown.List(Judge(other).Where(f => Weight(f.Verdict) > Weight(kept[f.Rule])).Select(f => f.Rule));
    }

    private ImmutableArray<Finding> Judge(ImmutableArray<PlannedDay> days) =>
        RuleBook.Standard.Judge(NextWeekLayout.Judged(startsOn, aim.Plan, past, exception, days));

    private static int Weight(Verdict verdict) => verdict switch { Verdict.Broken => 2, Verdict.Watch => 1, _ => 0 };

    private void AddSplit(ImmutableArray<PlannedDay> days)
    {
        var lowShare = 1 - days.Sum(d => d.WorkMinutes) / (double)Math.Max(1, days.Sum(d => d.Minutes));
        if (exception is null && days.Any(d => d.IsHard) && lowShare > plan.Limits.IntendedLowShare && IntensitySplit.IsWatched(new JudgedWeek(NextWeekLayout.Judged(startsOn, plan, past, exception, days))))
            notes.Add("Easier than the plan intends: one hard session holds no more hard work than one repeat beyond what was ridden of late, and at most half an hour at high.");
    }

    private void AddLongRide(ImmutableArray<PlannedDay> days)
    {
        var longRide = days.FirstOrDefault(d => d.Kind == DayKind.Long);
        var asked = aim.Plan.Limits.LongRideHours * 60;
        if (exception == ExceptionKind.Lighter)
            notes.Add($"A lighter week: {Shown.Share(plan.Limits.LighterWeekFactor)} of the {(aim.IsStep ? "hours aimed at" : "planned hours")}, no long ride.");
        else if (longRide.Minutes > 0 && longRide.Minutes < asked)
            notes.Add($"The long ride is {Shown.Length(longRide.Minutes * 60)}, not yet the {Shown.Length(asked * 60)} asked: no more than {Shown.Number(plan.Limits.JumpRatio, 1)} times the longest ride of the last {Shown.Count(plan.Limits.JumpDays, "day")}.");
    }

    private bool CanRide(LocalDate date) => plan.Rider.Plan.Days.IsDefaultOrEmpty || plan.Rider.Plan.Days.Contains(date.DayOfWeek);
}
