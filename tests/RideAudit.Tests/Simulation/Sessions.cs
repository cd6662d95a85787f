using System.Collections.Immutable;

namespace RideAudit.Tests.Simulation;

/// <summary>The sessions that a coach draws weeks from.</summary>
internal static class Sessions
{
    /// <summary>Work around threshold; an hour each unless the name says otherwise.</summary>
    public static ImmutableArray<Session> Threshold { get; } =
    [
        .. new[] { 86.0, 88, 90, 92, 95 }.Select(percent => Session.Repeats(60, 3, 720, percent, 240)),
        .. new[] { 93.0, 97 }.Select(percent => Session.Of(
            $"four efforts of 3 to 5 min at {percent} %",
            60,
            [new(180, percent), new(300, 60), new(300, percent), new(300, 60), new(240, percent), new(300, 60), new(240, percent)])),
        Session.Repeats(60, 2, 1200, 95, 300),
    ];

    /// <summary>Work above threshold, long and short.</summary>
    public static ImmutableArray<Session> High { get; } =
    [
        Session.Repeats(60, 5, 180, 112, 180),
        Session.Repeats(60, 4, 240, 108, 180),
        Session.Repeats(60, 4, 480, 106, 180),
        Session.Sets(60, 3, 13, 30, 120, 15, 180),
        Session.Sets(60, 2, 12, 30, 125, 30, 300),
        Session.Of("5 × 30 s all out", 60, AllOut(5)),
        Session.Repeats(60, 10, 12, 260, 180, 62) with { Name = "10 × 12 s sprints" },
        Session.Repeats(60, 6, 60, 140, 180),
        Session.Of("a criterium", 60, [.. Enumerable.Repeat(Lap, 40).SelectMany(lap => lap)]),
    ];

    /// <summary>Easy rides on the road and indoors that stay easy.</summary>
    public static ImmutableArray<Session> Easy { get; } =
    [
        .. new[] { 62.0, 66, 68, 70 }.Select(percent => Session.Even(75, percent)),
        .. new[] { 62.0, 66, 70, 74 }.Select(percent => Indoors(Session.Even(75, percent))),
        Session.Repeats(60, 4, 10, 250, 600, 64) with { Name = "an easy hour with four 10 s sprints" },
    ];

    /// <summary>Rides that were meant easy and were not.</summary>
    public static ImmutableArray<Session> TooHard { get; } =
    [
        Session.Even(75, 80),
        Session.Even(75, 82),
        Indoors(Session.Even(75, 80)),
        Indoors(Session.Even(75, 82)),
    ];

    /// <summary>Long rides.</summary>
    public static ImmutableArray<Session> Long { get; } = [Session.Even(160, 66), Session.Even(160, 70)];

    /// <summary>Ninety minutes up and down on gravel; how hard is for the test to scale.</summary>
    public static Session Gravel { get; } = Session.Even(90, 66) with { Name = "rolling gravel", On = Surroundings.Gravel };

    /// <summary>A long ride with work in it.</summary>
    public static Session LongWithWork { get; } = Session.Repeats(180, 3, 720, 86, 1200, 66) with { Name = "180 min with 3 × 12 min at 86 %" };

    /// <summary>A recovery ride.</summary>
    public static Session Recovery { get; } = Session.Even(45, 46);

    /// <summary>Two minutes under and one over threshold, three times twelve minutes.</summary>
    public static Session OverUnders { get; } = Session.Of(
        "over-unders", 60, [.. Enumerable.Range(0, 3).SelectMany(set => Enumerable.Repeat(UnderAndOver, 4).SelectMany(b => b).Append(new SessionBlock(set == 2 ? 0 : 240, 55)))]);

    /// <summary>The same session on a trainer.</summary>
    public static Session Indoors(Session session) => session with { Name = session.Name + " indoors", On = Surroundings.Indoors };

    private static ImmutableArray<SessionBlock> UnderAndOver => [new(120, 90), new(60, 105)];

    /// <summary>A minute of a criterium: out of the corner, along, into the next corner, in the wheels.</summary>
    private static ImmutableArray<SessionBlock> Lap => [new(12, 170), new(20, 95), new(8, 0), new(20, 80)];

    /// <summary>Half a minute all out begins at three times threshold power and fades to half of that.</summary>
    private static ImmutableArray<SessionBlock> AllOut(int repeats) =>
        [.. Enumerable.Range(0, repeats).SelectMany(_ => new SessionBlock[] { new(10, 290), new(10, 210), new(10, 160), new(270, 50) })];
}
