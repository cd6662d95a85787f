namespace RideAudit.Fit.Messages;

/// <summary>The rider's body data as a device knew them (message 3). The name is never read.</summary>
public sealed record FitUserProfile
{
    /// <summary>0 female, 1 male; null if absent.</summary>
    public byte? Gender { get; init; }

    /// <summary>Age, years; null if absent.</summary>
    public int? AgeYears { get; init; }

    /// <summary>Height, m; null if absent.</summary>
    public double? HeightM { get; init; }

    /// <summary>Weight, kg; null if absent.</summary>
    public double? WeightKg { get; init; }

    /// <summary>Heart rate at rest, bpm; null if absent.</summary>
    public int? RestingHeartRate { get; init; }

    /// <summary>Highest heart rate set for cycling, bpm; null if absent.</summary>
    public int? MaxBikingHeartRate { get; init; }

    /// <summary>Highest heart rate set for all sports, bpm; null if absent.</summary>
    public int? MaxHeartRate { get; init; }
}
