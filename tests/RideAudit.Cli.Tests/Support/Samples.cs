using System.Collections.Immutable;
using NodaTime;
using RideAudit.Document;
using RideAudit.Figures;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Rides;
using RideAudit.Rules;
using RideAudit.Rules.Changes;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Cli.Tests.Support;

/// <summary>Documents written by hand, so that what is shown is tested apart from what is computed.</summary>
internal static class Samples
{
    private static readonly LocalDate Monday = new(2026, 6, 8);

    public static ReviewDocument Review() => new()
    {
        AsOf = new LocalDate(2026, 6, 16),
        Rider = new RiderEntry { Label = "Rider A", Tier = Tier.Middle, Experience = Experience.Regular, TimeZone = "Europe/Lisbon", PlannedHours = 6.5 },
        Week = Week(),
        History = [History(-2, 6.1, 331.4, 45.2, 1.3), History(-1, 5.4, 301.0, 45.1, -0.1), History(0, 3.98, 236.2, 43, -2.1)],
        Rides = [Ride(1, 18, RideKind.High, 3600, 70.6), Ride(2, 17, RideKind.High, 3540, 67.9), Ride(4, 7, RideKind.Endurance, 3600, 41.4), Ride(6, 9, RideKind.Threshold, 3540, 56.3)],
        Findings = [Spacing(), LongRide(), Ramp(), NotJudged()],
        SmallestChange = new([new RideChange(ChangeKind.Move, "2026-06-10.fit", Monday.PlusDays(2), Monday.PlusDays(3), null)], ["hard-day-spacing"],
            "Wednesday’s ride on Thursday instead would have kept the spacing rule."),
        Notices =
        [
            new("phone/broken.fit", "truncated", null, "The file ends inside its first record: copy it from the device again.", Unusable: true),
            new(null, "assumption", null, "No time zone is set: the machine’s, Europe/Lisbon, is used."),
            new("2026-06-10.fit", "spikes", "3538 of 3540 seconds", "Two seconds above 2,500 W were left out."),
        ],
        Summary = Summary(),
    };

    public static RidesDocument Rides() => new("rideaudit-rides/1", Review().Rides, Review().Notices);

    public static WeeksDocument Weeks() => new("rideaudit-weeks/1", [Week()]);

    public static RulesDocument Rules() => new("rideaudit-rules/1",
    [
        new("hard-day-spacing", [], Evidence.CommonPractice, "common practice, no source", "At least one day between two hard days."),
        new("chronic-ramp", [new("watch_above_points", 5, "watch above 5"), new("broken_above_points", 8, "broken above 8")], Evidence.Handbook, "A handbook of coaching, 2006",
            "Chronic load grows by at most 5 points a week; more than 8 breaks the rule, and nobody grows faster for long without paying for it later."),
    ]);

    public static RideEntry Ride(int day, int hour, RideKind kind, long seconds, double stress) => new()
    {
        File = $"2026-06-{8 + day:00}.fit",
        Parts = [],
        StartsAt = (Monday.PlusDays(day) + new LocalTime(hour, 5)).WithOffset(Offset.FromHours(1)),
        DurationSeconds = seconds,
        ElapsedSeconds = seconds,
        Sport = RideSport.Cycling,
        Kind = kind,
        MeasuredBy = MeasureSource.Power,
        MeanPowerW = 179.6,
        NormalisedPowerW = 210,
        IntensityRatio = 0.84,
        Stress = stress,
        StressFrom = StressSource.Power,
        WorkKj = 646.5,
        ThresholdPowerW = 250,
        ThresholdFrom = ThresholdSource.RiderFile,
        BandSeconds = kind == RideKind.Endurance ? new(seconds, 0, 0) : new(seconds - 1200, 0, 1200),
        ZoneSeconds = [600, 1800, 0, 0, 1200, 0, 0],
        MeanHeartRateBpm = 141.2,
        HeartRateDriftPercent = null,
        PowerCoverage = 1,
        HeartRateCoverage = 0.99,
        Partial = false,
        BestPowers = [new(5, 612.4, 100), new(1200, 262.1, 900)],
        Stretches = kind == RideKind.High ? [new(91, 900, 2100, 263.4)] : [],
    };

