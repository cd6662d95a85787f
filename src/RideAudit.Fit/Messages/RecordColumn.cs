namespace RideAudit.Fit.Messages;

/// <summary>The channels that are kept of records; those before <see cref="Distance"/> are single-precision arrays.</summary>
internal enum RecordColumn : byte
{
    Power,
    HeartRate,
    Cadence,
    Speed,
    Altitude,
    DeveloperPower,
    Distance,
    AccumulatedPower,
    Balance,
    CadenceFraction,
    CompressedSpeedDistance,
    CompressedAccumulatedPower,
}
