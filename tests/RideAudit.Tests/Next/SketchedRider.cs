using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using RideAudit.Figures;
using RideAudit.Next;
using RideAudit.Plan;
using RideAudit.Plan.Blocks;
using RideAudit.Plan.Table;
using RideAudit.Sessions;
using RideAudit.Weeks;

namespace RideAudit.Tests.Next;

/// <summary>Riders before a week is laid out, told in a few words, each with something that sets them apart.</summary>
/// <remarks>Weeks are lines as <see cref="RiddenWeeks.Line"/> writes them: <c>- H60 E45 T60+R30 - L150 E90</c>; two weeks of them are <c>2 x</c> and the line.</remarks>
internal sealed record SketchedRider
{
    private static readonly string[] Usual = ["- H60 E60 T60 - L150 E60", "- H60 E45 - - E90 -", "2 x - H60 E60 T60 - L150 E60"];
    private static readonly LocalDate Monday = RiddenWeeks.Monday;
    private static readonly OwnSession HillRepeats = Session("hill repeats", PlannedKind.High, 70, "20 min easy, 5 x 4 min 110-115 %, 3 min easy between, easy to the end");
    private static readonly Dictionary<(PlannedKind, int, Experience, ThresholdEntry, Limits), RideFigures> Figures = [];

    private SketchedRider(double? hours, Experience experience, params (IsoDayOfWeek Day, int Minutes)[] free) => Rider = RiddenWeeks.RiderOf(hours, experience, free);

