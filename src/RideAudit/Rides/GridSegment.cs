namespace RideAudit.Rides;

/// <summary>A stretch of the grid ridden without a pause.</summary>
/// <param name="Start">Index of its first second on the grid.</param>
/// <param name="Length">Its seconds, at least 1.</param>
/// <param name="ClockSecond">Seconds on the clock from the start of the recording or ride to its first second.</param>
public readonly record struct GridSegment(int Start, int Length, long ClockSecond)
{
    /// <summary>Index after its last second.</summary>
    public int End => Start + Length;
}
