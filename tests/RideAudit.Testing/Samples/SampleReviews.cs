using NodaTime;
using RideAudit.Document;
using RideAudit.Rules;
using RideAudit.Rules.Changes;

namespace RideAudit.Testing.Samples;

/// <summary>The reviews the pages are tried with: each tier, and the shapes that strain a layout.</summary>
public static class SampleReviews
{
    /// <summary>Every sample by name.</summary>
    public static IReadOnlyDictionary<string, Func<ReviewDocument>> All { get; } = new Dictionary<string, Func<ReviewDocument>>
    {
        ["low"] = Low,
        ["middle"] = Middle,
        ["high"] = High,
        ["very-high"] = VeryHigh,
        ["new-rider"] = NewRider,
        ["heart-rate-only"] = HeartRateOnly,
        ["no-rides"] = NoRides,
        ["twenty-one-rides"] = TwentyOneRides,
        ["long-notices"] = LongNotices,
        ["letter"] = Letter,
        ["greek"] = Greek,
        ["japanese"] = Japanese,
        ["noted"] = Noted,
        ["crowded"] = Crowded,
        ["event"] = Event,
    };

    /// <summary>Names, for theories.</summary>
    public static IEnumerable<object[]> Names => All.Keys.Select(name => new object[] { name });

    public static ReviewDocument Middle() => ReviewMaker.Make(MiddleSpec);

    public static ReviewDocument Letter() => Middle();

    public static ReviewDocument Greek() => ReviewMaker.Make(MiddleSpec with { Label = "Αθλήτρια Β, ομάδα Θεσσαλονίκης" });

    public static ReviewDocument Japanese() => ReviewMaker.Make(MiddleSpec with { Label = "選手あ 二番 東京" });

    public static ReviewDocument Noted() => ReviewMaker.Make(MiddleSpec with
    {
        Label = "A rider whose label is far longer than any page head has room for, with the team and the bicycle in it",
        Note = "Good week in spite of the spacing. **Keep the Friday ride**, it is the base of what follows.\n\n- *Thursday* rather than Wednesday\n- the long one on Sunday, all of it easy\n\nWrite to me after the long ride.",
    });

    /// <summary>Every part of page one at its longest, on the shorter paper.</summary>
    public static ReviewDocument Crowded()
    {
        var middle = Noted();
        var detail = string.Join(' ', Enumerable.Repeat("Longest ride 1 h 00, asked 2 h 30 with at least 75 % low, as the plan in force says for this tier.", 3));
        return middle with
        {
            Summary = middle.Summary with
            {
                Headline = "Two hard rides 23 hours apart, three hard days in all, no long easy ride, and two thirds of the hours that the plan has for the week.",
                Subline = middle.Summary.Subline + " Nothing else of the week needs a change before the long ride is in its place again.",
                ToChange = [.. middle.Summary.ToChange.Select(advice => advice with { Title = advice.Title + " Then look at the next week’s days again, and keep one of them free.", Detail = detail })],
                Held = [.. Enumerable.Range(1, 14).Select(number => $"what held, number {number}")],
                SplitSentence = middle.Summary.SplitSentence + " Polarization index 1.86, which says how far the middle stands behind the two ends; above 2 is polarised.",
            },
        };
    }

    /// <summary>A week with an event, two rides on a day, other activity on days with and without a ride; weeks away and lighter before it.</summary>
    public static ReviewDocument Event() => ReviewMaker.Make(new ReviewSpec
    {
        Exception = "event",
        OtherHours = new Dictionary<int, double> { [0] = 0.75, [2] = 1.5 },
        PastExceptions = new Dictionary<int, string> { [2] = "away", [3] = "away", [5] = "event" },
        Headline = "A stage event of three days, as meant.",
        Findings = SampleFindings.NoneJudged("The week holds an event.", SampleFindings.Finding("rest-days", Verdict.Kept, "Three rest or recovery days; 2 asked.")),
        Held = ["three rest or recovery days"],
        Thresholds = SampleThresholds.Make("2026-06-12-1000.fit"),
        Rides =
        [
            new RideSpec(2, new LocalTime(18, 0), 45, 0.55, "recovery", 0, 0),
            new RideSpec(4, new LocalTime(10, 0), 62, 0.97, "high", 0.2, 0.6), new RideSpec(4, new LocalTime(16, 0), 105, 0.82, "high", 0.2, 0.25),
            new RideSpec(5, new LocalTime(10, 0), 210, 0.8, "high", 0.2, 0.2), new RideSpec(6, new LocalTime(10, 0), 240, 0.78, "threshold", 0.25, 0.1),
        ],
    });

