namespace RideAudit.Fit.Protocol;

/// <summary>One field of a definition with its own place in the message, so that no field can move another.</summary>
internal readonly record struct FieldSlot(byte Number, byte Size, byte TypeCode, FitBaseType Type, bool IsUsable, int Offset)
{
    public int ElementSize => FitBaseTypes.SizeOf(Type);

    public int Elements => IsUsable ? Size / ElementSize : 0;
}
