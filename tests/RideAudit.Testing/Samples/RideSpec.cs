using NodaTime;

namespace RideAudit.Testing.Samples;

/// <summary>What a sample ride is made from.</summary>
public sealed record RideSpec(int Day, LocalTime Start, int Minutes, double Ratio, string? Kind, double Middle, double High)
{
    public bool Power { get; init; } = true;

    public bool HeartRate { get; init; } = true;

    public bool Stressed { get; init; } = true;

    public string? File { get; init; }

    public string Sport { get; init; } = "road";

    public double Coverage { get; init; } = 1;

    public double? Rating { get; init; }

    public string[] Remarks { get; init; } = [];

    public string[] Parts { get; init; } = [];
}
