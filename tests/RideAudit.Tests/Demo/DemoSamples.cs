namespace RideAudit.Tests.Demo;

/// <summary>Makes a second-by-second recording out of a ride's blocks: noise, surges, coasting, and a heart that follows.</summary>
internal sealed class DemoSamples
{
    private const double RestBpm = 48;
    private const double ThresholdBpm = 168;

    public required int[] PowerW { get; init; }

    public required int[] HeartRateBpm { get; init; }

    public required int[] CadenceRpm { get; init; }

    public required double[] DistanceM { get; init; }

    public static DemoSamples Of(DemoRide ride, ulong seed)
    {
        var random = new DemoRandom(seed);
        var count = ride.Seconds;
        var samples = new DemoSamples
        {
            PowerW = new int[count],
            HeartRateBpm = new int[count],
            CadenceRpm = new int[count],
            DistanceM = new double[count],
        };
        var second = 0;
        double noise = 0, heart = RestBpm + 35, distance = 0;
        int surge = 0, coast = 0;
        foreach (var block in ride.Blocks)
            for (var i = 0; i < block.Seconds; i++, second++)
            {
                noise = 0.85 * noise + 0.53 * random.Normal();
                (surge, coast) = Unrest(ride, block, surge, coast, random);
                var spread = ride.Indoor ? 0.02 : 0.09;
                var share = coast > 0 ? 0 : block.Share * (1 + spread * noise) * (surge > 0 ? 1.45 : 1);
                var power = Math.Max(0, share * ride.ThresholdW);
                samples.PowerW[second] = (int)Math.Round(power);
                heart += (HeartFor(block.Share, second) - heart) / 38;
                samples.HeartRateBpm[second] = (int)Math.Round(heart + 0.6 * random.Normal());
                samples.CadenceRpm[second] = coast > 0 ? 0 : (int)Math.Round(86 + 3 * random.Normal());
                // Speed grows with the cube root of power: half-way between two easy powers is near enough here.
                distance += ride.Indoor ? 0 : 5.2 + 3.4 * Math.Sqrt(Math.Max(0, block.Share));
                samples.DistanceM[second] = distance;
            }
        return samples;
    }

    /// <summary>Heart rate the body settles at, drifting up by three beats an hour.</summary>
    private static double HeartFor(double share, int second) =>
        RestBpm + (ThresholdBpm - RestBpm) * Math.Min(1.06, 0.42 + 0.58 * share) + second * 3.0 / 3600;

    private static (int Surge, int Coast) Unrest(DemoRide ride, DemoBlock block, int surge, int coast, DemoRandom random)
    {
        surge = Math.Max(0, surge - 1);
        coast = Math.Max(0, coast - 1);
        // Steady efforts are ridden steadily; roads surge and coast.
        if (ride.Indoor || block.Share >= 0.85 || surge > 0 || coast > 0)
            return (surge, coast);
        var draw = random.Next();
        return draw < 0.004 ? (random.Between(4, 11), 0) : draw < 0.009 ? (0, random.Between(4, 18)) : (0, 0);
    }
}
