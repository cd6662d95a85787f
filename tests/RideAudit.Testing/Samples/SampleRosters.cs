using System.Collections.Immutable;
using NodaTime;
using RideAudit.Document;

namespace RideAudit.Testing.Samples;

/// <summary>The rosters the overview is tried with.</summary>
public static class SampleRosters
{
    private static readonly string[] Rules = ["hard-day-spacing", "long-ride", "endurance-volume", "weekly-hours", "long-ride-first", "chronic-ramp"];

    private static readonly string[] Reasons =
    [
        "Two hard rides 23 h apart, and no long easy ride.", "Four hard days, and no rest day after the heaviest two.",
        "Chronic load rose by 9.4 points, more than twice what the four weeks before had added together.",
    ];

    /// <summary>Every roster by name.</summary>
    public static IReadOnlyDictionary<string, Func<RosterDocument>> All { get; } = new Dictionary<string, Func<RosterDocument>>
    {
        ["none"] = () => Of(0),
        ["one"] = () => Of(1),
        ["forty"] = () => Of(40),
        ["ninety"] = () => Of(90),
        ["long-labels"] = LongLabels,
    };

    /// <summary>So many riders: a sixth with broken rules, a tenth without a review, a quarter to watch, the rest kept.</summary>
    public static RosterDocument Of(int riders)
    {
        int broken = (riders + 5) / 6, unseen = riders / 10, watch = riders / 4;
        return new RosterDocument("rideaudit-roster/1", new LocalDate(2026, 6, 22), [.. Enumerable.Range(1, riders).Select(number =>
            number <= broken ? Broken(number)
            : number <= broken + unseen ? Unseen(number)
            : number <= broken + unseen + watch ? Seen(number) with { Need = RosterNeed.Watch, Why = "No lighter week in the last five.", Watch = ["lighter-week"] }
            : Seen(number))]);
    }

    /// <summary>Labels that need more than one line, in several scripts, and a week that differs.</summary>
    public static RosterDocument LongLabels()
    {
        var few = Of(12);
        string[] labels =
        [
            "A rider whose label is far longer than any line has room for, with the team and the bicycle in it, and the town besides",
            "Αθλήτρια Β, ομάδα Θεσσαλονίκης", "選手あ 二番 東京", "Спортсменка Г, команда Одеса", "AVeryLongLabelWithoutAnyPlaceWhereItCouldBeBrokenSoThatItMustBeCutInsideTheWord",
        ];
        ImmutableArray<RosterEntry> riders = [.. few.Riders.Select((rider, i) => i >= labels.Length ? rider : rider with
        {
            Label = labels[i],
            ReviewFile = rider.ReviewFile is null ? null : $"{labels[i]}-review-2026-06-15.pdf",
        })];
        return few with { Riders = riders.SetItem(8, riders[8] with { WeekStartsOn = new LocalDate(2026, 6, 14), FilesNotUsed = 2 }) };
    }

    private static RosterEntry Broken(int number) => Seen(number) with
    {
        Need = RosterNeed.Broken,
        Why = Reasons[number % Reasons.Length],
        Broken = [.. Rules.Take(1 + (number % 5))],
        Watch = [.. Enumerable.Repeat("lighter-week", number % 3)],
        RampPerWeek = Math.Round(-4.2 + (number * 1.3), 1),
    };

    private static RosterEntry Unseen(int number) => new()
    {
        Folder = $"rider-{number:00}",
        Label = $"rider-{number:00}",
        Need = RosterNeed.NoReview,
        Why = $"rider-{number:00}/rider.toml:4:1: found the unknown key 'weekly_hour'; allowed: weekly_hours and the other keys of [plan].",
    };

    private static RosterEntry Seen(int number) => new()
    {
        Folder = $"rider-{number:00}",
        Label = $"Rider {number:00}",
        Need = RosterNeed.Kept,
        Why = "A week as planned.",
        WeekStartsOn = new LocalDate(2026, 6, 15),
        NotJudged = number % 4,
        Hours = 3.5 + (number % 9 * 1.37),
        PlannedHours = number % 7 == 3 ? null : 4 + (number % 9 * 1.25),
        Stress = 180.4 + (number % 11 * 42.3),
        LowShare = number % 13 == 5 ? null : 0.58 + (number % 8 * 0.047),
        RampPerWeek = Math.Round(-3.1 + (number % 10 * 0.8), 1),
        FilesNotUsed = number % 17 == 7 ? 1 : 0,
        ReviewFile = $"rider-{number:00}-review-2026-06-15.pdf",
    };
}
