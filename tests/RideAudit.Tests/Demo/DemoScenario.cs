using NodaTime;

namespace RideAudit.Tests.Demo;

/// <summary>
/// Sixteen weeks of a rider who does not exist: evenings after a shift, two weekend rides, building towards a long gravel day in July.
/// Three weeks of growth and a lighter one with a test in it, over and over; in the last week the long ride was traded for intensity.
/// </summary>
internal static class DemoScenario
{
    public static readonly LocalDate FirstMonday = new(2026, 3, 2);

    public const int Weeks = 16;

    public static IEnumerable<DemoRide> Rides()
    {
        for (var week = 1; week < Weeks; week++)
            foreach (var ride in week % 4 == 0 ? Lighter(week) : Building(week))
                yield return ride;
        foreach (var ride in LastWeek())
            yield return ride;
    }

    private static IEnumerable<DemoRide> Building(int week)
    {
        var step = (week - 1) / 4;
        var within = (week - 1) % 4;
        yield return Ride(week, IsoDayOfWeek.Tuesday, 18, "intervals", HighBlocks(4 + step / 2, 360, 1.06)) with { Indoor = week == 2 };
        yield return Ride(week, IsoDayOfWeek.Wednesday, 18, "recovery", [new(2100, 0.50)]);
        yield return Ride(week, IsoDayOfWeek.Thursday, 18, "tempo", ThresholdBlocks(2 + step / 2));
        foreach (var ride in LongRide(week, 9000 + 300 * step + 300 * within))
            yield return ride;
        var sunday = Ride(week, IsoDayOfWeek.Sunday, 10, "endurance", [new(600, 0.52), new(3600 + 300 * within, 0.64), new(300, 0.48)]);
        yield return week == 10 ? sunday with { HasPower = false } : sunday;
    }

    private static IEnumerable<DemoRide> LongRide(int week, int seconds)
    {
        var date = Date(week, IsoDayOfWeek.Saturday);
        if (week == 7)
        {
            // A café stop with the head unit switched off: two files, one ride.
            yield return Ride(week, IsoDayOfWeek.Saturday, 9, "long-1", [new(900, 0.55), new(seconds / 2 - 900, 0.66)]);
            yield return new DemoRide($"{Iso(date)}-long-2.fit", date.At(new LocalTime(11, 5)), [new(seconds / 2 - 600, 0.65), new(600, 0.50)]) { ThresholdW = Threshold(date) };
            yield break;
        }
        yield return Ride(week, IsoDayOfWeek.Saturday, 9, "long", [new(900, 0.55), new(seconds - 1500, 0.66), new(600, 0.50)]) with
        {
            Stops = [(seconds / 2, 840)],
        };
    }

    private static IEnumerable<DemoRide> Lighter(int week)
    {
        yield return Ride(week, IsoDayOfWeek.Tuesday, 18, "easy", [new(2700, 0.60)]);
        yield return Ride(week, IsoDayOfWeek.Thursday, 18, "test", [new(900, 0.55), new(180, 1.28), new(420, 0.50), new(300, 1.17), new(600, 0.50), new(1200, 1.045), new(480, 0.50)]);
        yield return Ride(week, IsoDayOfWeek.Saturday, 9, "endurance", [new(600, 0.55), new(5100, 0.65), new(300, 0.48)]);
        yield return Ride(week, IsoDayOfWeek.Sunday, 10, "easy", [new(3000, 0.58)]);
    }

    private static IEnumerable<DemoRide> LastWeek()
    {
        yield return Ride(Weeks, IsoDayOfWeek.Tuesday, 18, "intervals", HighBlocks(4, 300, 1.08));
        yield return Ride(Weeks, IsoDayOfWeek.Wednesday, 18, "group", HighBlocks(5, 240, 1.08)) with { Stops = [(1500, 95)] };
        yield return Ride(Weeks, IsoDayOfWeek.Saturday, 9, "steady", [new(600, 0.52), new(2700, 0.64), new(300, 0.48)]) with { Csv = true };
        yield return Ride(Weeks, IsoDayOfWeek.Sunday, 10, "tempo", ThresholdBlocks(2));
    }

    private static List<DemoBlock> HighBlocks(int repeats, int seconds, double share)
    {
        List<DemoBlock> blocks = [new(900, 0.58)];
        for (var i = 0; i < repeats; i++)
            blocks.AddRange([new DemoBlock(seconds, share), new DemoBlock(180, 0.50)]);
        blocks.Add(new DemoBlock(480, 0.52));
        return blocks;
    }

    private static List<DemoBlock> ThresholdBlocks(int repeats)
    {
        List<DemoBlock> blocks = [new(900, 0.60)];
        for (var i = 0; i < repeats; i++)
            blocks.AddRange([new DemoBlock(720, 0.885), new DemoBlock(300, 0.55)]);
        blocks.Add(new DemoBlock(600, 0.55));
        return blocks;
    }

    private static DemoRide Ride(int week, IsoDayOfWeek day, int hour, string what, IReadOnlyList<DemoBlock> blocks)
    {
        var date = Date(week, day);
        // Nobody starts on the dot.
        var start = date.At(new LocalTime(hour, (week * 7 + (int)day * 5) % 23, (week * 11) % 60));
        return new DemoRide($"{Iso(date)}-{what}", start, blocks) { ThresholdW = Threshold(date) };
    }

    private static LocalDate Date(int week, IsoDayOfWeek day) => FirstMonday.PlusWeeks(week - 1).PlusDays((int)day - 1);

    private static double Threshold(LocalDate date) => date < new LocalDate(2026, 4, 27) ? 240 : 250;

    private static string Iso(LocalDate date) => NodaTime.Text.LocalDatePattern.Iso.Format(date);
}
