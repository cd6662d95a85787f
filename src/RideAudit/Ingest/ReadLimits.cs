namespace RideAudit.Ingest;

/// <summary>How much is read at most, so that neither a huge file nor a small one that unpacks without end takes the memory.</summary>
internal sealed record ReadLimits
{
    public static ReadLimits Default { get; } = new();

    /// <summary>One ride file, packed or unpacked, bytes. A day recorded every second takes 5 to 50 million.</summary>
    public long LargestFileBytes { get; init; } = 256L << 20;

    /// <summary>All that one archive unpacks to, nested archives included, bytes.</summary>
    public long LargestArchiveBytes { get; init; } = 8L << 30;

    /// <summary>Entries of one archive, nested ones included.</summary>
    public int MostEntries { get; init; } = 200_000;
}
