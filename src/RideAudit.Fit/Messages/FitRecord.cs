namespace RideAudit.Fit.Messages;

/// <summary>One record to be written (message 20). Null is written as the field's invalid value, which is not 0.</summary>
/// <param name="Timestamp">Seconds since 1989-12-31T00:00:00Z.</param>
/// <param name="Power">Power, W, 0 to 65,534.</param>
/// <param name="HeartRate">Heart rate, bpm, 0 to 254.</param>
/// <param name="Cadence">Cadence, rpm, 0 to 254.</param>
/// <param name="SpeedMps">Speed, m/s, from 0; null for a record without.</param>
/// <param name="AltitudeM">Altitude, m, from -500.</param>
/// <param name="DistanceM">Distance since the start, m.</param>
/// <param name="DeveloperPower">Power of a developer field, W; needs <see cref="Writing.FitWriter.WriteDeveloperPower"/> before.</param>
public readonly record struct FitRecord(
    uint Timestamp,
    int? Power = null,
    int? HeartRate = null,
    int? Cadence = null,
    double? SpeedMps = null,
    double? AltitudeM = null,
    double? DistanceM = null,
    int? DeveloperPower = null);