    private static WeekEntry Week() => new()
    {
        StartsOn = Monday,
        IsoWeek = new IsoWeek(2026, 24),
        Finished = true,
        Hours = 3.97,
        RideCount = 4,
        Stress = 236.2,
        StressUnknownHours = 0,
        WorkKj = 2586,
        BandSeconds = new(10680, 0, 3600),
        ZoneSeconds = [2400, 7200, 0, 0, 3600, 1080, 0],
        SplitByTime = new(0.73, 0.07, 0.2),
        SplitBySession = new(0.25, 0.75),
        PolarizationIndex = 2.32,
        Structure = WeekStructure.Polarized,
        IntendedLowShare = 0.75,
        SplitTolerance = 0.07,
        LongestRideSeconds = 3600,
        LongRideAskedSeconds = 9000,
        OtherActivityHours = 0,
        Exception = null,
        AcuteLoad = 40.3,
        ChronicLoad = 43,
        RampPerWeek = -2.1,
        AcuteChronicRatio = 0.94,
        SettlingIn = false,
        Monotony = 1.1,
        Strain = 259.8,
        StressMeanBefore = 331,
        PlanWeek = 10,
        PlanWeeks = 16,
        Days = Days(),
        Spans =
        [
            new SpanEntry { From = At(1, 19), To = At(2, 18), FromRide = "2026-06-09.fit", ToRide = "2026-06-10.fit", Hours = 23, Verdict = Verdict.Broken },
            new SpanEntry { From = At(2, 19), To = At(6, 10), FromRide = "2026-06-10.fit", ToRide = "2026-06-14.fit", Hours = 87, Verdict = Verdict.Kept },
        ],
    };

    private static ImmutableArray<DayEntry> Days() =>
    [
        Day(0, DayKind.Rest, 0, 0), Day(1, DayKind.High, 1, 70.6), Day(2, DayKind.High, 0.98, 67.9), Day(3, DayKind.Rest, 0, 0),
        Day(4, DayKind.Endurance, 1, 41.4), Day(5, DayKind.Rest, 0, 0), Day(6, DayKind.Threshold, 0.98, 56.3),
    ];

    private static DayEntry Day(int day, DayKind kind, double hours, double stress) => new()
    {
        Date = Monday.PlusDays(day),
        Kind = kind,
        Hours = hours,
        Stress = stress,
        Rides = hours > 0 ? [$"2026-06-{8 + day:00}.fit"] : [],
    };

    private static OffsetDateTime At(int day, int hour) => (Monday.PlusDays(day) + new LocalTime(hour, 0)).WithOffset(Offset.FromHours(1));

    private static HistoryEntry History(int week, double hours, double stress, double chronic, double ramp) => new()
    {
        StartsOn = Monday.PlusWeeks(week),
        Hours = hours,
        Stress = stress,
        BandSeconds = new((long)(hours * 2600), 400, (long)(hours * 600)),
        ChronicLoad = chronic,
        RampPerWeek = ramp,
    };

    private static SummaryEntry Summary() => new()
    {
        Headline = "Two hard rides 23 hours apart, and no long easy ride.",
        Subline = "2 of 4 rules broken, none to watch. Wednesday’s ride on Thursday instead would have kept the spacing rule.",
        Broken = 2,
        Watch = 0,
        Kept = 1,
        NotJudged = 1,
        ToChange =
        [
            new("hard-day-spacing", "Put a day between Tuesday’s and Wednesday’s hard rides.", "23 h apart; 20 and 20 min at or above 91 % of threshold. Common practice: a day of rest or easy riding between hard days.") { Verdict = Verdict.Broken },
            new("long-ride", "Ride one long easy ride before adding intensity.", "Longest ride 1 h 00, asked 2 h 30 with at least 75 % low. Long ride: common practice.") { Verdict = Verdict.Broken },
        ],
        Held = ["hard-day count", "three rest days", "chronic ramp"],
        SplitSentence = "By time 73 % was low; by session 1 of 4 rides was easy. The two counts answer different questions.",
        Cautions =
        [
            "Figures describe past rides; they diagnose nothing.",
            "Chest pain, fainting, unusual breathlessness, or fatigue that does not lift: stop, and see a doctor.",
        ],
    };

    private static Finding Spacing() => new()
    {
        Rule = "hard-day-spacing",
        Name = "Hard day spacing",
        Verdict = Verdict.Broken,
        Sentence = "Tuesday and Wednesday were both hard, 23 h apart.",
        WouldHaveKept = "A day of rest or easy riding between them.",
        Evidence = Evidence.CommonPractice,
        Source = "common practice, no source",
    };

    private static Finding LongRide() => new()
    {
        Rule = "long-ride",
        Name = "Long ride",
        Verdict = Verdict.Broken,
        Sentence = "The longest ride was 1 h 00; the plan asks for 2 h 30.",
        WouldHaveKept = "One easy ride of 2 h 30.",
        Evidence = Evidence.CommonPractice,
        Source = "common practice, no source",
    };

    private static Finding Ramp() => new()
    {
        Rule = "chronic-ramp",
        Name = "Chronic ramp",
        Verdict = Verdict.Kept,
        Sentence = "Chronic load changed by −2.1 points.",
        Evidence = Evidence.Handbook,
        Source = "A handbook of coaching, 2006",
    };

    private static Finding NotJudged() => new()
    {
        Rule = "lighter-week",
        Name = "Lighter week",
        Verdict = Verdict.NotJudged,
        Sentence = "Not judged.",
        Reason = "Needs four weeks of history.",
        Evidence = Evidence.CommonPractice,
        Source = "common practice, no source",
    };
}
