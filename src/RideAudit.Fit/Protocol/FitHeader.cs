using System.Buffers.Binary;

namespace RideAudit.Fit.Protocol;

/// <summary>The header of one part. Always little-endian, whatever the messages are.</summary>
internal readonly record struct FitHeader(int Size, byte ProtocolVersion, ushort ProfileVersion, uint DataSize, ushort? StoredCrc, ushort ComputedCrc)
{
    public int ProtocolMajor => ProtocolVersion >> 4;

    /// <summary>True if the header's own CRC agrees or is left out: 0 means "not computed", and 12 bytes have none.</summary>
    public bool CrcAgrees => StoredCrc is null or 0 || StoredCrc == ComputedCrc;

    /// <summary>Reads a header; false if there is none, or its size is below 12 or beyond the bytes.</summary>
    public static bool TryParse(ReadOnlySpan<byte> bytes, out FitHeader header)
    {
        header = default;
        if (!LooksLikeOne(bytes) || bytes[0] > bytes.Length)
            return false;
        ushort? storedCrc = bytes[0] >= FitConstants.HeaderSize
            ? BinaryPrimitives.ReadUInt16LittleEndian(bytes[FitConstants.HeaderCrcOffset..])
            : null;
        header = new FitHeader(
            bytes[0],
            bytes[1],
            BinaryPrimitives.ReadUInt16LittleEndian(bytes[2..]),
            BinaryPrimitives.ReadUInt32LittleEndian(bytes[4..]),
            storedCrc,
            FitCrc.Compute(bytes[..FitConstants.ShortHeaderSize]));
        return true;
    }

    /// <summary>True if the signature stands where a header has it and the size byte is at least 12.</summary>
    public static bool LooksLikeOne(ReadOnlySpan<byte> bytes) =>
        bytes.Length >= FitConstants.ShortHeaderSize
        && bytes[0] >= FitConstants.ShortHeaderSize
        && bytes.Slice(FitConstants.SignatureOffset, FitConstants.Signature.Length).SequenceEqual(FitConstants.Signature);
}
