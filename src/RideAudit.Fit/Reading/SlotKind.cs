namespace RideAudit.Fit.Reading;

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
