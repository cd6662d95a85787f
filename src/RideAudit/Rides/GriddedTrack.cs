namespace RideAudit.Rides;

/// <summary>A track laid on the grid.</summary>
/// <param name="Grid">One value a second of timer time; empty where the timer never ran over a record.</param>
/// <param name="StartSecond">The track second of the grid's first second.</param>
/// <param name="TimerSeconds">Timer time, s: the stored total where it is plausible, else the grid's length.</param>
/// <param name="ElapsedSeconds">Time on the clock, s; never less than the timer time.</param>
/// <param name="StoredTimerRefused">A stored total was there and did not fit the samples.</param>
internal sealed record GriddedTrack(SampleGrid Grid, long StartSecond, double TimerSeconds, double ElapsedSeconds, bool StoredTimerRefused)
{
    /// <summary>Heart-rate samples outside 30 to 230 bpm, treated as missing.</summary>
    public int ImplausibleHeartRates { get; init; }

    /// <summary>Seconds of power that stood still, treated as missing.</summary>
    public int StuckPowerSeconds { get; init; }

    /// <summary>Seconds of heart rate that stood still, treated as missing.</summary>
    public int StuckHeartRateSeconds { get; init; }

    /// <summary>A track on which the timer never ran.</summary>
    public static GriddedTrack Empty { get; } = new(SampleGrid.Empty, 0, 0, 0, false);
}
