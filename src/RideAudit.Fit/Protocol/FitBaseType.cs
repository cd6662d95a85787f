namespace RideAudit.Fit.Protocol;

/// <summary>How a field's bytes are meant. The value is the code as stored in a definition.</summary>
/// <remarks>Source: the protocol's base type table; bit 7 says that byte order applies.</remarks>
public enum FitBaseType : byte
{
    /// <summary>Enumeration, 1 byte, invalid 0xFF.</summary>
    Enum = 0x00,

    /// <summary>Signed, 1 byte, invalid 0x7F.</summary>
    SInt8 = 0x01,

    /// <summary>Unsigned, 1 byte, invalid 0xFF.</summary>
    UInt8 = 0x02,

    /// <summary>Text, UTF-8, ended by 0.</summary>
    String = 0x07,

    /// <summary>Unsigned, 1 byte, invalid 0.</summary>
    UInt8Z = 0x0A,

    /// <summary>Bytes, invalid if all are 0xFF.</summary>
    Byte = 0x0D,

    /// <summary>Signed, 2 bytes, invalid 0x7FFF.</summary>
    SInt16 = 0x83,

    /// <summary>Unsigned, 2 bytes, invalid 0xFFFF.</summary>
    UInt16 = 0x84,

    /// <summary>Signed, 4 bytes, invalid 0x7FFFFFFF.</summary>
    SInt32 = 0x85,

    /// <summary>Unsigned, 4 bytes, invalid 0xFFFFFFFF.</summary>
    UInt32 = 0x86,

    /// <summary>IEEE 754, 4 bytes, invalid all bits set.</summary>
    Float32 = 0x88,

    /// <summary>IEEE 754, 8 bytes, invalid all bits set.</summary>
    Float64 = 0x89,

    /// <summary>Unsigned, 2 bytes, invalid 0.</summary>
    UInt16Z = 0x8B,

    /// <summary>Unsigned, 4 bytes, invalid 0.</summary>
    UInt32Z = 0x8C,

    /// <summary>Signed, 8 bytes, invalid 0x7FFFFFFFFFFFFFFF.</summary>
    SInt64 = 0x8E,

    /// <summary>Unsigned, 8 bytes, invalid all bits set.</summary>
    UInt64 = 0x8F,

    /// <summary>Unsigned, 8 bytes, invalid 0.</summary>
    UInt64Z = 0x90,
}
