namespace RideAudit.Fit.Messages;

/// <summary>Thresholds a device was set to (message 7).</summary>
/// <param name="ThresholdPower">Threshold power, W; null if absent.</param>
/// <param name="MaxHeartRate">Highest heart rate, bpm; null if absent.</param>
/// <param name="ThresholdHeartRate">Heart rate at threshold, bpm; null if absent.</param>
public sealed record FitZonesTarget(int? ThresholdPower, int? MaxHeartRate = null, int? ThresholdHeartRate = null);
