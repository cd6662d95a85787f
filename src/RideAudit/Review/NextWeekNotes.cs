using System.Collections.Immutable;
using RideAudit.Plan;
using RideAudit.Weeks;

namespace RideAudit.Review;

/// <summary>Why a layout looks as it does.</summary>
internal static class NextWeekNotes
{
    public static void Add(
        ImmutableArray<string>.Builder notes, PlanInForce plan, ImmutableArray<WeekFacts> past, ImmutableArray<PlannedDay> days, ExceptionKind? exception)
    {
        var hard = days.Count(d => d.IsHard);
        var allowed = $"the plan allows {Phrases.Count(plan.Limits.HighDaysAtMost)} high {Phrases.Plural(plan.Limits.HighDaysAtMost, "day", "days")}.";
        notes.Add(hard switch
        {
            0 => "No hard day fits beside the hours and the rest that the plan asks for.",
            1 => $"One hard day; {allowed}",
            _ => $"{Phrases.Capital(Phrases.Count(hard))} hard days with at least one easier day between; {allowed}",
        });
        var longRide = days.FirstOrDefault(d => d.Kind == DayKind.Long);
        var asked = plan.Limits.LongRideHours * 60;
        if (exception == ExceptionKind.Lighter)
            notes.Add($"A lighter week: {Phrases.Decimal(100 * plan.Limits.LighterWeekFactor, 0)} % of the planned hours, no long ride.");
        else if (longRide.Minutes > 0 && longRide.Minutes < asked)
            notes.Add($"The long ride is {Phrases.Length(longRide.Minutes * 60)}, not yet the {Phrases.Length(asked * 60)} asked: no more than {Phrases.Decimal(plan.Limits.JumpRatio, 1)} times the longest ride of the last {plan.Limits.JumpDays} days.");
        if (past[^1].Days[6] is { } last && (last.IsHard || last.Kind == DayKind.Long) && days[0].Minutes == 0)
            notes.Add($"{Phrases.Day(past[^1].EndsOn.PlusDays(1))} is free after the loaded day before it.");
        if (plan.PlannedHoursFromHistory)
            notes.Add("The rider file plans no hours: those of the weeks before are used.");
    }
}