    public static ImmutableSortedDictionary<string, SketchedRider> All { get; } = new Dictionary<string, SketchedRider>
    {
        ["new"] = new(3, Experience.New),
        ["new to much"] = new(9.5, Experience.New) { Days = "Mon Tue Thu Fri Sat Sun" },
        ["racing, first week"] = new(5, Experience.Racing, Free(60, 0, 60, 0, 75, 0, 150)),
        ["racing, middle"] = new(7, Experience.Racing, Free(0, 75, 60, 90, 0, 180, 120)) { Past = ["5 x - H60 E60 H75 - L150 E75"] },
        ["much"] = new(13, Experience.Racing, Free(60, 120, 120, 120, 90, 300, 240)) { Past = ["6 x - H90 E120 T90 R60 L240 E150"], Load = new LoadState(70, 75) },
        ["usual"] = new(6.5, Experience.Regular, Free(0, 60, 60, 60, 0, 180, 90)) { Past = Usual, Load = new LoadState(42, 45) },
        ["usual, from Sunday"] = new(6.5, Experience.Regular, Free(0, 60, 60, 60, 0, 180, 90)) { Past = ["6 x E60 - H60 E60 T60 - L150"], FirstDay = IsoDayOfWeek.Sunday },
        ["three days"] = new(4, Experience.Regular, Free(0, 60, 0, 60, 0, 120, 0)) { Past = ["3 x - H60 - E60 - L110 -"] },
        ["short days"] = new(4, Experience.Regular, Free(40, 40, 40, 40, 40, 45, 19)) { Past = ["3 x R30 E40 E40 E40 E40 E45 -"] },
        ["grown"] = new(10, Experience.Regular, Free(0, 90, 90, 90, 60, 240, 180)) { Past = ["3 x - H60 - T60 - E90 -"] },
        ["lighter is due"] = new(6.5, Experience.Regular, Free(0, 60, 60, 60, 0, 180, 90)) { Past = ["- - - - - - E60", "9 x - H60 E60 T60 - L150 E60"], Load = new LoadState(42, 45) },
        ["lighter waits"] = new(12, Experience.Regular, Free(0, 60, 60, 60, 0, 180, 90)) { Past = ["9 x - H60 E60 T60 - L150 E60"], Load = new LoadState(42, 45) },
        ["lighter by the file"] = new(6.5, Experience.Regular, Free(0, 60, 60, 60, 0, 180, 90)) { Past = Usual, Excepted = [Out(0, 6, ExceptionKind.Lighter)] },
        ["event on Sunday"] = new(6.5, Experience.Racing, Free(0, 60, 60, 60, 30, 180, 90)) { Past = Usual, Excepted = [Out(6, 6, ExceptionKind.Event)] },
        ["event on Monday"] = new(6.5, Experience.Regular, Free(0, 60, 60, 60, 60, 180, 90)) { Past = Usual, Excepted = [Out(0, 0, ExceptionKind.Event)] },
        ["event next week"] = new(6.5, Experience.Regular, Free(0, 60, 60, 60, 0, 180, 90)) { Past = Usual, Excepted = [Out(12, 12, ExceptionKind.Event)] },
        ["event in two weeks"] = new(6.5, Experience.Regular, Free(0, 60, 60, 60, 0, 180, 90)) { Past = ["9 x - H60 E60 T60 - L150 E60"], Excepted = [Out(19, 19, ExceptionKind.Event)] },
        ["event of the plan"] = new(6.5, Experience.Regular, Free(0, 60, 60, 60, 0, 180, 90)) { Past = Usual, Written = "- - - T60 - V150 -" },
        ["ill before"] = new(6.5, Experience.Regular, Free(0, 60, 60, 60, 0, 180, 90)) { Past = [.. Usual, "- H60 - - - - -"], Excepted = [Out(-5, -2, ExceptionKind.Ill)] },
        ["ill for long"] = new(6.5, Experience.Regular, Free(0, 60, 60, 60, 0, 180, 90)) { Past = [.. Usual, "- - - - - - -"], Excepted = [Out(-9, 0, ExceptionKind.Ill)] },
        ["away"] = new(6.5, Experience.Regular, Free(0, 60, 60, 60, 0, 180, 90)) { Past = Usual, Excepted = [Out(1, 3, ExceptionKind.Away)] },
        ["away for two days"] = new(6.5, Experience.Regular, Free(0, 60, 60, 60, 0, 180, 90)) { Past = Usual, Excepted = [Out(5, 6, ExceptionKind.Away)] },
        ["away for long"] = new(6.5, Experience.Regular, Free(0, 60, 60, 60, 0, 180, 90)) { Past = [.. Usual, "- - - - - - -"], Excepted = [Out(-8, -1, ExceptionKind.Away)] },
        ["club ride"] = new(7.5, Experience.Regular, Free(0, 75, 60, 75, 0, 0, 180)) { Past = ["3 x - H60 - E60 - T120 L150"], Fixed = [new FixedRide(IsoDayOfWeek.Saturday, PlannedKind.Threshold, 120, "club ride")] },
        ["two club rides"] = new(7.5, Experience.Regular, Free(0, 60, 60, 60, 0, 180, 90)) { Fixed = [new FixedRide(IsoDayOfWeek.Tuesday, PlannedKind.High, 60, "track"), new FixedRide(IsoDayOfWeek.Wednesday, PlannedKind.Threshold, 90, "club ride")] },
        ["own sessions"] = new(7, Experience.Regular, Free(0, 75, 60, 75, 0, 180, 120))
        {
            Past = Usual,
            Own = [Session("hill repeats", PlannedKind.High, 70, "20 min easy, 5 x 4 min 110-115 %, 3 min easy between, easy to the end"), Session("river loop", PlannedKind.Endurance, 80, "65-70 % to the end")],
        },
        ["rows by hand"] = new(6.5, Experience.Regular, Free(0, 60, 60, 60, 60, 180, 90)) { Past = Usual, Written = "- - H60 - - E60+R30 -" },
        ["begun, high missed"] = new(6.5, Experience.Regular, Free(0, 60, 75, 60, 60, 210, 150)) { Past = Usual, Planned = "- H60 E60 T60 - L150 E60", Ridden = "- - E60" },
        ["begun, swapped"] = new(6.5, Experience.Regular, Free(0, 60, 75, 60, 60, 210, 150)) { Past = Usual, Planned = "- H60 E60 T60 - L150 E60", Ridden = "- E60 H60 -" },
        ["begun, long missed"] = new(6.5, Experience.Regular, Free(0, 60, 75, 60, 60, 210, 60)) { Past = Usual, Planned = "- H60 E60 T60 - L150 E60", Ridden = "- H60 E60 T60 - -" },
        ["begun, much ridden"] = new(6.5, Experience.Regular, Free(0, 60, 75, 60, 60, 210, 150)) { Past = Usual, Planned = "- H60 E60 T60 - L150 E60", Ridden = "E180 H90 E150 T90" },
        ["begun, little ridden"] = new(6.5, Experience.Regular, Free(0, 60, 75, 60, 60, 210, 180)) { Past = Usual, Planned = "- H60 E60 T60 - L150 E60", Ridden = "- - - - - -" },
        ["begun, lighter"] = new(6.5, Experience.Regular, Free(0, 60, 75, 60, 60, 210, 150)) { Past = Usual, Planned = "- H60 E40 - - E60 -", PlannedLighter = true, Ridden = "- - -" },
        ["begun, two missed"] = new(6.5, Experience.Regular, Free(0, 60, 75, 60, 60, 210, 150)) { Past = Usual, Planned = "- H60 - H60 - L150 E60", Ridden = "- - - -" },
        ["begun, two long ones"] = new(6.5, Experience.Regular, Free(0, 60, 75, 60, 60, 210, 180)) { Past = Usual, Planned = "- H60 E60 T60 - L150 L150", Ridden = "- H60 E60 T60 - -" },
        ["begun, hard beside it"] = new(6.5, Experience.Regular, Free(0, 60, 75, 60, 60, 210, 180)) { Past = Usual, Planned = "- - E60 T60 H60 L150 E60", Ridden = "- - E60 T60 -" },
        ["begun, all ridden"] = new(6.5, Experience.Regular, Free(0, 60, 75, 60, 60, 210, 180)) { Past = Usual, Planned = "- H60 E60 T60 - L150 E60", Ridden = "- H60+R30 E60 T60 - L160" },
        ["log alone"] = new(6.5, Experience.Racing, Free(0, 60, 60, 60, 0, 180, 90)) { Past = Usual, LogAlone = true },
        ["log alone, heart rate"] = new(6.5, Experience.Regular, Free(0, 60, 60, 60, 0, 180, 90)) { Past = Usual, BandsAlone = true },
        ["idle of late"] = new(6.5, Experience.Regular, Free(0, 60, 60, 60, 0, 180, 90)) { Past = [.. Usual, "5 x - - - - - - -"] },
        ["began last week"] = new(6.5, Experience.Regular, Free(0, 60, 60, 60, 0, 180, 90)) { Past = ["- - - - - L120 E60"] },
        ["began late, then a week"] = new(6.5, Experience.Regular, Free(0, 60, 60, 60, 0, 180, 90)) { Past = ["- - - - - - E60", "- H60 E60 T60 - L150 E60"] },
        ["event in two weeks, lighter is near"] = new(6.5, Experience.Regular, Free(0, 60, 60, 60, 0, 180, 90)) { Past = ["4 x - H60 E60 T60 - L150 E60"], Excepted = [Out(19, 19, ExceptionKind.Event)] },
        ["event on Sunday, no Saturday"] = new(6.5, Experience.Regular, Free(0, 60, 60, 60, 45, 30, 90)) { Past = Usual, Excepted = [Out(6, 6, ExceptionKind.Event)] },
        ["two events"] = new(6.5, Experience.Regular, Free(0, 90, 120, 60, 60, 180, 90)) { Past = Usual, Excepted = [Out(2, 2, ExceptionKind.Event), Out(6, 6, ExceptionKind.Event)] },
        ["one day of habit"] = new(4, Experience.Regular) { Past = ["2 x - - - E60 - - -"] },
        ["at the edges"] = new(4, Experience.Regular, Free(20, 19, 45, 60, 40, 120, 55)) { Past = ["3 x R20 - R45 E60 E40 L120 E55"] },
        ["away for three days"] = new(6.5, Experience.Regular, Free(0, 60, 60, 60, 0, 180, 90)) { Past = [.. Usual, "- H60 E60 - - - -"], Excepted = [Out(-3, -1, ExceptionKind.Away)] },
        ["away for a week"] = new(6.5, Experience.Regular, Free(0, 60, 60, 60, 0, 180, 90)) { Past = [.. Usual, "- - - - - - -"], Excepted = [Out(-7, -1, ExceptionKind.Away)] },
        ["ill for two days"] = new(6.5, Experience.Regular, Free(60, 60, 60, 60, 0, 180, 90)) { Past = [.. Usual, "- H60 E60 T60 - - -"], Excepted = [Out(-2, -1, ExceptionKind.Ill)] },
        ["ill for five days"] = new(6.5, Experience.Regular, Free(60, 60, 60, 60, 60, 180, 90)) { Past = Usual, Excepted = [Out(0, 4, ExceptionKind.Ill)] },
        ["two days"] = new(6.5, Experience.Regular, Free(0, 60, 0, 0, 0, 90, 0)) { Past = ["3 x - H60 - - - E90 -"] },
        ["two days of a new rider"] = new(5, Experience.New, Free(0, 60, 0, 0, 0, 90, 0)),
        ["club rides side by side"] = new(5, Experience.Regular, Free(0, 0, 0, 60, 0, 0, 0))
        {
            Past = ["3 x - - - E60 - T90 L150"],
            Fixed = [new FixedRide(IsoDayOfWeek.Saturday, PlannedKind.Threshold, 90, "chain gang"), new FixedRide(IsoDayOfWeek.Saturday, PlannedKind.Endurance, 60, "club run"), new FixedRide(IsoDayOfWeek.Sunday, PlannedKind.High, 60, "track")],
        },
        ["coach’s week"] = new(6, Experience.Regular, Free(0, 75, 0, 50, 0, 150, 60))
        {
            Past = Usual,
            Own =
            [
                Session("hill repeats", PlannedKind.High, 70, "20 min easy, 5 x 4 min 110-115 %, 3 min easy between, easy to the end"), Session("long hills", PlannedKind.High, 90, "20 min easy, 6 x 6 min 106-110 %, 4 min easy between, easy to the end"),
                Session("soft", PlannedKind.High, 45, "60-65 % to the end"), Session("steady tempo", PlannedKind.Threshold, 40, "10 min easy, 20 min 88-92 %, easy to the end"), Session("coffee", PlannedKind.Recovery, 30, "very easy to the end"),
                Session("two hours", PlannedKind.Long, 120, "20 min easy, 63-69 % to the end"),
            ],
        },
        ["planned for two weeks"] = new(6.5, Experience.Regular, Free(0, 60, 60, 60, 0, 180, 90)) { Past = Usual, Written = "- H60 E60 T60 - L150 E60 - H60 H60 - E30+R30 V120 E60 - - - - - - -" },
        ["planned from nothing"] = new(6.5, Experience.Regular, Free(0, 60, 60, 60, 0, 180, 90)) { Written = "- - - - - - - - H60 E60 T60 - L150 E60", Excepted = [Out(9, 9, ExceptionKind.Ill)] },
        ["planned lighter"] = new(6.5, Experience.Regular, Free(0, 60, 60, 60, 0, 180, 90)) { Past = Usual, Planned = "- H60 E40 - - E60 E40 - H60 E60 T60 - L180 E60", PlannedLighter = true },
        ["event yesterday, club ride today"] = new(6.5, Experience.Regular, Free(90, 60, 60, 60, 0, 180, 90))
        {
            Past = [.. Usual, "- H60 - - - E45 V150"],
            Excepted = [Out(-1, -1, ExceptionKind.Event)],
            Fixed = [new FixedRide(IsoDayOfWeek.Monday, PlannedKind.Endurance, 60, "club ride"), new FixedRide(IsoDayOfWeek.Thursday, PlannedKind.Endurance, 60, "club ride")],
        },
        ["event on Sunday, free before it"] = new(6.5, Experience.Regular, Free(0, 120, 120, 60, 90, 45, 90)) { Past = Usual, Excepted = [Out(6, 6, ExceptionKind.Event)] },
        ["two days of habit"] = new(5, Experience.Regular) { Past = ["2 x - - L200 - - - E60", "- - E120 - - - E40"] },
        ["away from Wednesday"] = new(6.5, Experience.Regular, Free(60, 60, 60, 60, 0, 180, 90)) { Past = Usual, Excepted = [Out(2, 4, ExceptionKind.Away)] },
        ["away, event next week"] = new(6.5, Experience.Regular, Free(0, 60, 60, 60, 0, 180, 90)) { Past = Usual, Excepted = [Out(1, 2, ExceptionKind.Away), Out(12, 12, ExceptionKind.Event)] },
        ["away, lighter is due"] = new(6.5, Experience.Regular, Free(0, 60, 60, 60, 0, 180, 90)) { Past = ["9 x - H60 E60 T60 - L150 E60"], Excepted = [Out(1, 2, ExceptionKind.Away)] },
        ["begun, lighter is due"] = new(12, Experience.Regular, Free(0, 60, 60, 60, 0, 180, 90)) { Past = ["9 x - H60 E60 T60 - L150 E60"], Ridden = "- H60" },
        ["lighter in a step"] = new(8.5, Experience.Regular, Free(0, 60, 60, 60, 0, 180, 120)) { Past = ["9 x - H60 E60 T60 - L150 -"] },
        ["test after days away"] = new(6.5, Experience.Regular, Free(0, 75, 60, 60, 0, 180, 90)) { Past = [.. Usual, "- H60 - - - L150 E60"], Excepted = [Out(-5, -3, ExceptionKind.Away)], TestDue = true },
        ["by history, began late"] = new(null, Experience.Regular) { Past = ["- - - - - - E60", "2 x - H60 E60 - - L140 -"] },
        ["begun, no day apart"] = new(5, Experience.Racing, Free(0, 60, 0, 60, 60, 0, 60))
        {
            Past = Usual,
            Planned = "- H60 - - - - -",
            Ridden = "- - - T60",
            Fixed = [new FixedRide(IsoDayOfWeek.Saturday, PlannedKind.Threshold, 90, "club ride")],
        },
        ["begun, long to the minute"] = new(6.5, Experience.Regular, Free(0, 60, 75, 60, 60, 210, 180)) { Past = Usual, Planned = "- H60 - - - L180 -", Ridden = "- H60 - - - -" },
        ["no high of late"] = new(6.5, Experience.Regular, Free(0, 60, 60, 60, 0, 180, 90)) { Past = [.. Usual, "2 x - T60 E60 - - L150 E60"] },
        ["a week off of late"] = new(9, Experience.Regular, Free(0, 60, 60, 60, 60, 240, 120)) { Past = [.. Usual, "- - - - - - -", "- H60 E60 T60 - L150 E60"] },
        ["no threshold on top"] = new(7, Experience.Regular, Free(0, 60, 60, 60, 60, 180, 120)) { Past = Usual, Limit = "threshold_days_on_top" },
        ["club run and coffee"] = new(7, Experience.Regular, Free(0, 60, 60, 60, 60, 120, 0))
        {
            Past = Usual,
            Fixed = [new FixedRide(IsoDayOfWeek.Sunday, PlannedKind.Endurance, 160, "club run"), new FixedRide(IsoDayOfWeek.Sunday, PlannedKind.Recovery, 30, null), new FixedRide(IsoDayOfWeek.Wednesday, PlannedKind.Recovery, 30, null), new FixedRide(IsoDayOfWeek.Wednesday, PlannedKind.High, 60, "track")],
        },
        ["three of the coach’s own"] = new(6.5, Experience.Racing, Free(0, 75, 60, 75, 0, 180, 90))
        {
            Past = Usual,
            Own =
            [
                Session("hill repeats", PlannedKind.High, 60, "20 min easy, 5 x 4 min 110-115 %, 3 min easy between, easy to the end"), Session("short hills", PlannedKind.High, 60, "20 min easy, 10 x 1 min 118-124 %, 1 min easy between, easy to the end"),
                Session("river sprints", PlannedKind.High, 60, "20 min easy, 6 x 3 min 112-116 %, 3 min easy between, easy to the end"),
            ],
        },
        ["written by a coach"] = new(6.5, Experience.Regular, Free(0, 60, 60, 60, 60, 180, 90))
        {
            Past = Usual,
            PlanText = """
                date,kind,minutes,session,note,stress,blocks
                2026-06-22,rest,,,,,
                2026-06-23,high,60,four fours,,,
                2026-06-24,endurance,60,,easy by the river,,
                2026-06-24,recovery,30,,,,
                2026-06-24,recovery,20,,,,
                2026-06-25,threshold,70,hill tempo,,80,"15 min easy, 3 x 10 min 88-92 %, 5 min easy between, easy to the end"
                2026-06-26,high,50,,,,"15 min easy, 5 x 3 min 110-115 %, 3 min easy between, easy to the end"
                2026-06-28,event,,town race,,,
                2026-07-07,endurance,60,,,,
                2026-07-12,long,150,two hours and a half,,,
                """,
        },
        ["planned, two hard ones a day"] = new(6.5, Experience.Regular, Free(0, 60, 60, 60, 0, 180, 90)) { Past = Usual, Written = "- H60+T60 H60 E60 - L150+E60 E60" },
        ["planned, five a day"] = new(6.5, Experience.Regular, Free(0, 60, 60, 60, 0, 180, 90)) { Past = Usual, Written = "- R30+R30+R30+E40+H45 H60 - - L150 E60" },
        ["planned, then idle"] = new(6.5, Experience.Regular, Free(0, 60, 60, 60, 0, 180, 90)) { Past = Usual, Load = new LoadState(42, 45), Written = "- H60 E60 T60 - L150 E60 - - - - - - - - H90 E90 T90 - L200 E90" },
        ["planned by history"] = new(null, Experience.Regular) { Past = ["- - - - - - E60", "- H60 E60 - - L140 -", "- H60 E60 - - L140 -", "- - E30 - - - -", "- H60 E60 - - L140 -"], Excepted = [Out(-14, -8, ExceptionKind.Away)], Written = "- H60 E60 - - L150 -" },
        ["planned much"] = new(13, Experience.Racing, Free(60, 120, 120, 120, 90, 300, 240)) { Past = ["6 x - H90 E120 T90 R60 L240 E150"], Load = new LoadState(70, 75), Written = "- H90 E150 H90 E120 L300 E240" },
        ["club ride and short days"] = new(8, Experience.Regular, Free(0, 60, 0, 60, 0, 0, 60)) { Past = ["3 x - H60 - E60 - - E60"], Fixed = [new FixedRide(IsoDayOfWeek.Sunday, PlannedKind.Endurance, 60, "club run")] },
        ["room to grow into"] = new(10, Experience.Regular, Free(0, 300, 300, 300, 300, 300, 300)) { Past = ["3 x - H60 - T60 - E60 -"] },
        ["lighter waits, club rides"] = new(12, Experience.Regular, Free(0, 60, 60, 60, 0, 180, 90))
        {
            Past = ["9 x - H60 E60 T60 - L150 E60"],
            Fixed = [new FixedRide(IsoDayOfWeek.Tuesday, PlannedKind.High, 60, "track"), new FixedRide(IsoDayOfWeek.Wednesday, PlannedKind.Threshold, 90, "club ride")],
        },
        ["away from Thursday, free before"] = new(6, Experience.Regular, Free(300, 300, 300, 0, 0, 0, 0)) { Past = Usual, Excepted = [Out(3, 6, ExceptionKind.Away)] },
        ["at home for a day"] = new(6, Experience.Racing, Free(300, 300, 300, 300, 300, 300, 300)) { Past = Usual, Excepted = [Out(1, 6, ExceptionKind.Away)] },
        ["begun, two planned on a day"] = new(6.5, Experience.Regular, Free(0, 60, 75, 60, 90, 210, 150)) { Past = Usual, Planned = "- H60 E60 - H60+R30 L150 E60", Ridden = "- - E60" },
        ["begun, coffee on the day"] = new(6.5, Experience.Regular, Free(0, 60, 75, 90, 60, 210, 150)) { Past = Usual, Planned = "- H60 E60 - E60 L150 E60", Ridden = "- - E60", Fixed = [new FixedRide(IsoDayOfWeek.Thursday, PlannedKind.Recovery, 30, "coffee")] },
        ["begun, high missed between"] = new(6.5, Experience.Racing, Free(0, 60, 75, 60, 60, 210, 150)) { Past = Usual, Planned = "- - H75 T60 - L150 -", Ridden = "- - - -", Fixed = [new FixedRide(IsoDayOfWeek.Saturday, PlannedKind.Threshold, 90, "club ride")] },
        ["begun, easy days first"] = new(6.5, Experience.Regular, Free(0, 60, 75, 60, 90, 210, 150)) { Past = ["4 x - H60 E60 T60 - L150 E60"], Planned = "- H60 E60 T60 - L150 E60", Ridden = "- T60 - - " },
        ["planned by name"] = new(6.5, Experience.Regular, Free(0, 60, 60, 60, 0, 180, 90))
        {
            Past = Usual,
            PlanText = """
                date,kind,minutes,session,note,stress,blocks
                2026-06-23,high,60,hills,,,"15 min easy, 4 x 4 min 110-115 %, 3 min easy between, easy to the end"
                2026-06-24,high,60,hills,,,"15 min easy, 10 x 1 min 118-124 %, 1 min easy between, easy to the end"
                2026-06-25,high,45,,,,
                2026-06-27,long,150,,,,
                """,
        },
        ["idle of late, away for a day"] = new(6.5, Experience.Regular, Free(0, 60, 60, 60, 0, 180, 90)) { Past = [.. Usual, "5 x - - - - - - -"], Excepted = [Out(2, 2, ExceptionKind.Away)] },
        ["test to the minute"] = new(6.5, Experience.Regular, Free(0, SessionLibrary.Test.ShortestDay, 60, 60, 0, 180, 60)) { Past = Usual, TestDue = true },
        ["own session to the minute"] = new(6, Experience.Regular, Free(0, FittedSession.LeastMinutes(HillRepeats.Blocks), 45, 45, 0, 180, 45)) { Past = Usual, Own = [HillRepeats] },
        ["club rides of one day"] = new(6, Experience.Regular, Free(0, 60, 0, 60, 0, 0, 0))
        {
            Past = ["3 x - H60 - E60 - T90+E60 -", "- H60 - E60 - L150 -"],
            Fixed = [new FixedRide(IsoDayOfWeek.Saturday, PlannedKind.Threshold, 90, "chain gang"), new FixedRide(IsoDayOfWeek.Saturday, PlannedKind.Endurance, 60, "club run")],
        },
        ["begun, long missed early"] = new(6.5, Experience.Regular, Free(0, 60, 180, 60, 60, 210, 90)) { Past = Usual, Planned = "- - L150 E60 - L150 E60", Ridden = "- - - -" },
        ["begun, a day without room"] = new(6.5, Experience.Regular, Free(0, 60, 75, 0, 60, 210, 150)) { Past = Usual, Planned = "- H60 E60 T60 - L150 E60", Ridden = "- - -" },
        ["begun, two planned on the day left"] = new(6.5, Experience.Regular, Free(0, 60, 75, 0, 90, 210, 150)) { Past = Usual, Planned = "- H60 E60 - H60+R30 L150 E60", Ridden = "- - E60" },
        ["event on Tuesday"] = new(6.5, Experience.Regular, Free(0, 60, 60, 60, 0, 180, 90)) { Past = Usual, Excepted = [Out(1, 1, ExceptionKind.Event)] },
        ["usual, from Wednesday"] = new(6.5, Experience.Regular, Free(60, 60, 60, 60, 0, 180, 90)) { Past = ["3 x E60 T60 - L150 E60 - H60"], FirstDay = IsoDayOfWeek.Wednesday },
        ["usual, from Tuesday"] = new(6.5, Experience.Regular, Free(60, 60, 60, 60, 0, 180, 90)) { Past = ["3 x H60 E60 T60 - L150 E60 -"], FirstDay = IsoDayOfWeek.Tuesday },
        ["longer long ago"] = new(7, Experience.Regular, Free(0, 60, 60, 60, 0, 240, 90)) { Past = ["2 x - H60 E60 T60 - L210 E60", "- H60 E45 - - E60 -", "2 x - H60 E60 T60 - L120 E60", "- H60 E45 - - E60 -", "- H60 E60 T60 - L110 E60"] },
        ["hard long ago"] = new(6.5, Experience.Regular, Free(0, 75, 60, 75, 0, 180, 90)) { Past = ["- H90 E60 T90 - L150 E60", "2 x - E60 E60 - - L150 E60", "- E60 E45 - - E60 -"] },
        ["no threshold of late"] = new(6.5, Experience.Regular, Free(0, 75, 60, 75, 0, 180, 90)) { Past = ["2 x - H60 E60 H60 - L150 E60", "- H60 E45 - - E60 -", "- H60 E60 H60 - L150 E60"] },
        ["a week idle"] = new(6.5, Experience.Regular, Free(0, 60, 60, 60, 0, 180, 90)) { Past = [.. Usual, "- - - - - - -"] },
        ["six days idle"] = new(6.5, Experience.Regular, Free(0, 60, 60, 60, 0, 180, 90)) { Past = [.. Usual, "E60 - - - - - -"] },
        ["heart rate alone"] = new(5.5, Experience.Regular, Free(0, 60, 60, 60, 0, 150, 0)) { Past = ["4 x - H60 E60 T60 - L120 -"], WithoutPower = true },
        ["by history"] = new(null, Experience.Regular) { Past = ["4 x - H60 E60 - - L140 -"] },
        ["by its days"] = new(6, Experience.Regular) { Past = ["2 x - H60 E60 T60 - L150 -"], Days = "Tue Thu Sat Sun" },
        ["test is due"] = new(6.5, Experience.Regular, Free(0, 75, 60, 60, 0, 180, 90)) { Past = Usual, TestDue = true },
        ["test has no day"] = new(5, Experience.Regular, Free(0, 50, 50, 50, 0, 120, 50)) { Past = Usual, TestDue = true },
    }.ToImmutableSortedDictionary(StringComparer.Ordinal);

