using RideAudit.Rules;

namespace RideAudit.Review;

/// <summary>Names what held, a few words a rule.</summary>
internal static class HeldWords
{
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
        "threshold-fresh" => "threshold power up to date",
        _ => finding.Rule.Replace('-', ' '),
    };

    private static string Sign(double value) => value switch { < 0 => "−", > 0 => "+", _ => "" };

    private static int RestDays(WeekEntry week) => week.Days.Count(d => d.Kind is "rest" or "recovery");
}
