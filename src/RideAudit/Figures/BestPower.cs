namespace RideAudit.Figures;

/// <summary>The best mean power over one duration of timer time without missing power.</summary>
/// <param name="DurationSeconds">Window, s.</param>
/// <param name="MeanW">Mean power over it, W.</param>
/// <param name="StartSecond">Where the window starts on the ride's grid of timer seconds.</param>
public readonly record struct BestPower(int DurationSeconds, double MeanW, int StartSecond);
