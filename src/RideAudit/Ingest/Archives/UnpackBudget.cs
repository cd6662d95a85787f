namespace RideAudit.Ingest.Archives;

/// <summary>Counts what an archive unpacks to. Used by one thread.</summary>
internal sealed class UnpackBudget(ReadLimits limits)
{
    private long _bytes = limits.LargestArchiveBytes;
    private int _entries = limits.MostEntries;

    public bool IsSpent => _bytes <= 0 || _entries <= 0;

    public bool Enter() => _entries-- > 0;

    public void Spend(long bytes) => _bytes -= bytes;
}
