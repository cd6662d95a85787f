namespace RideAudit.Fit.Writing;

/// <summary>What a value to be written is.</summary>
internal enum FitValueKind : byte
{
    Missing,
    Integer,
    Real,
    Bytes,
}
