namespace RideAudit.Plan;

/// <summary>What figures of a rider file may be, lowest and highest, both allowed. Common practice, no source: wide enough for any rider, narrow enough to catch a slip.</summary>
public static class RiderFileRanges
{
    /// <summary>Threshold power, W.</summary>
    public static (double Least, double Most) ThresholdPower { get; } = (30, 700);

    /// <summary>Threshold heart rate, bpm.</summary>
    public static (double Least, double Most) ThresholdHeartRate { get; } = (60, 230);

    /// <summary>Planned hours a week, h.</summary>
    public static (double Least, double Most) WeeklyHours { get; } = (0.5, 60);
}