    private string[] Past { get; init; } = [];

    private LoadState Load { get; init; }

    private string Ridden { get; init; } = "";

    private string Planned { get; init; } = "";

    private bool PlannedLighter { get; init; }

    private string Written { get; init; } = "";

    private string PlanText { get; init; } = "";

    private string Limit { get; init; } = "";

    private string Days { get; init; } = "";

    private PlanException[] Excepted { get; init; } = [];

    private FixedRide[] Fixed { get; init; } = [];

    private OwnSession[] Own { get; init; } = [];

    private bool WithoutPower { get; init; }

    private bool LogAlone { get; init; }

    private bool BandsAlone { get; init; }

    private IsoDayOfWeek FirstDay { get; init; } = IsoDayOfWeek.Monday;

    public bool TestDue { get; private init; }

    /// <summary>The rider file.</summary>
    public Rider Rider
    {
        get => field with
        {
            Plan = field.Plan with
            {
                LimitOverrides = Limit.Length == 0 ? field.Plan.LimitOverrides : field.Plan.LimitOverrides.Add(Limit, 0),
                WeekStartsOn = FirstDay,
                Days = [.. Days.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(d => Enum.GetValues<IsoDayOfWeek>().Single(v => v.ToString().StartsWith(d, StringComparison.Ordinal)))],
            },
            Exceptions = [.. Excepted],
            FixedRides = [.. Fixed],
            Sessions = [.. Own],
            Thresholds = [field.Thresholds[0] with { From = TestDue ? Monday.PlusDays(-42) : field.Thresholds[0].From, Power = WithoutPower ? null : field.Thresholds[0].Power }],
        };
    }

