namespace RideAudit.Tests.Ingest;

/// <summary>Recordings of no device and no rider, which carry what the real ones are tried for: they stand in where those are not at hand.</summary>
internal static class StandIns
{
    private const byte Swim = 5, Change = 3, Cycle = 2, Run = 1, Indoor = 6;

    public static string Folder => Repository.Path("testdata", "recordings");

    public static IReadOnlyDictionary<string, byte[]> All { get; } = new Dictionary<string, byte[]>
    {
        ["clock-not-set.fit"] = new FitSketch { Start = 86_400, Seconds = 600, Power = Power, HeartRate = Heart }.Bytes(),
        ["cut-off.fit"] = new FitSketch { Seconds = 1200, Power = Power, HeartRate = Heart }.Bytes()[..^4000],
        ["five-activities.fit"] = FiveActivities(),
        ["second-meter-power.fit"] = new FitSketch { Seconds = 900, HasDeveloperPower = true, Power = _ => null, DeveloperPower = Power, HeartRate = Heart }.Bytes(),
        ["indoor.fit"] = IndoorRide(),
        ["stopped-at-lights.fit"] = StoppedAtLights(),
    };

    private static byte[] IndoorRide()
    {
        const int seconds = 1800;
        int[] powers = [.. Enumerable.Range(0, seconds).Select(Power).OfType<int>()];
        return new FitSketch
        {
            Seconds = seconds,
            SubSport = Indoor,
            Power = Power,
            HeartRate = Heart,
            Session = s => s with { AvgPower = (int)Math.Round(powers.Average()), NormalisedPower = (int)Math.Round(FourthPowerMean(powers)) },
        }.Bytes();
    }

    private static byte[] FiveActivities() => new FitSketch
    {
        Seconds = 1500,
        Sessions = [(Swim, 0, 300), (Change, 300, 60), (Cycle, 360, 720), (Change, 1080, 60), (Run, 1140, 360)],
        Power = i => i is >= 360 and < 1080 ? Power(i) : null,
        HeartRate = Heart,
    }.Bytes();

    /// <summary>Three minutes of standing after ten minutes; the device writes nothing meanwhile.</summary>
    private static byte[] StoppedAtLights() => new FitSketch
    {
        Seconds = 1200,
        Power = Power,
        HeartRate = Heart,
        TimeOf = i => FitSketch.Evening + (uint)(i < 600 ? i : i + 180),
        Timer = [(0, 0), (600, 4), (780, 0), (1380, 4)],
        Session = s => s with { Timestamp = FitSketch.Evening + 1380, TotalElapsedSeconds = 1380 },
    }.Bytes();

    /// <summary>Five minutes easy and three hard in turn, noise on top; the sensor falls silent for four seconds in each 400.</summary>
    private static int? Power(int second) =>
        second % 400 is >= 200 and < 204 ? null : (second % 480 < 300 ? 150 : 270) + second * 7919 % 41 - 20;

    private static int? Heart(int second) => (second % 480 < 300 ? 128 : 156) + second * 31 % 5;

    /// <summary>By the definition, over the seconds with power: the mean of the last 30, to the fourth power, averaged, the fourth root of it.</summary>
    private static double FourthPowerMean(int[] powers)
    {
        double sum = 0;
        for (var i = 0; i < powers.Length; i++)
            sum += Math.Pow(powers[Math.Max(0, i - 29)..(i + 1)].Average(), 4);
        return Math.Pow(sum / powers.Length, 0.25);
    }
}
