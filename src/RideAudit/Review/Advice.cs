using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Rules;

namespace RideAudit.Review;

/// <summary>Says what to do about a finding.</summary>
internal static class Advice
{
    /// <summary>One short sentence in the imperative.</summary>
    /// <param name="finding">The finding.</param>
    /// <param name="plan">The plan in force: hours that nobody planned are not called planned.</param>
    public static string Title(Finding finding, PlanInForce plan) => finding.Rule switch
    {
        "hard-day-spacing" => Spacing(finding),
        "hard-day-count" => $"Keep to {Phrases.Count(finding.Limit("high_days_at_most") ?? 0)} high {Phrases.Plural(finding.Limit("high_days_at_most") ?? 0, "day", "days")}{OnTop(finding)} a week.",
        "rest-days" => $"Leave {Phrases.Count(finding.Limit("rest_days_at_least") ?? 1)} {Phrases.Plural(finding.Limit("rest_days_at_least") ?? 1, "day", "days")} for rest or recovery.",
        "rest-after-load" => "Rest or ride easy after the two heaviest days.",
        "long-ride" => finding.Limit("long_ride_h") is { } hours ? $"Ride one long easy ride of {Phrases.Length(hours * 3600)}." : "Ride one long easy ride.",
        "long-ride-first" => "Ride the long ride in place of the third hard day.",
        "endurance-volume" => finding.Number("low_hours") is { } low && finding.Number("asked_low_hours") is { } asked
            ? $"Ride the easy hours: {Phrases.Decimal(low, 1)} of {Phrases.Decimal(asked, 1)} h."
            : "Ride more easy hours.",
        "intensity-split" => finding.Number("low_share") > finding.Number("intended_share")
            ? "Make the planned hard ride hard."
            : "Ride more of the time in the low band.",
        "weekly-hours" => plan.PlannedHoursFromHistory ? "Ride nearer the usual hours."
            : finding.Number("hours") > finding.Number("planned_hours") ? "Ride no more than the planned hours." : "Ride the hours that are planned.",
        "chronic-ramp" => "Let training load rise more slowly.",
        "weekly-growth" => "Add hours in smaller steps.",
        "longest-ride-jump" => "Lengthen the longest ride in smaller steps.",
        "growth-is-endurance" => "Grow by easy hours first.",
        "easy-rides-easy" => "Keep the easy rides easy.",
        "lighter-week" => "Plan a lighter week soon.",
        "monotony" => "Let hard days and easy days differ more.",
        "threshold-fresh" => "Test the threshold power again.",
        _ => finding.WouldHaveKept ?? finding.Sentence,
    };

    /// <summary>The numbers and what they rest on.</summary>
    public static string Detail(Finding finding) => $"{finding.Sentence} {Phrases.EvidenceOf(finding)}";

    private static string Spacing(Finding finding)
    {
        var dates = finding.Occurrences.OrderByDescending(o => o.Verdict).Select(o => o.Dates).FirstOrDefault(d => d.Length == 2);
        return dates.IsDefaultOrEmpty
            ? "Put an easier day between hard days."
            : $"Put an easier day between {Phrases.Day(dates[0])}’s and {Phrases.Day(dates[1])}’s hard rides.";
    }

    private static string OnTop(Finding finding) => finding.Limit("threshold_days_on_top") is > 0 and var days
        ? $" and {Phrases.Count(days)} threshold {Phrases.Plural(days, "day", "days")}"
        : "";
}
