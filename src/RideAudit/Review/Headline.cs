using System.Collections.Immutable;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Rules;

namespace RideAudit.Review;

/// <summary>Puts the week's verdict in one sentence.</summary>
internal static class Headline
{
    /// <summary>Rules that say much the same of a week: only the first of a group is named.</summary>
    private static readonly string[][] Groups =
    [
        ["hard-day-spacing", "rest-after-load", "hard-day-count"],
        ["long-ride-first", "long-ride", "endurance-volume"],
        ["chronic-ramp", "weekly-growth", "longest-ride-jump", "growth-is-endurance"],
        ["intensity-split", "easy-rides-easy"],
    ];

    public static string Of(WeekUnderReview week, ImmutableArray<Finding> ranked, ImmutableArray<Finding> findings)
    {
        if (week.Week.RideCount == 0)
            return week.Week.Finished ? "No rides this week." : "No rides yet this week.";
        if (findings.All(f => f.Verdict == Verdict.NotJudged))
            return "Too little is known to judge this week.";
        if (ranked.IsEmpty && findings.Count(f => f.Verdict == Verdict.NotJudged) > findings.Length / 2)
            return "Little of this week could be judged; what could was kept.";
        if (ranked.IsEmpty)
            return week.Week.Finished ? "The week kept the plan." : "So far the week keeps the plan.";
        if (week.Week.Exception is ExceptionKind.Away)
            return $"A week away, with {Phrases.Count(week.Week.RideCount)} {Phrases.Plural(week.Week.RideCount, "ride", "rides")}.";
        var broken = ranked.Where(f => f.Verdict == Verdict.Broken).ToArray();
        if (broken.Length == 0)
            return $"The plan was kept; worth a look: {Phrase(ranked[0], week.Plan)}.";
        var second = broken.Skip(1).FirstOrDefault(f => !SameGroup(f, broken[0]));
        var first = Phrases.Capital(Phrase(broken[0], week.Plan));
        return second is null ? first + "." : $"{first}, and {Phrase(second, week.Plan)}.";
    }

    private static bool SameGroup(Finding a, Finding b) =>
        Array.Exists(Groups, g => g.Contains(a.Rule) && g.Contains(b.Rule));

    private static string Phrase(Finding finding, PlanInForce plan) => finding.Rule switch
    {
        "hard-day-spacing" => finding.Smallest("hours_between") is { } hours
            ? $"two hard rides {Phrases.Decimal(hours, 0)} h apart"
            : "hard days back to back",
        "rest-after-load" => "no rest after the two heaviest days",
        "hard-day-count" => $"{Phrases.Count((finding.Number("high_days") ?? 0) + (finding.Number("threshold_days") ?? 0))} hard days",
        "rest-days" => finding.Number("rest_or_recovery_days") is { } days ? $"{Phrases.Count(days)} rest {Phrases.Plural(days, "day", "days")}" : "too few rest days",
        "long-ride-first" => "no long easy ride",
        "long-ride" => finding.Verdict == Verdict.Watch ? "a long ride not quite long or easy enough" : "no long easy ride",
        "endurance-volume" => "too few easy hours",
        "intensity-split" => finding.Number("low_share") > finding.Number("intended_share") ? "hardly any work above the low band" : "too much riding above the low band",
        "chronic-ramp" => "training load rising fast",
        "growth-is-endurance" => "growth by intensity instead of endurance",
        "easy-rides-easy" => "an easy ride ridden hard",
        "longest-ride-jump" => "a big jump in the longest ride",
        "weekly-growth" => "a big jump in hours",
        "monotony" => "every day much like the last",
        "lighter-week" => "no lighter week for a while",
        "weekly-hours" => finding.Number("hours") is { } ridden && finding.Number("planned_hours") is { } planned
            ? $"{Phrases.Decimal(ridden, 1)} h {(plan.PlannedHoursFromHistory ? "against a usual" : "of")} {Phrases.Decimal(planned, 1)} h{(plan.PlannedHoursFromHistory ? "" : " planned")}"
            : "hours far from the plan",
        "threshold-fresh" => "a threshold power that looks too low",
        _ => finding.Rule.Replace('-', ' '),
    };
}