    /// <summary>The plan tables.</summary>
    public PlanTable Table
    {
        get
        {
            var (sheet, _) = PlanTableWriter.Update(PlanSheet.New("plan.csv"), [.. Rows(Planned, PlannedLighter ? ExceptionKind.Lighter : null)], Start, Start.PlusDays(6));
            var byHand = string.Join('\n', Rows(Written, null).Where(r => !r.IsRest).Select(r => string.Create(CultureInfo.InvariantCulture, $"{r.Date:uuuu-MM-dd},{r.Kind.ToString().ToLowerInvariant()},{r.Minutes}")));
            return PlanTable.Merge([PlanTableReader.Read(PlanTableWriter.Write(sheet), "plan.csv"), PlanTableReader.Read(PlanText.Length > 0 ? PlanText : $"date,kind,minutes\n{byHand}", "by-hand.csv")]);
        }
    }

    /// <summary>What lies behind the week.</summary>
    public NextStart Begins
    {
        get
        {
            var (rider, limits, weeks) = (Rider, PlanInForce.For(Rider, []).Limits, Past.SelectMany(Repeated).ToArray());
            var past = ImmutableArray.CreateBuilder<WeekFacts>();
            foreach (var (line, startsOn) in weeks.Select((w, i) => (w, Start.PlusDays(-7 * (weeks.Length - i)))))
            {
                var days = DaysOf(line, startsOn, rider, limits).Select(d => DayFacts.Build(d.Date, d.Rides.Select(Known), 0, limits)).ToImmutableArray();
                var first = past.Count > 0 ? past[0].FirstRideOn : days.FirstOrDefault(d => !d.Rides.IsEmpty)?.Date;
                past.Add(WeekFacts.Build(days, past.Count > 0 ? past[^1].LoadAfter : Load, first, WeekExceptions.For(rider.Exceptions, startsOn).Leading));
            }
            var ridden = DaysOf(Ridden, Start, rider, limits);
            return new NextStart { AsOf = Start.PlusDays(ridden.Length), StartsOn = Start, Past = past.ToImmutable(), Ridden = ridden };
        }
    }

