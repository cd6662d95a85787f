namespace RideAudit.Held;

/// <summary>One repeat of a planned session: what was meant and what was ridden.</summary>
/// <param name="Seconds">Its planned length, s.</param>
/// <param name="LowW">Least power meant, W; null for an effort all out.</param>
/// <param name="HighW">Most power meant, W; null for an effort all out.</param>
/// <param name="RiddenW">Mean power of the same length ridden, W; null for a repeat that was not ridden.</param>
/// <param name="StartSecond">Second of timer time that it begins at; null for a repeat that was not ridden.</param>
public readonly record struct HeldRepeat(int Seconds, double? LowW, double? HighW, double? RiddenW, int? StartSecond);
