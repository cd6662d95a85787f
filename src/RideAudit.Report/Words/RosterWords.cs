using System.Globalization;
using NodaTime;
using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Rules;

namespace RideAudit.Report.Words;

/// <summary>A roster's counts and needs in sentences.</summary>
internal static class RosterWords
{
    private const string Order = "In order: broken rules, those against too much too close together first; no review; to watch; kept.";

    /// <summary>How many broke a rule and how many have no review: <c>7 of 40 riders broke a rule; 3 have no review.</c></summary>
    public static string Headline(RosterDocument roster)
    {
        int all = roster.Riders.Length, broken = Needing(roster, RosterNeed.Broken), unseen = Needing(roster, RosterNeed.NoReview);
        if (all == 0)
            return "No riders.";
        if (all == 1)
            return OneRider(roster.Riders[0]);
        var first = broken == 0 ? $"None of {all} riders broke a rule" : $"{broken} of {all} riders broke a rule";
        return unseen == 0 ? first + "." : $"{first}; {unseen} {(unseen == 1 ? "has" : "have")} no review.";
    }

    /// <summary>The other counts, and what the order is.</summary>
    public static string Subline(RosterDocument roster)
    {
        int all = roster.Riders.Length, watch = Needing(roster, RosterNeed.Watch), kept = Needing(roster, RosterNeed.Kept);
        if (all < 2)
            return "";
        var unused = roster.Riders.Count(rider => rider.FilesNotUsed > 0);
        var files = unused == 0 ? "" : $" {Shown.Tally(unused, "rider")} {(unused == 1 ? "has" : "have")} files that could not be used.";
        return $"{watch.ToString(CultureInfo.InvariantCulture)} to watch, {kept.ToString(CultureInfo.InvariantCulture)} kept every rule that could be judged.{files} {Order}";
    }

    /// <summary>The week that all reviews are of; null when they differ or there is none.</summary>
    public static LocalDate? Week(RosterDocument roster)
    {
        LocalDate[] weeks = [.. roster.Riders.Where(rider => rider.WeekStartsOn is not null).Select(rider => rider.WeekStartsOn!.Value).Distinct()];
        return weeks.Length == 1 ? weeks[0] : null;
    }

    /// <summary>A need's mark.</summary>
    public static Verdict Mark(RosterNeed need) => need switch
    {
        RosterNeed.Broken => Verdict.Broken,
        RosterNeed.Watch => Verdict.Watch,
        RosterNeed.Kept => Verdict.Kept,
        _ => Verdict.NotJudged,
    };

    /// <summary>How many rules of each verdict asked for the need; empty when none is worth a count.</summary>
    public static string Counts(RosterEntry rider)
    {
        var parts = new List<string>();
        if (rider.Broken.Length > 0)
            parts.Add(Shown.Tally(rider.Broken.Length, "rule"));
        if (rider.Watch.Length > 0)
            parts.Add(parts.Count > 0 ? $"{rider.Watch.Length}{Shown.Joint}watch" : Shown.Tally(rider.Watch.Length, "rule"));
        return string.Join(", ", parts);
    }

    /// <summary>Hours of those planned.</summary>
    public static string Hours(RosterEntry rider) => rider.Hours is not { } hours ? Shown.Missing
        : rider.PlannedHours is { } planned ? $"{Shown.Number(hours, 1)}{Shown.Joint}of{Shown.Joint}{Shown.Number(planned, 1)}" : Shown.Number(hours, 1);

    private static int Needing(RosterDocument roster, RosterNeed need) => roster.Riders.Count(rider => rider.Need == need);

    private static string OneRider(RosterEntry rider) => rider.Need switch
    {
        RosterNeed.Broken => "The one rider broke a rule.",
        RosterNeed.NoReview => "The one rider has no review.",
        RosterNeed.Watch => "The one rider has a rule to watch.",
        _ => "The one rider kept every rule that could be judged.",
    };
}
