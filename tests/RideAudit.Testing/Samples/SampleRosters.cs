using System.Collections.Immutable;
using NodaTime;
using RideAudit.Document;
using RideAudit.Plan;
using RideAudit.Rules;
using RideAudit.Weeks;

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
        ["every-state"] = EveryState,
    };

    /// <summary>So many riders: a sixth with broken rules, a tenth without a review, a quarter to watch, the rest kept.</summary>
    public static RosterDocument Of(int riders)
    {
        int broken = (riders + 5) / 6, unseen = riders / 10, watch = riders / 4;
        return Told(new RosterDocument("rideaudit-roster/1", new LocalDate(2026, 6, 22), [.. Enumerable.Range(1, riders).Select(number =>
            number <= broken ? Broken(number)
            : number <= broken + unseen ? Unseen(number)
            : number <= broken + unseen + watch ? Seen(number) with { Need = RosterNeed.Watch, Why = "No lighter week in the last five.", Watch = ["lighter-week"] }
            : Seen(number))]));
    }

    /// <summary>One rider of every need, with all that can be known of a rider.</summary>
    public static RosterDocument EveryState()
    {
        var all = Of(9);
        RosterNeed[] needs = [RosterNeed.Broken, RosterNeed.Broken, RosterNeed.Ill, RosterNeed.NoReview, RosterNeed.Watch, RosterNeed.NotJudged, RosterNeed.Away, RosterNeed.Event, RosterNeed.Kept];
        return Told(all with
        {
            Riders =
            [
                .. needs.Select((need, i) => need switch
                {
                    RosterNeed.Broken => Broken(i + 1) with { Note = "Knee was sore on Sunday; ask how it is.\n\nTest again after the holiday.", NextEvent = new(new(2026, 7, 12), new(2026, 7, 12), "hill race") },
                    RosterNeed.NoReview => Unseen(i + 1),
                    RosterNeed.Ill => Seen(i + 1) with { Need = need, Exception = ExceptionKind.Ill, Why = "An ill week: Wednesday to Friday out, one ride." },
                    RosterNeed.Away => Seen(i + 1) with { Need = need, Exception = ExceptionKind.Away, Why = "A week away, no ride." },
                    RosterNeed.Watch => Seen(i + 1) with { Need = need, Watch = ["monotony"], Why = "The plan was kept; worth a look: days much alike." },
                    _ => Seen(i + 1) with { Need = need, PlannedSessions = 5, PlannedSessionsDone = 4, NextEvent = new(new(2026, 6, 20), new(2026, 6, 23), null) },
                }),
            ],
        });
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

    // Verdicts, shared findings and facts follow from what was laid down, as the builder would have them.
    private static RosterDocument Told(RosterDocument roster)
    {
        ImmutableArray<RosterEntry> riders = [.. roster.Riders.Select(rider => rider.WeekStartsOn is null ? rider : rider with { Verdicts = Verdicts(rider) })];
        riders = [.. riders.Select(rider => rider with { Facts = [.. Facts(rider)] })];
        var shared = riders
            .SelectMany(rider => rider.Verdicts.Where(verdict => verdict.Verdict is Verdict.Broken or Verdict.Watch).Select(verdict => (Verdict: verdict, rider.Folder)))
            .GroupBy(one => one.Verdict)
            .Where(one => one.Count() > 1)
            .OrderByDescending(one => one.Key.Verdict)
            .Select(one => new RosterDocument.SharedFinding(one.Key.Rule, one.Key.Name, one.Key.Verdict, [.. one.Select(of => of.Folder)]));
        return roster with { Riders = riders, Shared = [.. shared] };
    }

    private static IEnumerable<string> Facts(RosterEntry rider)
    {
        if (rider.Broken.Length > 0)
            yield return $"Broken: {string.Join(", ", rider.Broken)}.";
        if (rider.WeekStartsOn is not null)
            yield return "3.9 of 6.5\u00A0h · stress\u00A0227 · 72\u00A0%\u00A0low · ramp\u00A0−1.4 · 4 of 5\u00A0planned sessions ridden";
        if (rider.NextEvent is not null)
            yield return "Next event: hill race, 12 July, in 20\u00A0days.";
        if (rider.Note is not null)
            yield return "Note: " + rider.Note.Replace("\n\n", " ", StringComparison.Ordinal);
    }

    private static ImmutableArray<RosterEntry.RuleVerdict> Verdicts(RosterEntry rider) =>
        [.. RuleBook.Standard.Ids.Select((rule, place) => new RosterEntry.RuleVerdict(rule, char.ToUpperInvariant(rule[0]) + rule[1..].Replace('-', ' '),
            rider.Broken.Contains(rule) ? Verdict.Broken : rider.Watch.Contains(rule) ? Verdict.Watch : place < rider.NotJudged ? Verdict.NotJudged : Verdict.Kept))];

    private static ImmutableArray<SmallWeek> Weeks(int number) =>
        [.. Enumerable.Range(0, 4).Select(week => new SmallWeek(new LocalDate(2026, 5, 25).PlusWeeks(week), [.. Enumerable.Range(0, 7).Select(day => Day(number, week, day))]))];

    private static SmallWeek.Day Day(int number, int week, int day)
    {
        var date = new LocalDate(2026, 5, 25).PlusDays((7 * week) + day);
        var hours = (number + week + day) % 3 == 0 ? 0 : day == 5 ? 3.2 : 1.1;
        var kind = hours <= 0 ? DayKind.Rest : day switch { 1 => DayKind.High, 3 => DayKind.Threshold, 5 => DayKind.Long, 6 => DayKind.Unrated, _ => DayKind.Endurance };
        return new SmallWeek.Day
        {
            Date = date,
            Kind = kind,
            Hours = hours,
            Stress = kind == DayKind.Unrated ? null : hours * (kind == DayKind.High ? 82 : 45),
            Exception = number % 5 == 3 && week == 3 && day < 4 ? ExceptionKind.Ill : null,
        };
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
        Weeks = Weeks(number),
    };
}
