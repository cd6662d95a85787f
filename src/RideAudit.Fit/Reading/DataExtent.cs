using System.Buffers.Binary;
using RideAudit.Fit.Protocol;

namespace RideAudit.Fit.Reading;

/// <summary>Where the data of a part end, judged from its header, the file's length and the CRC.</summary>
/// <param name="End">Offset of the byte after the last message.</param>
/// <param name="Crc">What the closing CRC says; null if it can only be told after reading.</param>
/// <param name="Fault">What is wrong with the data size; null if nothing.</param>
internal readonly record struct DataExtent(int End, FitCrcState? Crc, FitFault? Fault)
{
    /// <summary>True if the end is only assumed, so that the last two bytes may turn out to be the CRC.</summary>
    public bool IsAssumed(int fileLength) => Crc is null || (Crc == FitCrcState.Missing && End == fileLength);

    public static DataExtent Find(ReadOnlySpan<byte> bytes, int start, FitHeader header, bool mayLookBeyond)
    {
        var dataStart = start + header.Size;
        var declaredEnd = (long)dataStart + header.DataSize;
        if (header.DataSize == 0 && dataStart + FitConstants.CrcSize < bytes.Length)
            return Unknown(bytes, start, FitFaultCode.DataSizeZero, "the header says 0 bytes of data: the recording was never closed; read to the end of the file");
        if (declaredEnd > bytes.Length)
            return Unknown(bytes, start, FitFaultCode.DataSizeTooLarge, $"the header says {header.DataSize} bytes of data, the file has {bytes.Length - dataStart}");
        var end = (int)declaredEnd;
        if (end + FitConstants.CrcSize > bytes.Length)
            return new DataExtent(end, FitCrcState.Missing, null);
        var crc = Test(bytes, start, end);
        if (crc == FitCrcState.Differs && mayLookBeyond && GoesOn(bytes, dataStart, end))
            return Unknown(bytes, start, FitFaultCode.DataSizeTooSmall, $"the header says {header.DataSize} bytes of data, but messages go on behind them");
        return new DataExtent(end, crc, null);
    }

    /// <summary>Tests the CRC of a part against the two bytes behind its data.</summary>
    public static FitCrcState Test(ReadOnlySpan<byte> bytes, int start, int end)
    {
        if (end + FitConstants.CrcSize > bytes.Length)
            return FitCrcState.Missing;
        var stored = BinaryPrimitives.ReadUInt16LittleEndian(bytes[end..]);
        return FitCrc.Compute(bytes[start..end]) == stored ? FitCrcState.Agrees : FitCrcState.Differs;
    }

    private static DataExtent Unknown(ReadOnlySpan<byte> bytes, int start, FitFaultCode code, string detail) =>
        new(bytes.Length, null, new FitFault(start + 4, code, FitFaultAction.Salvage, detail));

    private static bool GoesOn(ReadOnlySpan<byte> bytes, int dataStart, int end)
    {
        var behind = end + FitConstants.CrcSize;
        if (behind >= bytes.Length || FitHeader.LooksLikeOne(bytes[behind..]))
            return false;
        Span<StreamWalker.LocalShape> locals = stackalloc StreamWalker.LocalShape[FitConstants.LocalTypes];
        locals.Fill(StreamWalker.LocalShape.Undefined);
        StreamWalker walker = new(bytes, bytes.Length, locals, TimeWindow.Any);
        walker.Walk(dataStart, int.MaxValue);
        return walker.ReachedEnd;
    }
}