    public static ReviewDocument Low() => ReviewMaker.Make(new ReviewSpec
    {
        Tier = "low",
        PlannedHours = 4.5,
        LowShare = 0.70,
        LongRideHours = 2,
        PlanWeek = null,
        PlanWeeks = null,
        Headline = "A steady week: every rule kept.",
        Held = ["spacing", "one hard day", "four rest days", "long ride 2 h 05", "split 82 % low", "hours"],
        Rides =
        [
            new RideSpec(1, new LocalTime(18, 10), 60, 0.84, "high", 0.06, 0.27),
            new RideSpec(3, new LocalTime(18, 0), 70, 0.64, "endurance", 0.03, 0),
            new RideSpec(6, new LocalTime(9, 5), 125, 0.66, "long", 0.04, 0),
        ],
    });

    public static ReviewDocument High() => ReviewMaker.Make(new ReviewSpec
    {
        Tier = "high",
        PlannedHours = 11,
        LowShare = 0.8,
        Tolerance = 0.05,
        LongRideHours = 3,
        HistoryWeeks = 26,
        Headline = "Enough hours, but a third of them above easy.",
        Findings = SampleFindings.With(
            SampleFindings.Finding("intensity-split", Verdict.Broken, "Low share 67 %, intended 80 % ± 5 points.") with
            {
                WouldHaveKept = "1 h 20 of the middle ridden low.",
                Limits = [SampleFindings.Limit("intended_low_share", 0.8), SampleFindings.Limit("split_tolerance", 0.05)],
                Occurrences = [new Occurrence { Verdict = Verdict.Broken, Numbers = [new("low_share", 0.67, "67\u00A0% low")] }],
            },
            SampleFindings.Finding("easy-rides-easy", Verdict.Watch, "Friday’s easy ride was above low for 15 % of its time.") with
            {
                Occurrences = [new Occurrence { Verdict = Verdict.Watch, Dates = [new(2026, 6, 12)], Rides = ["2026-06-12-0700.fit"], Numbers = [new("above_low_share", 0.15, "15\u00A0% above low")] }],
            }),
        ToChange =
        [
            new ChangeAdvice("intensity-split", "Ride the tempo hours easy.", "67 % low, 80 % intended. Published study: three-zone shares in endurance athletes."),
            new ChangeAdvice("easy-rides-easy", "Keep Friday’s ride below the middle band.", "15 % of it above low; 10 % asks for a look. Common practice."),
        ],
        Rides =
        [
            new RideSpec(1, new LocalTime(7, 0), 90, 0.88, "high", 0.2, 0.3),
            new RideSpec(2, new LocalTime(7, 0), 75, 0.62, "recovery", 0.02, 0),
            new RideSpec(3, new LocalTime(17, 30), 105, 0.86, "threshold", 0.45, 0.1),
            new RideSpec(4, new LocalTime(7, 0), 60, 0.68, "endurance", 0.15, 0),
            new RideSpec(5, new LocalTime(8, 30), 200, 0.74, "long", 0.24, 0.02),
            new RideSpec(6, new LocalTime(9, 0), 120, 0.76, "threshold", 0.42, 0.03),
        ],
    });

    public static ReviewDocument VeryHigh() => ReviewMaker.Make(new ReviewSpec
    {
        Tier = "very high",
        PlannedHours = 17,
        LowShare = 0.9,
        Tolerance = 0.05,
        LongRideHours = 4,
        HistoryWeeks = 26,
        Headline = "A big week that held together.",
        Findings = SampleFindings.With(SampleFindings.Finding("chronic-ramp", Verdict.Watch, "Chronic load rose by 5.6 points; above 5 asks for a look.")),
        ToChange = [new ChangeAdvice("chronic-ramp", "Let the next week grow no further.", "Chronic load rose by 5.6 points; above 5 asks for a look. Common practice.")],
        Rides =
        [
            new RideSpec(0, new LocalTime(8, 0), 120, 0.63, "endurance", 0.02, 0),
            new RideSpec(1, new LocalTime(8, 0), 150, 0.82, "high", 0.1, 0.2),
            new RideSpec(2, new LocalTime(8, 0), 150, 0.64, "endurance", 0.02, 0),
            new RideSpec(3, new LocalTime(8, 0), 60, 0.55, "recovery", 0, 0), new RideSpec(3, new LocalTime(17, 0), 75, 0.57, "recovery", 0, 0),
            new RideSpec(4, new LocalTime(8, 0), 140, 0.8, "high", 0.08, 0.18),
            new RideSpec(5, new LocalTime(8, 0), 290, 0.66, "long", 0.04, 0.01), new RideSpec(6, new LocalTime(9, 0), 160, 0.62, "endurance", 0.02, 0),
        ],
    });

