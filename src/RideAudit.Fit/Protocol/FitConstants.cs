namespace RideAudit.Fit.Protocol;

/// <summary>Sizes and bit masks of the container and of record headers.</summary>
internal static class FitConstants
{
    public const int ShortHeaderSize = 12;
    public const int HeaderSize = 14;
    public const int CrcSize = 2;
    public const int SignatureOffset = 8;
    public const int HeaderCrcOffset = 12;
    public const byte NewestKnownMajor = 2;

    public const byte CompressedTimeBit = 0x80;
    public const byte DefinitionBit = 0x40;
    public const byte DeveloperBit = 0x20;
    public const byte LocalTypeMask = 0x0F;
    public const byte CompressedLocalTypeMask = 0x03;
    public const int CompressedLocalTypeShift = 5;
    public const byte TimeOffsetMask = 0x1F;
    public const uint TimeOffsetSpan = 32;

    public const int LocalTypes = 16;
    public const int DefinitionPrefixSize = 5;
    public const int FieldDefinitionSize = 3;

    public const byte TimestampField = 253;
    public const byte MessageIndexField = 254;

    public static ReadOnlySpan<byte> Signature => ".FIT"u8;
}
