using System.Collections.Immutable;
using NodaTime;
using RideAudit.Formatting;
using RideAudit.Held;
using RideAudit.Rules;

namespace RideAudit.Review;

/// <summary>Says whose a broken rule is, without praise or blame.</summary>
internal static class PlanWords
{
    private const int MostNamed = 2;

    /// <summary>What the plan itself breaks; null where it breaks nothing.</summary>
    public static string? OfPlan(ImmutableArray<Finding> breaks)
    {
        if (breaks.IsEmpty)
            return null;
        var rules = Shown.Count(breaks.Length, "rule");
        return $"Ridden exactly as planned, the week would break {rules}, which is the plan’s doing: {string.Join(' ', breaks.Select(b => b.Sentence))}";
    }

    /// <summary>What a change did to the rules; null where there is nothing to say.</summary>
    public static string? OfChange(HeldLine line, ImmutableArray<Finding> against)
    {
        if (against.IsEmpty)
            return line.Outcomes is [HeldOutcome.Moved] ? "No rule is the worse for it." : null;
        return $"That {Shown.List(against.Take(MostNamed).Select(f => Did(f, line)))}.";
    }

    private static string Did(Finding finding, HeldLine line) => finding.Rule switch
    {
        "hard-day-spacing" => AreNeighbours(finding, line) ? "put two hard days next to each other" : "put hard days too close together",
        "hard-day-count" => "made a hard day too many",
        "rest-days" => "left too few rest days",
        "rest-after-load" => "left too little rest after a heavy day",
        "long-ride" => "left the week without its long ride",
        "endurance-volume" => "took from its easy hours",
        "intensity-split" => "moved the intensity split",
        "weekly-hours" => "put the hours off the plan",
        "easy-rides-easy" => "made an easy ride a harder one",
        "monotony" => "made the days more alike",
        "long-ride-first" => "put a hard day where the long ride belongs",
        _ => $"went against the rule on {char.ToLowerInvariant(finding.Name[0])}{finding.Name[1..]}",
    };

    private static bool AreNeighbours(Finding finding, HeldLine line) => finding.Occurrences.Any(o =>
        o.Dates is [var first, .., var last] && Period.DaysBetween(first, last) == 1 && (line.RiddenOn is not { } day || o.Dates.Contains(day)));
}
