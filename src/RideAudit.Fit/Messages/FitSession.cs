namespace RideAudit.Fit.Messages;

/// <summary>A device's summary of one session (message 18). Null means absent or invalid; device values are second opinions, not facts.</summary>
public sealed record FitSession
{
    /// <summary>When the message was written, FIT seconds. Means nothing where summaries come first.</summary>
    public uint? Timestamp { get; init; }

    /// <summary>Start of the session, FIT seconds.</summary>
    public uint? StartTime { get; init; }

    /// <summary>Sport; 2 is cycling, 21 e-biking. Unknown numbers are kept.</summary>
    public byte? Sport { get; init; }

    /// <summary>Kind of the sport; 6 indoor, 7 road, 8 mountain, 46 gravel, 58 virtual.</summary>
    public byte? SubSport { get; init; }

    /// <summary>Elapsed time with pauses, s.</summary>
    public double? TotalElapsedSeconds { get; init; }

    /// <summary>Timer time without pauses, s.</summary>
    public double? TotalTimerSeconds { get; init; }

    /// <summary>Distance, m.</summary>
    public double? TotalDistanceM { get; init; }

    /// <summary>Energy, kcal.</summary>
    public int? Calories { get; init; }

    /// <summary>Mean speed, m/s; the enhanced field where it is valid.</summary>
    public double? AvgSpeedMps { get; init; }

    /// <summary>Mean heart rate, bpm.</summary>
    public int? AvgHeartRate { get; init; }

    /// <summary>Highest heart rate, bpm.</summary>
    public int? MaxHeartRate { get; init; }

    /// <summary>Mean cadence, rpm.</summary>
    public int? AvgCadence { get; init; }

    /// <summary>Mean power, W. Devices differ in what they divide by.</summary>
    public int? AvgPower { get; init; }

    /// <summary>Highest power, W.</summary>
    public int? MaxPower { get; init; }

    /// <summary>Ascent, m.</summary>
    public int? TotalAscentM { get; init; }

    /// <summary>The device's normalised power, W.</summary>
    public int? NormalisedPower { get; init; }

    /// <summary>The device's training stress, points.</summary>
    public double? TrainingStress { get; init; }

    /// <summary>The device's intensity ratio.</summary>
    public double? IntensityRatio { get; init; }

    /// <summary>Threshold power the device was set to, W.</summary>
    public int? ThresholdPower { get; init; }

    /// <summary>Work, J.</summary>
    public double? TotalWorkJ { get; init; }

    /// <summary>The rider's own rating of effort as stored, 0 to 100 (ten times the 0–10 scale).</summary>
    public int? EffortRating { get; init; }

    /// <summary>Place in the list of sessions.</summary>
    public ushort? MessageIndex { get; init; }

    /// <summary>Index of the session's first lap.</summary>
    public ushort? FirstLapIndex { get; init; }

    /// <summary>Number of its laps.</summary>
    public ushort? NumLaps { get; init; }

    /// <summary>Position among the part's messages; says nothing about time.</summary>
    public int FileOrder { get; init; }
}
