namespace RideAudit.Fit.Protocol;

/// <summary>One developer field of a definition; what it means is looked up when data are read.</summary>
internal readonly record struct DeveloperSlot(byte Number, byte Size, byte Index, int Offset)
{
    public int Key => (Index << 8) | Number;
}
