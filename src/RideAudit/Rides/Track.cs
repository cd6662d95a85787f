namespace RideAudit.Rides;

/// <summary>A recording as it was stored: samples at their own times, not yet on a grid. Columns are of equal length or empty; they are looked at where they lie, not copied.</summary>
internal readonly ref struct Track
{
    /// <summary>A track without anything.</summary>
    public Track()
    {
    }

    /// <summary>Times, s since the Unix epoch or any other fixed zero; in any order, repeats allowed.</summary>
    public required ReadOnlySpan<long> Seconds { get; init; }

    /// <summary>Power, W, NaN where missing; empty without the column.</summary>
    public ReadOnlySpan<float> PowerW { get; init; }

    /// <summary>Heart rate, bpm.</summary>
    public ReadOnlySpan<float> HeartRateBpm { get; init; }

    /// <summary>Cadence, rpm.</summary>
    public ReadOnlySpan<float> CadenceRpm { get; init; }

    /// <summary>Speed, m/s.</summary>
    public ReadOnlySpan<float> SpeedMps { get; init; }

    /// <summary>Distance from the start, m.</summary>
    public ReadOnlySpan<double> DistanceM { get; init; }

    /// <summary>Timer starts and stops; empty when the recording has none.</summary>
    public IReadOnlyList<TimerEvent> TimerEvents { get; init; } = [];

    /// <summary>The recording's own total of timer time, s; null without one. Tested before it is trusted.</summary>
    public double? StoredTimerSeconds { get; init; }

    /// <summary>The recording's own total of elapsed time, s; null without one. Tested before it is trusted.</summary>
    public double? StoredElapsedSeconds { get; init; }

    /// <summary>The timer of a recording started or stopped.</summary>
    /// <param name="Second">When, in the track's seconds.</param>
    /// <param name="Starts">True for a start.</param>
    public readonly record struct TimerEvent(long Second, bool Starts);
}
