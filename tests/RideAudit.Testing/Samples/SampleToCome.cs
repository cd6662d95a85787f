using System.Collections.Immutable;
using NodaTime;
using RideAudit.Document;
using RideAudit.Document.Layouts;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Rules;
using RideAudit.Weeks;

namespace RideAudit.Testing.Samples;

/// <summary>The weeks to come that pages are tried with, made by hand.</summary>
public static class SampleToCome
{
    private static readonly LocalDate Monday = new(2026, 6, 22);

    /// <summary>Every document by name.</summary>
    public static IReadOnlyDictionary<string, Func<NextDocument>> All { get; } = new Dictionary<string, Func<NextDocument>>
    {
        ["week"] = () => Of(Ordinary(0)),
        ["begun"] = () => Of(Begun()),
        ["event"] = () => Of(Event()),
        ["nothing"] = () => Of(Nothing()),
        ["crowded"] = () => Of(Crowded()) with { Rider = RiderOf("A rider whose label is far longer than any line has room for, with the team and the town in it, 選手あ"), Notes = [Long] },
        ["programme"] = () => Of([.. Enumerable.Range(0, 16).Select(i => i % 4 == 3 ? Ordinary(i) with { ProposedLighter = true, Hours = 3.8 } : Ordinary(i))]),
    };

    private static string Long => string.Join(' ', Enumerable.Repeat("What was laid out here stands as it was written, and whoever reads it reads all of it.", 6));

    private static NextDocument Of(params ImmutableArray<NextWeekEntry> weeks) => new() { AsOf = Monday, Rider = RiderOf("Rider A"), Weeks = weeks };

    private static RiderEntry RiderOf(string label) => new() { Label = label, Tier = Tier.Middle, Experience = Experience.Regular, TimeZone = "Europe/Lisbon" };

    private static NextWeekEntry Ordinary(int week)
    {
        var monday = Monday.PlusDays(7 * week);
        return new NextWeekEntry
        {
            StartsOn = monday,
            IsoWeek = IsoWeek.StartingOn(monday),
            From = monday,
            Hours = 6.5,
            AskedHours = 6.5,
            ExpectedStress = 340,
            Days =
            [
                Day(monday, 0, DayKind.Rest),
                Day(monday, 1, DayKind.High, Session(PlannedKind.High, "four fives", 60, 70, "15 min easy (138 to 163 W); 4 × 5 min at 270 to 280 W, 4 min easy between; 13 min easy.")),
                Day(monday, 2, DayKind.Endurance, Session(PlannedKind.Endurance, "steady and easy", 50, 36, "50 min at 158 to 173 W.") with { MinutesFrom = 45, MinutesTo = 55 }),
                Day(monday, 3, DayKind.Threshold, Session(PlannedKind.Threshold, "two twenties of tempo", 60, 67, "10 min easy (138 to 163 W); 2 × 20 min at 215 to 225 W, 5 min easy between; 5 min easy.")),
                Day(monday, 4, DayKind.Rest),
                Day(monday, 5, DayKind.Long, Session(PlannedKind.Long, "long and easy", 150, 104, "15 min easy (138 to 163 W); 2 h 15 min at 155 to 170 W.") with { MinutesTo = 160 }),
                Day(monday, 6, DayKind.Endurance, Session(PlannedKind.Recovery, null, 20, 8, "Very easy."), Session(PlannedKind.Endurance, "steady and easy", 50, 36, "50 min at 158 to 173 W.")),
            ],
            Verdicts = [],
            Notes = ["The review will ask for a long ride of 2 h 30 min."],
        };
    }

    private static NextWeekEntry Begun()
    {
        var week = Ordinary(0);
        var monday = week.StartsOn;
        return week with
        {
            From = monday.PlusDays(2),
            Days = week.Days.SetItem(0, Day(monday, 0, DayKind.Endurance) with { RiddenMinutes = 62 }).SetItem(1, Day(monday, 1, DayKind.Rest)),
            Notes = ["Tuesday’s high session was not ridden and is left out: the week has its hard days without it."],
        };
    }

    private static NextWeekEntry Event()
    {
        var week = Ordinary(0);
        var monday = week.StartsOn;
        return week with
        {
            Exception = ExceptionKind.Event,
            Days =
            [
                Day(monday, 0, DayKind.Rest),
                Day(monday, 1, DayKind.Endurance, Session(PlannedKind.Endurance, "steady and easy", 45, 32, "45 min at 158 to 173 W.")),
                Day(monday, 2, DayKind.Rest) with { Exception = ExceptionKind.Away },
                Day(monday, 3, DayKind.Rest),
                Day(monday, 4, DayKind.Endurance, Session(PlannedKind.Endurance, "openers", 45, 35, "20 min easy; 3 × 1 min at 250 to 263 W.")),
                Day(monday, 5, DayKind.High, Session(PlannedKind.Event, "the hill race", 0, null, "Start easy.")) with { Exception = ExceptionKind.Event },
                Day(monday, 6, DayKind.Rest),
            ],
        };
    }

    private static NextWeekEntry Nothing()
    {
        var week = Ordinary(0);
        return week with
        {
            Hours = 0,
            ExpectedStress = 0,
            Exception = ExceptionKind.Away,
            Days = [.. week.Days.Select((_, i) => Day(week.StartsOn, i, DayKind.Rest) with { Exception = ExceptionKind.Away })],
        };
    }

    private static NextWeekEntry Crowded()
    {
        var week = Ordinary(0);
        return week with
        {
            Days = [.. week.Days.Select((_, i) => Day(week.StartsOn, i, DayKind.High, Session(PlannedKind.High, "own", 100, 110, Long), Session(PlannedKind.Recovery, "spin", 30, 10, "Very easy.")))],
            GaveWay = new GaveWayEntry(["hard-day-count"], $"No layout keeps “Hard days of a week”: the rides that stand leave no other. {Long}"),
            Verdicts = [Finding("hard-day-count", Verdict.Broken, "Seven high days, where two are enough."), Finding("long-ride", Verdict.Kept, "A long ride.")],
            Notes = [Long, Long],
        };
    }

    private static Finding Finding(string rule, Verdict verdict, string sentence) =>
        SampleReviews.Middle().Findings[0] with { Rule = rule, Verdict = verdict, Sentence = sentence };

    /// <summary>A day of a week to come.</summary>
    /// <param name="day">Days after the Monday.</param>
    public static NextDayEntry Day(LocalDate monday, int day, DayKind kind, params ImmutableArray<NextSessionEntry> sessions) =>
        new() { Date = monday.PlusDays(day), Kind = kind, Sessions = sessions };

    /// <summary>A session of one exact length.</summary>
    public static NextSessionEntry Session(PlannedKind kind, string? name, int minutes, double? stress, string sentence) => new()
    {
        Kind = kind,
        Session = name,
        Minutes = minutes,
        MinutesFrom = minutes,
        MinutesTo = minutes,
        ExpectedStress = stress,
        Blocks = null,
        Sentence = sentence,
    };
}
