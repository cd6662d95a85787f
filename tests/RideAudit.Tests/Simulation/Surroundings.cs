namespace RideAudit.Tests.Simulation;

/// <summary>What makes a simulated ride uneven: the noise model of every simulated session.</summary>
/// <remarks>
/// Power = what the rider means × (1 + noise) × (1 + terrain), and 0 while coasting. Common practice, no source.
/// Noise: normal, with memory, each second keeping e^(−1/memory) of the one before: legs differ from second to second and are back within a few.
/// Terrain: one wave a hill, as high as the amplitude, its length drawn anew for each. In an interval the rider watches the meter, not the hill: a third of it.
/// Coasting: stretches of some seconds at random, so many of the seconds in all, never in an interval. What a rider means by an even 70 % is the mean that
/// comes out, so the pedalling between is that much harder.
/// </remarks>
internal sealed record Surroundings
{
    /// <summary>Deviation of the noise, a share of power.</summary>
    public required double Noise { get; init; }

    /// <summary>Memory of the noise, s.</summary>
    public double MemorySeconds { get; init; } = 2;

    /// <summary>Height of the terrain's wave, a share of power; 0 where it is flat.</summary>
    public double Terrain { get; init; }

    /// <summary>How much of the terrain is felt in an interval, a share of it.</summary>
    public double TerrainInWork { get; init; } = 1.0 / 3;

    /// <summary>Shortest and longest hill, up and down, s.</summary>
    public (int Least, int Most) HillSeconds { get; init; } = (240, 720);

    /// <summary>Share of the seconds spent coasting, intervals left out.</summary>
    public double Coasting { get; init; }

    /// <summary>Shortest and longest coasting, s.</summary>
    public (int Least, int Most) CoastSeconds { get; init; } = (4, 16);

    /// <summary>Roads: noise of 10 %, hills of 10 %, coasting 6 %.</summary>
    public static Surroundings Road { get; } = new() { Noise = 0.10, Terrain = 0.10, Coasting = 0.06 };

    /// <summary>Rolling gravel: more of everything, and shorter hills.</summary>
    public static Surroundings Gravel { get; } = new() { Noise = 0.15, Terrain = 0.15, HillSeconds = (60, 240), Coasting = 0.10 };

    /// <summary>A trainer indoors: noise of 3 %.</summary>
    public static Surroundings Indoors { get; } = new() { Noise = 0.03 };
}
