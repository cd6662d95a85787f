using System.Collections.Immutable;

namespace RideAudit.Document;

/// <summary>What a ride's strip draws: evenly spaced samples of timer time, NaN where missing.</summary>
/// <param name="StepSeconds">Seconds between samples.</param>
/// <param name="Power30W">Trailing 30 s mean power, W; empty without power.</param>
/// <param name="HeartRateBpm">Heart rate, bpm; empty without heart rate.</param>
/// <param name="PauseSeconds">Seconds of timer time at which a pause lies.</param>
public sealed record RideTrace(
    int StepSeconds, ImmutableArray<float> Power30W, ImmutableArray<float> HeartRateBpm, ImmutableArray<int> PauseSeconds);
