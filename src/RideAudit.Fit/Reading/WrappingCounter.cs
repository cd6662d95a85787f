namespace RideAudit.Fit.Reading;

/// <summary>A counter of few bits that starts over when it is full; the first value seen is where it begins.</summary>
internal struct WrappingCounter(int bits)
{
    private readonly uint mask = (uint)((1UL << bits) - 1);
    private uint last;
    private bool hasValue;

    public long Total { get; private set; }

    public long Advance(uint value)
    {
        Total = hasValue ? Total + ((value - last) & mask) : value;
        last = value;
        hasValue = true;
        return Total;
    }
}
