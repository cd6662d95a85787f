using RideAudit.Fit.Messages;
using RideAudit.Fit.Protocol;

namespace RideAudit.Fit.Reading;

/// <summary>Reads the messages that occur a few times in a file. Field numbers are the profile's.</summary>
internal static class SummaryReader
{
    private const double Milli = 1000;
    private const double Centi = 100;
    private const int ByteMax = byte.MaxValue;
    private const int LongestOffsetSeconds = 14 * 3600;

    public static FitFileId FileId(in MessageView m) =>
        new((FitFileType)(m.Byte(0) ?? byte.MaxValue), m.UShort(1), m.UShort(2), m.Time(4));

    public static FitSession Session(in MessageView m, int order) => new()
    {
        Timestamp = m.Time(FitConstants.TimestampField),
        StartTime = m.Time(2),
        Sport = m.Byte(5),
        SubSport = m.Byte(6),
        TotalElapsedSeconds = m.Number(7, Milli),
        TotalTimerSeconds = m.Number(8, Milli),
        TotalDistanceM = m.Number(9, Centi),
        Calories = m.Int(11),
        AvgSpeedMps = m.Number(124, Milli) ?? m.Number(14, Milli),
        AvgHeartRate = m.Int(16, ByteMax),
        MaxHeartRate = m.Int(17, ByteMax),
        AvgCadence = m.Int(18, ByteMax),
        AvgPower = m.Int(20),
        MaxPower = m.Int(21),
        TotalAscentM = m.Int(22),
        NormalisedPower = m.Int(34),
        TrainingStress = m.Number(35, 10),
        IntensityRatio = m.Number(36, Milli),
        ThresholdPower = m.Int(45),
        TotalWorkJ = m.Number(48),
        EffortRating = m.Int(193, 100),
        MessageIndex = m.UShort(FitConstants.MessageIndexField),
        FirstLapIndex = m.UShort(25),
        NumLaps = m.UShort(26),
        FileOrder = order,
    };

    public static FitLap Lap(in MessageView m, int order) => new()
    {
        Timestamp = m.Time(FitConstants.TimestampField),
        StartTime = m.Time(2),
        TotalElapsedSeconds = m.Number(7, Milli),
        TotalTimerSeconds = m.Number(8, Milli),
        TotalDistanceM = m.Number(9, Centi),
        AvgHeartRate = m.Int(15, ByteMax),
        AvgPower = m.Int(19),
        MaxPower = m.Int(20),
        NormalisedPower = m.Int(33),
        Trigger = m.Byte(24),
        MessageIndex = m.UShort(FitConstants.MessageIndexField),
        FileOrder = order,
    };

    public static FitEvent Event(in MessageView m, uint? time, int order) =>
        new(m.Time(FitConstants.TimestampField) ?? time, m.Byte(0), m.Byte(1), m.UInt(3) ?? m.UShort(2), m.Byte(4), order);

    public static FitActivity Activity(in MessageView m, int order) =>
        new(m.Time(FitConstants.TimestampField), m.Time(5), m.Number(0, Milli), m.UShort(1), order);

    public static FitSport Sport(in MessageView m) => new(m.Byte(0), m.Byte(1));

    public static FitZonesTarget ZonesTarget(in MessageView m) => new(m.Int(3), m.Int(1, ByteMax), m.Int(2, ByteMax));

    public static FitWorkout Workout(in MessageView m) => new(m.Text(8), m.Byte(4), m.UShort(6));

    public static FitWorkoutStep WorkoutStep(in MessageView m) => new()
    {
        Index = m.UShort(FitConstants.MessageIndexField),
        Name = m.Text(0),
        DurationType = m.Byte(1),
        DurationValue = m.UInt(2),
        TargetType = m.Byte(3),
        TargetValue = m.UInt(4),
        TargetLow = m.UInt(5),
        TargetHigh = m.UInt(6),
        Intensity = m.Byte(7),
    };

    public static FitUserProfile UserProfile(in MessageView m) => new()
    {
        Gender = m.Byte(1),
        AgeYears = m.Int(2, ByteMax),
        HeightM = m.Number(3, 100),
        WeightKg = m.Number(4, 10),
        RestingHeartRate = m.Int(8, ByteMax),
        MaxBikingHeartRate = m.Int(10, ByteMax),
        MaxHeartRate = m.Int(11, ByteMax),
    };

    public static FitTimestampCorrelation Correlation(in MessageView m) => new(
        m.Time(FitConstants.TimestampField),
        m.Number(0, 32768),
        m.Time(1),
        m.Time(3));

    /// <summary>Clock settings; false if a time offset is there that no zone on earth has.</summary>
    public static bool TryDeviceSettings(in MessageView m, out FitDeviceSettings settings)
    {
        int active = m.Byte(0) ?? 0;
        var hasTime = m.TryNumber(2, out var time, active) || m.TryNumber(2, out time);
        var timeOffset = hasTime ? SignedOffset(time) : null;
        settings = new FitDeviceSettings(timeOffset, m.TryNumber(1, out var utc) ? SignedOffset(utc) : null);
        return !hasTime || timeOffset is not null;
    }

    private static int? SignedOffset(double stored)
    {
        var signed = stored > int.MaxValue ? stored - 4294967296.0 : stored;
        return Math.Abs(signed) <= LongestOffsetSeconds ? (int)signed : null;
    }
}
