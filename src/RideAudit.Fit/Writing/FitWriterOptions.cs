namespace RideAudit.Fit.Writing;

/// <summary>How a file is written.</summary>
public sealed record FitWriterOptions
{
    /// <summary>Header size, bytes: 14 with a CRC of its own, 12 without; more for files with a header of the future. Default 14.</summary>
    public byte HeaderSize { get; init; } = 14;

    /// <summary>Write the header's CRC; otherwise 0, "not computed". Default true.</summary>
    public bool HasHeaderCrc { get; init; } = true;

    /// <summary>Protocol version, major in the high four bits. Default 2.0.</summary>
    public byte ProtocolVersion { get; init; } = 0x20;

    /// <summary>Profile version as stored. Default 21212 (21.212).</summary>
    public ushort ProfileVersion { get; init; } = 21_212;

    /// <summary>Byte order of the messages that the writer lays out itself. Default little-endian.</summary>
    public FitByteOrder ByteOrder { get; init; }
}