    public static ReviewDocument NewRider() => ReviewMaker.Make(new ReviewSpec
    {
        Label = "Rider N",
        Tier = null,
        PlannedHours = null,
        LowShare = null,
        Tolerance = null,
        LongRideHours = null,
        HistoryWeeks = 1,
        SettlingIn = true,
        PlanWeek = null,
        PlanWeeks = null,
        Headline = "A first week on record.",
        Subline = "One week of history: most rules need more before they can judge.",
        Findings = SampleFindings.NoneJudged("There is one week of history; this rule needs more.", SampleFindings.Finding("hard-day-spacing", Verdict.Kept, "No two hard days met.")),
        Held = ["spacing"],
        Rides = [new RideSpec(2, new LocalTime(18, 30), 45, 0.66, "endurance", 0.08, 0.01) { Sport = "indoor" }, new RideSpec(5, new LocalTime(10, 0), 80, 0.7, "endurance", 0.12, 0.02)],
    });

    public static ReviewDocument HeartRateOnly() => ReviewMaker.Make(new ReviewSpec
    {
        Label = "Rider H",
        Headline = "Three easy rides and one that nothing measured.",
        Findings = SampleFindings.With(SampleFindings.Finding("monotony", Verdict.NotJudged, "Monotony not judged.") with { Reason = "1.3 h have no stress: more than 10 % of the hours this rule looks at." }),
        Rides =
        [
            new RideSpec(1, new LocalTime(18, 0), 60, 0.72, "endurance", 0, 0) { Power = false },
            new RideSpec(3, new LocalTime(18, 0), 50, 0.92, "threshold", 0, 0) { Power = false, Rating = 7 },
            new RideSpec(5, new LocalTime(9, 0), 150, 0.68, "long", 0, 0) { Power = false },
            new RideSpec(6, new LocalTime(9, 0), 78, 0.6, "unrated", 0, 0) { Power = false, HeartRate = false, Stressed = false, Remarks = ["No power and no heart rate: the ride has no stress and no kind."] },
        ],
    });

    public static ReviewDocument NoRides() => ReviewMaker.Make(new ReviewSpec
    {
        Headline = "No ride this week.",
        Subline = "Hours are to watch; nothing else can be judged.",
        Findings = SampleFindings.NoneJudged("There is no ride in this week.", SampleFindings.Finding("weekly-hours", Verdict.Watch, "0 of 6.5 h, and no exception says why.")),
        ToChange = [new ChangeAdvice("weekly-hours", "Note why in the rider file, or ride.", "An exception (lighter, event, away) tells the next review that the week was meant so.")],
        Held = [],
    });

    public static ReviewDocument TwentyOneRides() => ReviewMaker.Make(new ReviewSpec
    {
        Tier = "high",
        PlannedHours = 14,
        LowShare = 0.8,
        Tolerance = 0.05,
        LongRideHours = 3,
        HistoryWeeks = 20,
        Headline = "Three rides a day, every day, and no rest.",
        Findings = SampleFindings.With(SampleFindings.Finding("rest-days", Verdict.Broken, "No rest or recovery day; 1 asked.") with
        {
            WouldHaveKept = "A day with one easy ride of an hour.",
            Occurrences = [.. Enumerable.Range(0, 7).Select(day => new Occurrence { Verdict = Verdict.Broken, Dates = [new LocalDate(2026, 6, 8).PlusDays(day)], Numbers = [new("hours_ridden", 2.0 + (day % 3), $"{2 + (day % 3)}\u00A0h ridden")] })],
        }),
        ToChange = [new ChangeAdvice("rest-days", "Keep one day free.", "No rest or recovery day; 1 asked. Common practice.")],
        Rides =
        [
            .. Enumerable.Range(0, 21).Select(ride => new RideSpec(
                ride / 3, new LocalTime(6 + (ride % 3 * 5), 15), ride % 3 == 1 ? 25 + ride : 30 + ride, ride % 5 == 0 ? 0.86 : 0.62,
                ride % 5 == 0 ? "high" : "endurance", 0.04, ride % 5 == 0 ? 0.3 : 0)),
        ],
    });

    public static ReviewDocument LongNotices() => ReviewMaker.Make(MiddleSpec with
    {
        Notices =
        [
            .. Enumerable.Range(1, 60).Select(number => new NoticeEntry(
                $"an/archive/of/many/years/folder-{number}/a file with a very long name that goes on and on {number}.fit",
                number % 3 == 0 ? "not a ride" : "truncated",
                number % 3 == 0 ? null : $"{number * 29} of an unknown number of records",
                "The file ends in the middle of a record; what came before is used. Copy it again from the device if it is still there.",
                number % 3 == 0)),
        ],
    });

