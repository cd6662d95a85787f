namespace RideAudit.Fit.Protocol;

/// <summary>Numbers of the messages that are read.</summary>
internal static class GlobalMessage
{
    public const ushort FileId = 0;
    public const ushort DeviceSettings = 2;
    public const ushort UserProfile = 3;
    public const ushort ZonesTarget = 7;
    public const ushort Sport = 12;
    public const ushort Session = 18;
    public const ushort Lap = 19;
    public const ushort Record = 20;
    public const ushort Event = 21;
    public const ushort Workout = 26;
    public const ushort WorkoutStep = 27;
    public const ushort Activity = 34;
    public const ushort HeartRate = 132;
    public const ushort TimestampCorrelation = 162;
    public const ushort FieldDescription = 206;
    public const ushort DeveloperDataId = 207;
}
