using RideAudit.Plan.Blocks;

namespace RideAudit.Sessions;

/// <summary>Riding at one effort for a known time.</summary>
/// <param name="Seconds">Its length, s.</param>
/// <param name="Effort">How hard.</param>
/// <param name="Role">What it is there for.</param>
public readonly record struct SessionStep(int Seconds, Effort Effort, StepRole Role);
