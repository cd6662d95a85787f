using System.Collections.Immutable;

namespace RideAudit.Rides;

/// <summary>Channels on a 1 s grid of timer time: one value a second the timer ran, NaN where missing. A true 0 W is a value.</summary>
public sealed record SampleGrid
{
    /// <summary>Timer seconds on the grid.</summary>
    public required int Length { get; init; }

    /// <summary>Stretches between pauses, in order, covering the whole grid.</summary>
    public required ImmutableArray<GridSegment> Segments { get; init; }

    /// <summary>Power, W; null without a power sensor. A recording keeps power that is 0 throughout: whether there was a sensor is told by the whole ride.</summary>
    public PackedSamples? PowerW { get; init; }

    /// <summary>Heart rate, bpm; null without a sensor.</summary>
    public PackedSamples? HeartRateBpm { get; init; }

    /// <summary>Cadence, rpm; null without a sensor, and where it is let go of once the grid is laid.</summary>
    public PackedSamples? CadenceRpm { get; init; }

    /// <summary>Speed, m/s; null without one, and where it is let go of once the grid is laid.</summary>
    public PackedSamples? SpeedMps { get; init; }

    /// <summary>Distance from the start over each stretch between pauses; empty without one.</summary>
    public ImmutableArray<DistanceStretch> Distance { get; init; } = [];

    /// <summary>Stretches on which the bicycle stood by its own speed, as half-open ranges of grid seconds; null where speed says nothing.</summary>
    public ImmutableArray<(int Start, int End)>? Standing { get; init; }

    /// <summary>Distance from the start to the end, m; null without one.</summary>
    public float? DistanceM => Distance is [.., var last] ? last.ToM : null;

    /// <summary>A grid of no seconds.</summary>
    public static SampleGrid Empty { get; } = new() { Length = 0, Segments = [] };

    /// <summary>Seconds on which a channel has a value; 0 without the channel.</summary>
    public static int CountValues(PackedSamples? channel) => channel?.Values ?? 0;

    /// <summary>The mean of the values of a channel, or of a stretch of one; NaN where all is missing.</summary>
    internal static float MeanValue(ReadOnlySpan<float> channel)
    {
        var (sum, count) = (0.0, 0);
        foreach (var value in channel)
            if (!float.IsNaN(value))
                (sum, count) = (sum + value, count + 1);
        return count == 0 ? float.NaN : (float)(sum / count);
    }

    /// <summary>True when a channel has a value above 0: one that is 0 throughout is a sensor that was not there.</summary>
    internal static bool Measures(PackedSamples? channel) => channel is { Highest: > 0 };
}