    // A log knows what a ride was and not its seconds; heart rate knows the bands and not the work.
    private RideFigures Known(RideFigures ride) =>
        LogAlone ? ride with { Bands = default, AtThresholdShare = null, AtHighShare = null, BoutSeconds = 0 }
        : BandsAlone ? ride with { AtThresholdShare = null, AtHighShare = null, BoutSeconds = 0 }
        : ride;

    private LocalDate Start => Monday.PlusDays(1).Previous(FirstDay);

    private static IEnumerable<string> Repeated(string line) =>
        line.Split(" x ") is [var times, var week] ? Enumerable.Repeat(week, int.Parse(times, CultureInfo.InvariantCulture)) : [line];

    private static (IsoDayOfWeek, int)[] Free(params int[] minutes) => [.. minutes.Select((m, i) => ((IsoDayOfWeek)(i + 1), m)).Where(f => f.m > 0)];

    private static PlanException Out(int from, int to, ExceptionKind kind) => new(Monday.PlusDays(from), Monday.PlusDays(to), kind);

    private static OwnSession Session(string name, PlannedKind kind, int minutes, string blocks) => new(name, kind, minutes, SessionBlocks.Read(blocks, out _)!);

    private static ImmutableArray<DayFacts> DaysOf(string line, LocalDate startsOn, Rider rider, Limits limits) =>
        [.. line.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select((day, i) => DayFacts.Build(startsOn.PlusDays(i), Read(day).Select(r => RideOf(r.Kind, r.Minutes, startsOn.PlusDays(i), rider, limits)), 0, limits))];

