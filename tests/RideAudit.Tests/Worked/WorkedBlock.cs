namespace RideAudit.Tests.Worked;

/// <summary>Even riding.</summary>
/// <param name="Seconds">Length, a multiple of ten.</param>
/// <param name="Watts">Power, W; null without a power sensor.</param>
/// <param name="Bpm">Heart rate, bpm; null without a heart-rate sensor.</param>
internal readonly record struct WorkedBlock(int Seconds, int? Watts, int? Bpm);
