namespace RideAudit.Fit.Protocol;

/// <summary>Field numbers of the record message.</summary>
internal static class RecordField
{
    public const byte Altitude = 2;
    public const byte HeartRate = 3;
    public const byte Cadence = 4;
    public const byte Distance = 5;
    public const byte Speed = 6;
    public const byte Power = 7;
    public const byte CompressedSpeedDistance = 8;
    public const byte CompressedAccumulatedPower = 28;
    public const byte AccumulatedPower = 29;
    public const byte LeftRightBalance = 30;
    public const byte FractionalCadence = 53;
    public const byte EnhancedSpeed = 73;
    public const byte EnhancedAltitude = 78;
}
