using System.Globalization;
using NodaTime;

namespace RideAudit.Tests.Worked;

/// <summary>The weeks and rides that the worked riders are made of.</summary>
internal static class WorkedRoutes
{
    public static readonly LocalDate JudgedMonday = new(2026, 5, 4);

    public static WorkedBlock Power(int seconds, int watts, int bpm) => new(seconds, watts, null);

    public static WorkedBlock Heart(int seconds, int watts, int bpm) => new(seconds, null, bpm);

    public static WorkedRide Ride(LocalDate date, int hour, int minute, params (int Seconds, int? Watts, int? Bpm)[] blocks) =>
        new(date.At(new LocalTime(hour, minute)), [.. blocks.Select(b => new WorkedBlock(b.Seconds, b.Watts, b.Bpm))]);

    /// <summary>Tuesday an hour with 20 minutes at 96 % (by heart rate 15 minutes at 97 %), Thursday 75 minutes easy, Saturday two and a half hours, Sunday 75 minutes easy.</summary>
    public static IEnumerable<WorkedRide> Usual(LocalDate monday, Func<int, int, int, WorkedBlock> sensor)
    {
        var hard = sensor(0, 0, 0).Watts is null ? 900 : 1200;
        WorkedRide On(int day, int hour, params WorkedBlock[] blocks) => new(monday.PlusDays(day).At(new LocalTime(hour, 0)), blocks);
        yield return On(1, 18, sensor(1200, 150, 120), sensor(hard, 240, 160), sensor(2400 - hard, 150, 120));
        yield return On(3, 18, sensor(4500, 160, 125));
        yield return On(5, 9, sensor(9000, 165, 130));
        yield return On(6, 9, sensor(4500, 160, 125));
    }

    /// <summary>Six usual weeks; in the fourth only Tuesday, Thursday and Sunday were ridden.</summary>
    public static IEnumerable<WorkedRide> Before(Func<int, int, int, WorkedBlock> sensor, bool lighterWeek = true)
    {
        for (var week = 6; week >= 1; week--)
            foreach (var ride in Usual(JudgedMonday.PlusDays(-7 * week), sensor))
                if (!lighterWeek || week != 2 || ride.Start.DayOfWeek != IsoDayOfWeek.Saturday)
                    yield return ride;
    }

    public static string RiderFile(bool power = true, double hours = 6, double lowShare = 0.85, string zone = "Europe/Lisbon") => string.Create(
        CultureInfo.InvariantCulture,
        $"""
        label = "Rider W"
        time_zone = "{zone}"
        experience = "regular"

        [[threshold]]
        from = 2026-03-01
        {(power ? "power_w = 250\n" : "")}heart_rate_bpm = 165

        [heart_rate]
        rest_bpm = 50
        max_bpm = 190

        [plan]
        weekly_hours = {hours:0.0}
        low_share = {lowShare:0.00}

        """);

    /// <summary>An exception in May 2026.</summary>
    public static string Exception(string kind, int from, int to) => string.Create(
        CultureInfo.InvariantCulture,
        $"""

        [[exception]]
        from = 2026-05-{from:00}
        to = 2026-05-{to:00}
        kind = "{kind}"

        """);
}
