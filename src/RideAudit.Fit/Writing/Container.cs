using System.Buffers.Binary;
using RideAudit.Fit.Protocol;

namespace RideAudit.Fit.Writing;

/// <summary>Puts header and CRC around messages.</summary>
internal static class Container
{
    public static byte[] Wrap(ReadOnlySpan<byte> messages, FitWriterOptions options)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(options.HeaderSize, FitConstants.ShortHeaderSize, nameof(options));
        var file = new byte[options.HeaderSize + messages.Length + FitConstants.CrcSize];
        file[0] = options.HeaderSize;
        file[1] = options.ProtocolVersion;
        BinaryPrimitives.WriteUInt16LittleEndian(file.AsSpan(2), options.ProfileVersion);
        BinaryPrimitives.WriteUInt32LittleEndian(file.AsSpan(4), (uint)messages.Length);
        FitConstants.Signature.CopyTo(file.AsSpan(FitConstants.SignatureOffset));
        if (options.HeaderSize >= FitConstants.HeaderSize && options.HasHeaderCrc)
            BinaryPrimitives.WriteUInt16LittleEndian(file.AsSpan(FitConstants.HeaderCrcOffset), FitCrc.Compute(file.AsSpan(0, FitConstants.ShortHeaderSize)));
        messages.CopyTo(file.AsSpan(options.HeaderSize));
        BinaryPrimitives.WriteUInt16LittleEndian(file.AsSpan(file.Length - FitConstants.CrcSize), FitCrc.Compute(file.AsSpan(0, file.Length - FitConstants.CrcSize)));
        return file;
    }
}
