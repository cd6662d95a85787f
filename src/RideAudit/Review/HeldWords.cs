using System.Collections.Immutable;
using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Rules;
using RideAudit.Units;

namespace RideAudit.Review;

/// <summary>Names what held, a few words a rule.</summary>
internal static class HeldWords
{
    private const double ShortestEasyRideSeconds = 1800;
    private const double LongestRideWorthNamingSeconds = 5400;

    /// <summary>False where a rule was kept because there was nothing to judge, or by a week that was light without meaning to be.</summary>
    public static bool IsWorthNaming(Finding finding, WeekUnderReview review, ImmutableArray<Finding> findings)
    {
        var week = review.Week;
        var hardDays = week.Days.Count(d => d.IsHard);
        return finding.Rule switch
        {
            "hard-day-spacing" => hardDays > 1,
            "hard-day-count" => hardDays > 0,
            "long-ride-first" => hardDays > 2,
            "easy-rides-easy" => week.Rides.Any(r => r.Kind is RideKind.Recovery or RideKind.Endurance && r.DurationSeconds >= ShortestEasyRideSeconds),
            "weekly-growth" or "growth-is-endurance" => review.Past.LastWeek is { } last && week.Hours > last.Hours,
            "longest-ride-jump" => week.LongestRideSeconds >= LongestRideWorthNamingSeconds,
            "lighter-week" => week.Exception is ExceptionKind.Lighter || findings.All(f => f.Rule != "weekly-hours" || f.Verdict is Verdict.Kept or Verdict.NotJudged),
            _ => true,
        };
    }

    public static string Of(Finding finding, WeekEntry week) => finding.Rule switch
    {
        "hard-day-spacing" => "hard days spaced",
        "hard-day-count" => "number of hard days",
        "rest-days" => $"{Phrases.Count(RestDays(week))} rest or recovery {Phrases.Plural(RestDays(week), "day", "days")}",
        "rest-after-load" => "rest after load",
        "long-ride" => $"long ride {Phrases.Length(week.LongestRideSeconds)}",
        "endurance-volume" => $"{Phrases.Decimal(week.BandSeconds.Low / 3600.0, 1)} easy hours",
        "intensity-split" => "intensity split",
        "weekly-hours" => $"{Phrases.Decimal(week.Hours, 1)} h ridden",
        "chronic-ramp" => $"ramp {Sign(week.RampPerWeek)}{Phrases.Decimal(Math.Abs(week.RampPerWeek), 1)}",
        "weekly-growth" => "growth in small steps",
        "longest-ride-jump" => "longest ride in small steps",
        "growth-is-endurance" => "growth by endurance",
        "easy-rides-easy" => "easy rides easy",
        "lighter-week" => "a lighter week lately",
        "monotony" => week.Monotony is { } monotony ? $"monotony {Phrases.Decimal(monotony, 1)}" : "monotony",
        "long-ride-first" => "long ride before a third hard day",
        "threshold-fresh" => "threshold power not too low",
        _ => finding.Rule.Replace('-', ' '),
    };

    private static string Sign(double value) => value switch { < 0 => "−", > 0 => "+", _ => "" };

    private static int RestDays(WeekEntry week) => week.Days.Count(d => d.Kind is "rest" or "recovery");
}
