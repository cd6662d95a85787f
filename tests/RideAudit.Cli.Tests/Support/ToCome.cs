using System.Collections.Immutable;
using NodaTime;
using RideAudit.Document;
using RideAudit.Document.Layouts;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Plan.Blocks;
using RideAudit.Testing.Samples;
using RideAudit.Weeks;

namespace RideAudit.Cli.Tests.Support;

/// <summary>A week to come, made by hand: a hard day, a day with two rides, an event of unknown length.</summary>
internal static class ToCome
{
    public static readonly LocalDate Monday = new(2026, 6, 22);

    public static NextDocument Next() => new()
    {
        AsOf = Monday,
        Rider = new RiderEntry { Label = "Rider A", Tier = Tier.Middle, Experience = Experience.Regular, TimeZone = "Europe/Lisbon" },
        Weeks =
        [
            new NextWeekEntry
            {
                StartsOn = Monday,
                IsoWeek = new IsoWeek(2026, 26),
                From = Monday,
                Hours = 2.25,
                AskedHours = 6.5,
                ExpectedStress = 120,
                Days =
                [
                    Day(0, DayKind.Rest),
                    Day(1, DayKind.High, Session(PlannedKind.High, "five fives", 75, 92, "15 min easy, 5 x 5 min 107-111 %, 4 min easy between, easy to the end", "Warm up for 15 min; 5 × 5 min at 268 to 278 W, 4 min easy between; back\\slash, ünïcödé, 日本語日本語日本語日本語日本語.")),
                    Day(2, DayKind.Endurance, Session(PlannedKind.Recovery, null, 15, 8, "very easy to the end", "Very easy."), Session(PlannedKind.Endurance, null, 45, 28, null, "Easy.")),
                    Day(3, DayKind.Rest),
                    Day(4, DayKind.Rest),
                    Day(5, DayKind.Rest, Session(PlannedKind.Event, null, 0, null, null, "The event.")) with { Exception = ExceptionKind.Event },
                    Day(6, DayKind.Rest),
                ],
                Verdicts = [],
            },
        ],
    };

    private static NextDayEntry Day(int day, DayKind kind, params ImmutableArray<NextSessionEntry> sessions) => SampleToCome.Day(Monday, day, kind, sessions);

    private static NextSessionEntry Session(PlannedKind kind, string? name, int minutes, double? stress, string? blocks, string sentence) =>
        SampleToCome.Session(kind, name, minutes, stress, sentence) with { Blocks = blocks is null ? null : SessionBlocks.Read(blocks, out _) };
}
