using NodaTime;

namespace RideAudit.Tests.Demo;

/// <summary>One recording of the demo, as it is to be written.</summary>
/// <param name="Name">File name.</param>
/// <param name="Start">Local start.</param>
/// <param name="Blocks">What was ridden.</param>
internal sealed record DemoRide(string Name, LocalDateTime Start, IReadOnlyList<DemoBlock> Blocks)
{
    public double ThresholdW { get; init; } = 250;

    public bool Indoor { get; init; }

    public bool Csv { get; init; }

    public bool HasPower { get; init; } = true;

    /// <summary>Timer seconds after which the rider stops, and for how long.</summary>
    public IReadOnlyList<(int After, int Seconds)> Stops { get; init; } = [];

    public int Seconds => Blocks.Sum(b => b.Seconds);
}
