using NodaTime;
using static RideAudit.Tests.Worked.WorkedRoutes;

namespace RideAudit.Tests.Worked;

/// <summary>
/// Riders as common practice meets them. All have threshold power 250 W, threshold heart rate 165 bpm, rest 50, highest 190, six planned hours and 85 % of
/// them low, unless their rider file says otherwise. Six weeks before the judged one are alike, with a lighter one in the fourth.
/// </summary>
internal static class WorkedRiders
{
    private const string Lighter = """

        [[exception]]
        from = 2026-04-20
        to = 2026-04-26
        kind = "lighter"

        """;

    public static IReadOnlyList<WorkedRider> All { get; } =
    [
        new("heart-rate-only", RiderFile(power: false) + Lighter, [.. Before(Heart), .. Usual(JudgedMonday, Heart)]),
        new("mixed", RiderFile() + Lighter, [.. Before(Power), .. Mixed()], "date,minutes,rating\r\n2026-05-10,75,3\r\n"),
        new("commuter", RiderFile(hours: 4, lowShare: 0.70), [.. Commutes()]),
        new("stage-event", RiderFile() + Lighter + Exception("event", 7, 10), [.. Before(Power), .. Stages()]),
        new("lighter-week", RiderFile() + Exception("lighter", 4, 10), [.. Before(Power, lighterWeek: false), .. LighterWeek()]),
        new("away", RiderFile() + Lighter + Exception("away", 4, 10), [.. Before(Power)]),
        new("first-week", RiderFile(), [.. Usual(JudgedMonday, Power)]),
        new("no-rides", RiderFile() + Lighter, [.. Before(Power)]),
        new("two-rides-in-a-day", RiderFile() + Lighter, [.. Before(Power), .. Usual(JudgedMonday, Power), Ride(JudgedMonday.PlusDays(1), 7, 0, (2400, 140, 110))]),
        new("across-midnight", RiderFile(zone: "America/Bogota") + Lighter, [.. Before(Power), .. LateWeek()]),
    ];

    private static IEnumerable<WorkedRide> Mixed()
    {
        var usual = Usual(JudgedMonday, Power).ToArray();
        yield return usual[0];
        // Wednesday: no sensor but speed. Thursday: heart rate alone. Sunday is only in the ride log.
        yield return Ride(JudgedMonday.PlusDays(2), 18, 0, (1800, null, null));
        yield return Usual(JudgedMonday, Heart).ElementAt(1);
        yield return usual[2];
    }

    private static IEnumerable<WorkedRide> Commutes()
    {
        for (var week = -6; week <= 0; week++)
            for (var day = 0; day < 5; day++)
                foreach (var hour in new[] { 7, 17 })
                    yield return Ride(JudgedMonday.PlusDays(7 * week + day), hour, 40, (1500, 150, null));
    }

    private static IEnumerable<WorkedRide> Stages()
    {
        yield return Ride(JudgedMonday.PlusDays(1), 18, 0, (3600, 150, null));
        for (var day = 3; day < 7; day++)
            yield return Ride(JudgedMonday.PlusDays(day), 10, 0, (3600, 180, null), (3600, 235, null), (3600, 180, null));
    }

    private static IEnumerable<WorkedRide> LighterWeek()
    {
        yield return Ride(JudgedMonday.PlusDays(1), 18, 0, (2700, 150, null));
        yield return Ride(JudgedMonday.PlusDays(3), 18, 0, (3600, 165, null));
        yield return Ride(JudgedMonday.PlusDays(5), 9, 0, (5400, 165, null));
    }

    private static IEnumerable<WorkedRide> LateWeek()
    {
        var usual = Usual(JudgedMonday, Power).ToArray();
        yield return usual[0];
        yield return usual[1];
        // Saturday 22:00 to Sunday 00:30; Sunday 23:30 to Monday 00:45, which is Monday in UTC from its first second.
        yield return usual[2] with { Start = JudgedMonday.PlusDays(5).At(new LocalTime(22, 0)) };
        yield return usual[3] with { Start = JudgedMonday.PlusDays(6).At(new LocalTime(23, 30)), StampedFrom = DateTimeZoneProviders.Tzdb["America/Bogota"] };
    }
}
