using RideAudit.Fit.Messages;
using RideAudit.Fit.Protocol;

namespace RideAudit.Fit.Reading;

/// <summary>One field of a record that is kept: where it is, how it is read, which numbers are valid, where it goes.</summary>
internal readonly record struct RecordSlot(
    RecordSlot.SlotKind Kind,
    RecordColumn Column,
    int Offset,
    uint Lowest,
    uint ValidCount,
    double Scale,
    double Subtract,
    FitBaseType Type)
{
    public bool IsScaled => Scale != 1 || Subtract != 0;

    /// <summary>How the bytes of a record field are read.</summary>
    internal enum SlotKind : byte
    {
        Byte,
        Word,
        BigWord,
        Long,
        BigLong,
        General,
        CompressedSpeedDistance,
    }
}