    private static ReviewSpec MiddleSpec { get; } = new()
    {
        Headline = "Two hard rides 23 hours apart, and no long easy ride.",
        Change = new SmallestChange(
            [new RideChange(ChangeKind.Move, "2026-06-10-1800.fit", new(2026, 6, 10), new(2026, 6, 11), null)], ["hard-day-spacing"],
            "Wednesday’s ride on Thursday instead would have kept the spacing rule."),
        Findings = SampleFindings.With(
            SampleFindings.Finding("hard-day-spacing", Verdict.Broken, "Two hard rides 23 h apart, on Tuesday and Wednesday.") with
            {
                WouldHaveKept = "Wednesday’s ride on Thursday.",
                Limits = [SampleFindings.Limit("high_min", 10), SampleFindings.Limit("threshold_min", 10)],
                Occurrences =
                [
                    new Occurrence
                    {
                        Verdict = Verdict.Broken, Dates = [new(2026, 6, 9), new(2026, 6, 10)], Rides = ["2026-06-09-1805.fit", "2026-06-10-1800.fit"],
                        Numbers = [new("hours_between", 22.9, "22.9\u00A0h between")],
                    },
                ],
            },
            SampleFindings.Finding("long-ride", Verdict.Broken, "Longest ride 1 h 00, asked 2 h 30 with at least 75 % low.") with
            {
                WouldHaveKept = "Friday’s ride of 2 h 30 at the same ease.",
                Limits = [SampleFindings.Limit("long_ride_h", 2.5), SampleFindings.Limit("long_ride_low_share", 0.75), SampleFindings.Limit("long_ride_margin", 0.15)],
                Occurrences = [new Occurrence { Verdict = Verdict.Broken, Dates = [new(2026, 6, 12)], Rides = ["2026-06-12-1730.fit"], Numbers = [new("longest_ride_h", 1, "longest ride 1\u00A0h")] }],
            },
            SampleFindings.Finding("endurance-volume", Verdict.Broken, "2.9 of 4.9 low-band hours.") with
            {
                Occurrences = [new Occurrence { Verdict = Verdict.Broken, Numbers = [new("low_hours", 2.9, "2.9\u00A0h low"), new("asked_low_hours", 4.9, "4.9\u00A0h asked")] }],
            },
            SampleFindings.Finding("weekly-hours", Verdict.Broken, "4.0 of 6.5 h planned, 61 %."),
            SampleFindings.Finding("long-ride-first", Verdict.Broken, "Three hard days and no long ride."),
            SampleFindings.Finding("intensity-split", Verdict.Kept, "73 % low, intended 75 % ± 7 points."),
            SampleFindings.Finding("lighter-week", Verdict.Watch, "No week of the last four was a lighter one."),
            SampleFindings.Finding("weekly-growth", Verdict.NotJudged, "Growth not judged.") with { Reason = "Four ordinary weeks before this one are needed; there are three." }),
        ToChange =
        [
            new ChangeAdvice("hard-day-spacing", "Put a day between Tuesday’s and Wednesday’s hard rides.", "22.9 h apart; 20 and 20 min at or above 91 % of threshold. Common practice: a day of rest or easy riding between hard days."),
            new ChangeAdvice("long-ride", "Ride one long easy ride before adding intensity.", "Longest ride 1 h 00, asked 2 h 30 with at least 75 % low. Common practice."),
            new ChangeAdvice("endurance-volume", "Ride the easy hours: 2.9 of 4.9 h low.", "Weekly hours 61 % of plan. Common practice."),
        ],
        Held = ["hard-day count", "three rest days", "easy ride easy", "growth", "monotony 1.1", "chronic ramp"],
        Notices =
        [
            new NoticeEntry("old/broken.fit", "truncated", "1712 of an unknown number of records", "The file ends in the middle of a record; what came before is used."),
            new NoticeEntry("notes.csv", "not a ride", null, "The table has no time column; name one in the rider file if it is a ride.", true),
            new NoticeEntry(null, "assumption", null, "No time zone in the rider file: Europe/Lisbon of this machine was taken."),
        ],
        Rides =
        [
            new RideSpec(1, new LocalTime(18, 5), 60, 0.84, "high", 0, 0.333),
            new RideSpec(2, new LocalTime(18, 0), 59, 0.83, "high", 0, 0.35),
            new RideSpec(4, new LocalTime(17, 30), 60, 0.64, "endurance", 0.02, 0) { Coverage = 0.86, Remarks = ["1 spike above 2,500 W was treated as missing."] },
            new RideSpec(6, new LocalTime(10, 0), 59, 0.755, "threshold", 0.262, 0.129) { Parts = ["warm-up.fit", "race.fit"] },
        ],
    };
}
