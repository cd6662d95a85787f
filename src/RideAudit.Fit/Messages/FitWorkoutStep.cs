namespace RideAudit.Fit.Messages;

/// <summary>One step of a workout (message 27). Null means absent or invalid.</summary>
/// <remarks>Source: the protocol's profile, message workout_step. Values are raw: a custom power target is W + 1000, a custom heart-rate target bpm + 100, a time ms.</remarks>
public sealed record FitWorkoutStep
{
    /// <summary>Duration type of a step that lasts a time.</summary>
    public const byte Time = 0;

    /// <summary>Duration type of a step that goes back to an earlier one until that was ridden so often.</summary>
    public const byte RepeatUntilStepsComplete = 6;

    /// <summary>Target type heart rate.</summary>
    public const byte HeartRate = 1;

    /// <summary>Target type of a step without a target.</summary>
    public const byte Open = 2;

    /// <summary>Target type power.</summary>
    public const byte Power = 4;

    /// <summary>Added to watts in a custom power target.</summary>
    public const uint PowerOffset = 1000;

    /// <summary>Added to beats a minute in a custom heart-rate target.</summary>
    public const uint HeartRateOffset = 100;

    /// <summary>Its index, 0 first.</summary>
    public ushort? Index { get; init; }

    /// <summary>Its name; empty if absent.</summary>
    public string Name { get; init; } = "";

    /// <summary>What ends it.</summary>
    public byte? DurationType { get; init; }

    /// <summary>ms for a time, the index gone back to for a repeat.</summary>
    public uint? DurationValue { get; init; }

    /// <summary>What is aimed at.</summary>
    public byte? TargetType { get; init; }

    /// <summary>0 for a custom range, the number of times for a repeat.</summary>
    public uint? TargetValue { get; init; }

    /// <summary>Lower end of a custom range.</summary>
    public uint? TargetLow { get; init; }

    /// <summary>Upper end of a custom range.</summary>
    public uint? TargetHigh { get; init; }

    /// <summary>0 active, 1 rest, 2 warm-up, 3 cool-down, 4 recovery, 5 interval.</summary>
    public byte? Intensity { get; init; }
}
