using System.Collections.Immutable;
using RideAudit.Plan;
using RideAudit.Tests.Simulation;

namespace RideAudit.Tests.Coach;

/// <summary>Weeks as the trade draws them. Common practice, no source.</summary>
internal static class TradeWeeks
{
    private const int Tue = 1, Wed = 2, Thu = 3, Fri = 4, Sat = 5, Sun = 6;

    public static Session Intervals(int minutes) => Session.Repeats(minutes, 5, 180, 112, 180) with { Name = $"{minutes} min with 5 × 3 min" };

    public static Session Tempo(int minutes) => Session.Repeats(minutes, 3, 720, 90, 240) with { Name = $"{minutes} min with 3 × 12 min" };

    public static Session Threshold(int minutes) => Session.Repeats(minutes, 2, 1200, 95, 300) with { Name = $"{minutes} min with 2 × 20 min" };

    public static Session Short(int minutes) => Session.Sets(minutes, 3, 13, 30, 120, 15, 180) with { Name = $"{minutes} min of 30/15" };

    public static TradeWeek LowOneHardDay { get; } = new("low, one hard day, new", Experience.New,
        [new(Tue, 18, Intervals(60)), new(Thu, 18, Session.Even(60, 62)), new(Sat, 9, Session.Even(45, 62)), new(Sun, 9, Session.Even(110, 66))]);

    public static TradeWeek LowTwoHardDays { get; } = new("low, two hard days, regular", Experience.Regular,
        [new(Tue, 18, Intervals(60)), new(Thu, 18, Tempo(60)), new(Sun, 9, Session.Even(125, 66))]);

    public static TradeWeek LowThreeHardDays { get; } = new("low, three hard days, racing", Experience.Racing,
        [new(Tue, 18, Intervals(60)), new(Thu, 18, Threshold(60)), new(Sat, 9, Short(60)), new(Sun, 9, Session.Even(120, 66))]);

    public static TradeWeek MiddleLongSunday { get; } = new("middle, five days, threshold on Saturday, long on Sunday", Experience.Regular,
    [
        new(Tue, 18, Intervals(60)), new(Wed, 18, Session.Even(60, 62)), new(Thu, 18, Short(60)),
        new(Sat, 9, Tempo(75)), new(Sun, 9, Session.Even(165, 66)),
    ]);

    public static TradeWeek MiddleLongSaturday { get; } = new("middle, five days, long on Saturday, threshold on Sunday", Experience.Regular,
    [
        new(Tue, 18, Intervals(60)), new(Wed, 18, Session.Even(75, 64)), new(Thu, 18, Session.Even(60, 62)),
        new(Sat, 9, Session.Even(170, 66)), new(Sun, 9, Threshold(90)),
    ]);

    public static TradeWeek MiddleTwoHardDays { get; } = new("middle, five days, two hard days", Experience.New,
    [
        new(Tue, 18, Intervals(60)), new(Wed, 18, Session.Even(60, 60)), new(Thu, 18, Tempo(75)),
        new(Sat, 9, Session.Even(90, 66)), new(Sun, 9, Session.Even(155, 66)),
    ]);

    public static TradeWeek HighSixDays { get; } = new("high, six days", Experience.Racing,
    [
        new(Tue, 17, Intervals(75)), new(Wed, 17, Session.Even(120, 65)), new(Thu, 17, Threshold(90)), new(Fri, 17, Session.Even(45, 50)),
        new(Sat, 9, Session.Even(240, 66)), new(Sun, 9, Session.Even(150, 66)),
    ]);

    public static TradeWeek HighRaceWork { get; } = new("high, six days, two high days, long with tempo", Experience.Racing,
    [
        new(Tue, 17, Intervals(75)), new(Wed, 17, Session.Even(60, 58)), new(Thu, 17, Short(75)), new(Fri, 17, Session.Even(45, 50)),
        new(Sat, 9, Session.Even(150, 66)), new(Sun, 9, Simulation.Sessions.LongWithWork),
    ]);

    public static TradeWeek VeryHigh { get; } = new("very high", Experience.Racing,
    [
        new(Tue, 16, Intervals(90)), new(Wed, 15, Session.Even(180, 63)), new(Thu, 16, Threshold(120)), new(Fri, 16, Session.Even(60, 50)),
        new(Sat, 9, Session.Even(300, 64)), new(Sun, 9, Session.Even(240, 63)),
    ]);

    public static ImmutableArray<TradeWeek> All { get; } =
    [
        LowOneHardDay, LowTwoHardDays, LowThreeHardDays, MiddleLongSunday, MiddleLongSaturday, MiddleTwoHardDays, HighSixDays, HighRaceWork, VeryHigh,
    ];
}
