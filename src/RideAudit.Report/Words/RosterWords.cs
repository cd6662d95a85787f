using NodaTime;
using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Report.Drawing;
using RideAudit.Report.Look;
using RideAudit.Rules;
using RideAudit.Weeks;

namespace RideAudit.Report.Words;

/// <summary>A roster's counts, needs and facts in words.</summary>
internal static class RosterWords
{
    /// <summary>How the small spacing lines are to be read.</summary>
    public const string LineKey =
        "The last four weeks of each rider, one scale a rider. Width: time. Height: intensity ratio squared. Light: easy, middle: threshold, dark: high; "
        + "open: intensity unknown. A bar beneath: ill, away or an event.";

    private const string Order = "In order of risk to the rider: coming back, rest and spacing first; then ill weeks and weeks that nobody has seen; then what was missed.";

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
        if (roster.Riders.Length < 2)
            return "";
        (RosterNeed Need, string Words)[] others =
        [
            (RosterNeed.Ill, "ill"), (RosterNeed.Watch, "to watch"), (RosterNeed.Event, "with an event"), (RosterNeed.NotJudged, "not judged"), (RosterNeed.Away, "away"),
            (RosterNeed.Kept, "kept every rule that could be judged"),
        ];
        var counts = string.Join(", ", others.Select(other => (other.Words, Count: Needing(roster, other.Need))).Where(other => other.Count > 0).Select(other => $"{other.Count} {other.Words}"));
        var unused = roster.Riders.Count(rider => rider.FilesNotUsed > 0);
        var files = unused == 0 ? "" : $" {Shown.Tally(unused, "rider")} {(unused == 1 ? "has" : "have")} files that could not be used.";
        return $"{(counts.Length > 0 ? counts + "." : "")}{files} {Order}".Trim();
    }

    /// <summary>The week that all reviews are of; null when they differ or there is none.</summary>
    public static LocalDate? Week(RosterDocument roster)
    {
        LocalDate[] weeks = [.. roster.Riders.Where(rider => rider.WeekStartsOn is not null).Select(rider => rider.WeekStartsOn!.Value).Distinct()];
        return weeks.Length == 1 ? weeks[0] : null;
    }

    /// <summary>A rider's row of marks in words.</summary>
    public static string Verdicts(RosterEntry rider) => $"{rider.Label}, {Formatting.Words.Of(rider.Need)}. "
        + string.Join(" ", rider.Verdicts.GroupBy(one => one.Verdict).OrderByDescending(group => group.Key)
            .Select(group => $"{Shown.Capital(Formatting.Words.Of(group.Key))}: {string.Join(", ", group.Select(one => one.Name))}."));

    /// <summary>A rider's small spacing lines in words; empty without weeks.</summary>
    public static string Weeks(RosterEntry rider) => string.Join(" ", rider.Weeks.Select(Week));

    /// <summary>A need's mark and word.</summary>
    public static void DrawNeed(Surface surface, RosterEntry rider, float markAt, float wordAt, float baseline)
    {
        VerdictMark.Draw(surface, Mark(rider.Need), markAt, baseline, Styles.Body.Size);
        surface.Text(Formatting.Words.Of(rider.Need), NeedStyle(rider), wordAt, baseline);
    }

    /// <summary>How a need's word is set.</summary>
    public static TextStyle NeedStyle(RosterEntry rider)
    {
        var wanting = rider.Need is RosterNeed.Broken or RosterNeed.Watch;
        return (wanting ? Styles.Strong : Styles.Body) with { Colour = wanting ? Palette.Rust : Palette.Ink };
    }

    private static string Week(SmallWeek week)
    {
        SmallWeek.Day[] ridden = [.. week.Days.Where(day => day.Hours > 0)];
        var lead = $"Week of {Shown.Date(week.StartsOn)}: ";
        if (ridden.Length == 0)
            return lead + "no ride" + Excepted(week) + ".";
        var hard = ridden.Count(day => day.Kind is DayKind.High or DayKind.Threshold);
        var stress = ridden.All(day => day.Stress is not null) ? $", stress {Shown.Number(ridden.Sum(day => day.Stress ?? 0))}" : "";
        return $"{lead}{Shown.Hours(ridden.Sum(day => day.Hours))} on {Shown.Tally(ridden.Length, "day")}{stress}, "
            + $"{(hard == 0 ? "no hard day" : Shown.Tally(hard, "hard day"))}{Excepted(week)}.";
    }

    private static string Excepted(SmallWeek week) =>
        string.Concat(week.Days.Where(day => day.Exception is not null and not ExceptionKind.Lighter).GroupBy(day => day.Exception!.Value)
            .Select(days => $", {Formatting.Words.Of(days.Key)} on {Shown.Tally(days.Count(), "day")}"));

    private static Verdict Mark(RosterNeed need) => need switch
    {
        RosterNeed.Broken => Verdict.Broken,
        RosterNeed.Watch => Verdict.Watch,
        RosterNeed.Kept => Verdict.Kept,
        _ => Verdict.NotJudged,
    };

    private static int Needing(RosterDocument roster, RosterNeed need) => roster.Riders.Count(rider => rider.Need == need);

    private static string OneRider(RosterEntry rider) => rider.Need switch
    {
        RosterNeed.Broken => "The one rider broke a rule.",
        RosterNeed.NoReview => "The one rider has no review.",
        RosterNeed.Watch => "The one rider has a rule to watch.",
        RosterNeed.Ill => "The one rider is ill.",
        RosterNeed.Away => "The one rider was away.",
        RosterNeed.Event => "The one rider had an event.",
        RosterNeed.NotJudged => "Much of the one rider’s week could not be judged.",
        _ => "The one rider kept every rule that could be judged.",
    };
}
