namespace RideAudit.Document;

/// <summary>A sustained stretch at or above a share of threshold power.</summary>
/// <param name="SharePercent">The share, %.</param>
/// <param name="StartSecond">First second of timer time.</param>
/// <param name="EndSecond">Second after the last.</param>
/// <param name="MeanPowerW">Mean power over it, W, one decimal.</param>
public sealed record StretchEntry(double SharePercent, int StartSecond, int EndSecond, double MeanPowerW);
