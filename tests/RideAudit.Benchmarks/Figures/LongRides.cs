namespace RideAudit.Benchmarks.Figures;

/// <summary>Five-hour rides that nobody rode, 18,000 s each.</summary>
internal static class LongRides
{
    public const int Seconds = 18_000;

    public static float[] Of(string kind)
    {
        var random = new Random(20260505);
        var power = new float[Seconds];
        double noise = 0;
        for (var i = 0; i < Seconds; i++)
        {
            noise = 0.85 * noise + 0.9 * (2 * random.NextDouble() - 1);
            power[i] = (float)Math.Round(Math.Max(0, kind switch
            {
                // Rolling hills, a long tide of effort, gusts.
                "road" => 200 + 80 * Math.Sin(i / 400.0) + 60 * Math.Sin(i / 1700.0) + 40 * noise,
                // Short climbs, an eighth of the time coasting.
                "stop and go" => random.Next(8) == 0 ? 0 : (i / 300 % 3 == 0 ? 260 : 180) * (1 + 0.25 * noise),
                // A trainer that holds 200 W to a few watts.
                "trainer" => 200 + random.Next(-3, 4),
                // The same interval thirty times over: many windows almost as good as the best.
                _ => i % 600 < 240 ? 300 + random.Next(-10, 11) : 120 + random.Next(-40, 41),
            }));
        }
        return power;
    }
}