    private static RideFigures RideOf(PlannedKind kind, int minutes, LocalDate date, Rider rider, Limits limits)
    {
        var key = (kind, minutes, rider.Experience, rider.Thresholds[0], limits);
        if (!Figures.TryGetValue(key, out var ride))
            Figures[key] = ride = PlannedTrace.FiguresOf(FittedSession.Fit(UsualSession.Of(kind, minutes, rider.Experience), minutes)!, Monday, rider, limits);
        return ride with { File = $"{kind} {minutes}", StartsAt = (date + LocalTime.Noon).WithOffset(Offset.Zero) };
    }

    private IEnumerable<PlannedSession> Rows(string line, ExceptionKind? exception) => line.Split(' ', StringSplitOptions.RemoveEmptyEntries).SelectMany((day, i) =>
        day == "-" ? [new PlannedSession { Date = Start.PlusDays(i), Kind = PlannedKind.Rest, Exception = exception }]
        : Read(day).Select(r => new PlannedSession { Date = Start.PlusDays(i), Kind = r.Kind, Minutes = r.Minutes, Exception = exception }));

    private static IEnumerable<(PlannedKind Kind, int Minutes)> Read(string day) => day == "-" ? [] : day.Split('+').Select(r => (KindOf(r[0]), int.Parse(r[1..], CultureInfo.InvariantCulture)));

    private static PlannedKind KindOf(char letter) => letter switch
    {
        'R' => PlannedKind.Recovery,
        'E' => PlannedKind.Endurance,
        'L' => PlannedKind.Long,
        'T' => PlannedKind.Threshold,
        'H' => PlannedKind.High,
        'V' => PlannedKind.Event,
        _ => throw new ArgumentOutOfRangeException(nameof(letter)),
    };
}
