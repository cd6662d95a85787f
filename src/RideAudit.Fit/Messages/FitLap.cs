namespace RideAudit.Fit.Messages;

/// <summary>A device's summary of one lap (message 19). Null means absent or invalid.</summary>
public sealed record FitLap
{
    /// <summary>When the message was written, FIT seconds.</summary>
    public uint? Timestamp { get; init; }

    /// <summary>Start of the lap, FIT seconds.</summary>
    public uint? StartTime { get; init; }

    /// <summary>Elapsed time with pauses, s.</summary>
    public double? TotalElapsedSeconds { get; init; }

    /// <summary>Timer time without pauses, s.</summary>
    public double? TotalTimerSeconds { get; init; }

    /// <summary>Distance, m.</summary>
    public double? TotalDistanceM { get; init; }

    /// <summary>Mean heart rate, bpm.</summary>
    public int? AvgHeartRate { get; init; }

    /// <summary>Mean power, W (field 19 here, 20 in a session).</summary>
    public int? AvgPower { get; init; }

    /// <summary>Highest power, W.</summary>
    public int? MaxPower { get; init; }

    /// <summary>The device's normalised power, W.</summary>
    public int? NormalisedPower { get; init; }

    /// <summary>What ended the lap: 0 the rider, 1 time, 2 distance, 7 the session's end.</summary>
    public byte? Trigger { get; init; }

    /// <summary>Place in the list of laps.</summary>
    public ushort? MessageIndex { get; init; }

    /// <summary>Position among the part's messages; says nothing about time.</summary>
    public int FileOrder { get; init; }
}
