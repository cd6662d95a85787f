namespace RideAudit.Fit.Protocol;

/// <summary>Facts about base types.</summary>
internal static class FitBaseTypes
{
    private const byte NumberMask = 0x1F;
    private const byte UnusedBits = 0x60;

    /// <summary>The type of a stored code; devices that forget bit 7 are understood.</summary>
    public static bool TryParse(byte code, out FitBaseType type)
    {
        type = (code & NumberMask) switch
        {
            0 => FitBaseType.Enum,
            1 => FitBaseType.SInt8,
            2 => FitBaseType.UInt8,
            3 => FitBaseType.SInt16,
            4 => FitBaseType.UInt16,
            5 => FitBaseType.SInt32,
            6 => FitBaseType.UInt32,
            7 => FitBaseType.String,
            8 => FitBaseType.Float32,
            9 => FitBaseType.Float64,
            10 => FitBaseType.UInt8Z,
            11 => FitBaseType.UInt16Z,
            12 => FitBaseType.UInt32Z,
            13 => FitBaseType.Byte,
            14 => FitBaseType.SInt64,
            15 => FitBaseType.UInt64,
            16 => FitBaseType.UInt64Z,
            _ => FitBaseType.Byte,
        };
        return (code & UnusedBits) == 0 && (code & NumberMask) <= 16;
    }

    /// <summary>Bytes of one element.</summary>
    public static int SizeOf(FitBaseType type) => type switch
    {
        FitBaseType.SInt16 or FitBaseType.UInt16 or FitBaseType.UInt16Z => 2,
        FitBaseType.SInt32 or FitBaseType.UInt32 or FitBaseType.UInt32Z or FitBaseType.Float32 => 4,
        FitBaseType.Float64 or FitBaseType.SInt64 or FitBaseType.UInt64 or FitBaseType.UInt64Z => 8,
        _ => 1,
    };

    /// <summary>The bit pattern that says "no value", in the low bytes.</summary>
    public static ulong InvalidOf(FitBaseType type) => type switch
    {
        FitBaseType.SInt8 => 0x7F,
        FitBaseType.SInt16 => 0x7FFF,
        FitBaseType.SInt32 => 0x7FFF_FFFF,
        FitBaseType.SInt64 => 0x7FFF_FFFF_FFFF_FFFF,
        FitBaseType.UInt16 => 0xFFFF,
        FitBaseType.UInt32 or FitBaseType.Float32 => 0xFFFF_FFFF,
        FitBaseType.UInt64 or FitBaseType.Float64 => ulong.MaxValue,
        FitBaseType.String or FitBaseType.UInt8Z or FitBaseType.UInt16Z or FitBaseType.UInt32Z or FitBaseType.UInt64Z => 0,
        _ => 0xFF,
    };
}
