namespace RideAudit.Fit.Messages;

/// <summary>Clock settings of a device (message 2).</summary>
/// <param name="TimeOffsetSeconds">Offset of local from system time, s; stored as an unsigned number that may hold a negative one; null if absent or no zone on earth. Sometimes wrong.</param>
/// <param name="UtcOffsetSeconds">Offset of universal from system time, s, read the same way; null if absent.</param>
public sealed record FitDeviceSettings(int? TimeOffsetSeconds, int? UtcOffsetSeconds = null);
