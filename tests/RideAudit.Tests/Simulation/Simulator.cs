using RideAudit.Tests.Demo;

namespace RideAudit.Tests.Simulation;

/// <summary>Rides a session: the same seed gives the same seconds on every machine.</summary>
internal static class Simulator
{
    /// <summary>Rides a session once.</summary>
    /// <param name="session">The session.</param>
    /// <param name="seed">Which of its rides; another seed is another day.</param>
    /// <param name="rider">Who rides.</param>
    public static SimulatedRide Ride(Session session, int seed, SimulatedRider? rider = null)
    {
        var who = rider ?? new SimulatedRider();
        var random = new DemoRandom((ulong)seed * 7919 + 17);
        var shares = Shares(session, random);
        return new SimulatedRide(
            session,
            [.. shares.Select(s => (float)Math.Round(Math.Max(0, s) * who.ThresholdW))],
            HeartRates(shares, who, random),
            [.. shares.Select(s => s <= 0 ? 0 : (float)Math.Round(88 + 3 * random.Normal()))]);
    }

    /// <summary>Power second by second, a share of threshold power.</summary>
    private static double[] Shares(Session session, DemoRandom random)
    {
        var shares = new double[session.Seconds];
        var unrest = new Unrest(session.On, random);
        var second = 0;
        foreach (var block in session.Blocks)
            for (var end = second + block.Seconds; second < end; second++)
                shares[second] = block.Percent / 100 * unrest.Next(block.IsWork);
        return shares;
    }

    /// <summary>A heart follows power within a minute, and drifts up by three beats an hour.</summary>
    private static float[] HeartRates(double[] shares, SimulatedRider rider, DemoRandom random)
    {
        var rates = new float[shares.Length];
        var heart = rider.RestBpm + 0.35 * (rider.ThresholdBpm - rider.RestBpm);
        for (var i = 0; i < rates.Length; i++)
        {
            var settled = rider.RestBpm + (rider.ThresholdBpm - rider.RestBpm) * Math.Min(1.08, 0.42 + 0.58 * shares[i]) + i * 3.0 / 3600;
            heart += (settled - heart) / 40;
            rates[i] = (float)Math.Round(heart + 0.5 * random.Normal());
        }
        return rates;
    }

    /// <summary>What the surroundings make of a power the rider means.</summary>
    private sealed class Unrest(Surroundings on, DemoRandom random)
    {
        private readonly double _kept = Math.Exp(-1 / on.MemorySeconds);
        private double _noise = random.Normal();
        private double _hill = random.Next();
        private double _hillSeconds = random.Between(on.HillSeconds.Least, on.HillSeconds.Most);
        private int _coast;

        public double Next(bool isWork)
        {
            _noise = _kept * _noise + Math.Sqrt(1 - _kept * _kept) * random.Normal();
            _hill += 1 / _hillSeconds;
            if (_hill >= 1)
                (_hill, _hillSeconds) = (_hill - 1, random.Between(on.HillSeconds.Least, on.HillSeconds.Most));
            var terrain = on.Terrain * (isWork ? on.TerrainInWork : 1) * Math.Sin(2 * Math.PI * _hill);
            var meant = isWork ? 1 : 1 / (1 - on.Coasting);
            return Coasts(isWork) ? 0 : meant * (1 + on.Noise * _noise) * (1 + terrain);
        }

        private bool Coasts(bool isWork)
        {
            if (isWork || _coast > 0)
            {
                _coast = isWork ? 0 : _coast - 1;
                return _coast > 0;
            }
            var mean = (on.CoastSeconds.Least + on.CoastSeconds.Most) / 2.0;
            // A stretch begins so often that the stretches are their share of all seconds.
            if (random.Next() >= on.Coasting / ((1 - on.Coasting) * mean))
                return false;
            _coast = random.Between(on.CoastSeconds.Least, on.CoastSeconds.Most);
            return true;
        }
    }
}
