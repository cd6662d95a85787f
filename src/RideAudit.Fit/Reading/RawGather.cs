using System.Buffers.Binary;

namespace RideAudit.Fit.Reading;

/// <summary>Collects one field of every message of a block as raw numbers side by side.</summary>
internal static class RawGather
{
    public static void Gather(RecordSlot.SlotKind kind, in RecordBlock block, int offset, Span<uint> raw)
    {
        switch (kind)
        {
            case RecordSlot.SlotKind.Byte: Bytes(in block, offset, raw); break;
            case RecordSlot.SlotKind.Word: Words(in block, offset, raw); break;
            case RecordSlot.SlotKind.Long: Longs(in block, offset, raw); break;
            case RecordSlot.SlotKind.BigWord: BigWords(in block, offset, raw); break;
            case RecordSlot.SlotKind.BigLong: BigLongs(in block, offset, raw); break;
        }
    }

    private static void Bytes(in RecordBlock block, int offset, Span<uint> raw)
    {
        var bytes = block.Bytes;
        for (int i = 0, at = offset + 1; i < raw.Length; i++, at += block.Stride)
            raw[i] = bytes[at];
    }

    private static void Words(in RecordBlock block, int offset, Span<uint> raw)
    {
        var bytes = block.Bytes;
        for (int i = 0, at = offset + 1; i < raw.Length; i++, at += block.Stride)
            raw[i] = BinaryPrimitives.ReadUInt16LittleEndian(bytes[at..]);
    }

    private static void Longs(in RecordBlock block, int offset, Span<uint> raw)
    {
        var bytes = block.Bytes;
        for (int i = 0, at = offset + 1; i < raw.Length; i++, at += block.Stride)
            raw[i] = BinaryPrimitives.ReadUInt32LittleEndian(bytes[at..]);
    }

    private static void BigWords(in RecordBlock block, int offset, Span<uint> raw)
    {
        var bytes = block.Bytes;
        for (int i = 0, at = offset + 1; i < raw.Length; i++, at += block.Stride)
            raw[i] = BinaryPrimitives.ReadUInt16BigEndian(bytes[at..]);
    }

    private static void BigLongs(in RecordBlock block, int offset, Span<uint> raw)
    {
        var bytes = block.Bytes;
        for (int i = 0, at = offset + 1; i < raw.Length; i++, at += block.Stride)
            raw[i] = BinaryPrimitives.ReadUInt32BigEndian(bytes[at..]);
    }
}
