using NodaTime;

namespace RideAudit.Document;

/// <summary>One week of the trend.</summary>
public sealed record HistoryEntry
{
    /// <summary>First day.</summary>
    public required LocalDate StartsOn { get; init; }

    /// <summary>Hours ridden, two decimals.</summary>
    public required double Hours { get; init; }

    /// <summary>Training stress, points, one decimal.</summary>
    public required double Stress { get; init; }

    /// <summary>Seconds in the bands.</summary>
    public required BandEntry BandSeconds { get; init; }

    /// <summary>Chronic load at the week's end, one decimal.</summary>
    public required double ChronicLoad { get; init; }

    /// <summary>Acute load at the week's end, one decimal.</summary>
    public double AcuteLoad { get; init; }

    /// <summary>Change in chronic load, one decimal.</summary>
    public required double RampPerWeek { get; init; }

    /// <summary>Longest ride, whole seconds.</summary>
    public long LongestRideSeconds { get; init; }

    /// <summary><c>lighter</c>, <c>event</c>, <c>away</c>; null for an ordinary week.</summary>
    public string? Exception { get; init; }

    /// <summary>Within the first 42 days of riding.</summary>
    public bool SettlingIn { get; init; }
}
