namespace RideAudit.Rides;

/// <summary>A stretch of one recording's grid, placed on the clock of the ride it belongs to.</summary>
/// <param name="Grid">The recording's grid.</param>
/// <param name="Start">Index of its first second on that grid.</param>
/// <param name="Length">Its seconds.</param>
/// <param name="ClockSecond">Seconds on the clock from the ride's start to its first second.</param>
internal readonly record struct GridPiece(SampleGrid Grid, int Start, int Length, long ClockSecond)
{
    /// <summary>The clock second after its last one.</summary>
    public long ClockEnd => ClockSecond + Length;

    /// <summary>What is left from a clock second on.</summary>
    public GridPiece From(long clockSecond)
    {
        var cut = (int)Math.Clamp(clockSecond - ClockSecond, 0, Length);
        return new GridPiece(Grid, Start + cut, Length - cut, ClockSecond + cut);
    }
}
