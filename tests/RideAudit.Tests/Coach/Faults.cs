using System.Collections.Immutable;
using RideAudit.Plan;
using RideAudit.Rules;
using RideAudit.Tests.Simulation;

namespace RideAudit.Tests.Coach;

/// <summary>Weeks as the trade draws them, each with one fault that any coach would name first. Common practice, no source.</summary>
internal static class Faults
{
    private const int Mon = 0, Tue = 1, Wed = 2, Thu = 3, Fri = 4, Sat = 5, Sun = 6;

    public static ImmutableArray<Fault> All { get; } =
    [
        new("two high days in a row", TradeWeeks.MiddleLongSunday,
            TradeWeeks.MiddleLongSunday.With(Wed, TradeWeeks.Short(60)).With(Thu, Session.Even(60, 62)), "hard-day-spacing"),
        new("two long threshold days in a row", TradeWeeks.HighSixDays,
            TradeWeeks.HighSixDays.With(Tue, Session.Even(75, 62), 17).With(Wed, TradeWeeks.Threshold(90), 17), "hard-day-spacing"),
        new("no long ride", TradeWeeks.MiddleLongSaturday, TradeWeeks.MiddleLongSaturday.With(Sat, Session.Even(90, 66), 9), "long-ride"),
        new("three hard days and no long ride", TradeWeeks.MiddleLongSunday, TradeWeeks.MiddleLongSunday.With(Sun, Session.Even(90, 66), 9), "long-ride-first"),
        new("too many hard days", TradeWeeks.MiddleTwoHardDays, TradeWeeks.MiddleTwoHardDays.With(Sat, TradeWeeks.Intervals(90), 9), "hard-day-count"),
        new("two hard rides on one day beside two others", TradeWeeks.MiddleLongSunday,
            TradeWeeks.MiddleLongSunday.And(Tue, TradeWeeks.Tempo(60), 7), "hard-day-count"),
        new("no rest after the weekend", TradeWeeks.HighSixDays, TradeWeeks.HighSixDays.With(Mon, Session.Even(90, 64)), "rest-after-load"),
        new("intervals on the day after the weekend", TradeWeeks.HighSixDays,
            TradeWeeks.HighSixDays.With(Mon, TradeWeeks.Intervals(75)).With(Tue, null), "rest-after-load"),
        new("one day of rest where two are asked for", TradeWeeks.MiddleLongSaturday,
            TradeWeeks.MiddleLongSaturday.With(Thu, Session.Even(75, 62)).With(Fri, Session.Even(70, 62)), "rest-days"),
        new("an easy ride ridden hard", TradeWeeks.HighSixDays, TradeWeeks.HighSixDays.With(Fri, Simulation.Sessions.Indoors(Session.Even(60, 78)), 17), "easy-rides-easy", Verdict.Watch),
        new("hours doubled", TradeWeeks.MiddleLongSaturday,
            TradeWeeks.MiddleLongSaturday.With(Wed, Session.Even(240, 62), 14).With(Thu, Session.Even(180, 62), 15)
                .With(Sat, Session.Even(340, 62), 9).With(Sun, TradeWeeks.Threshold(150), 9), "weekly-hours"),
        new("a third of the hours", TradeWeeks.MiddleLongSaturday, TradeWeeks.MiddleLongSaturday.With(Wed, null).With(Sat, null).With(Thu, null), "weekly-hours"),
        new("growth by intensity", TradeWeeks.MiddleLongSaturday,
            TradeWeeks.MiddleLongSaturday.With(Thu, Session.Repeats(130, 4, 900, 90, 240) with { Name = "130 min with 4 × 15 min" }), "growth-is-endurance"),
        new("the easy hours missing", TradeWeeks.MiddleLongSaturday, TradeWeeks.MiddleLongSaturday.With(Wed, null).With(Thu, null), "endurance-volume"),
        new("no lighter week for months", TradeWeeks.HighSixDays, TradeWeeks.HighSixDays, "lighter-week") { LighterWeeks = false },
        new("intervals on the second day after an illness", TradeWeeks.MiddleLongSaturday, TradeWeeks.MiddleLongSaturday, "return-to-riding")
        {
            Exceptions = [new PlanException(RiddenWeeks.Monday.PlusDays(-5), RiddenWeeks.Monday.PlusDays(-1), ExceptionKind.Ill)],
        },
    ];
}
