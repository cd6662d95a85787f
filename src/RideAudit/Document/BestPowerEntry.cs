namespace RideAudit.Document;

/// <summary>A best mean power of a ride.</summary>
/// <param name="Seconds">Window, s.</param>
/// <param name="MeanPowerW">Mean power over it, W, one decimal.</param>
/// <param name="StartSecond">Where it starts, s of timer time.</param>
public sealed record BestPowerEntry(int Seconds, double MeanPowerW, int StartSecond);
