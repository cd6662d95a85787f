namespace RideAudit.Ingest;

/// <summary>How much is read at most, so that neither a huge file nor a small one that unpacks without end takes the memory.</summary>
internal sealed record ReadLimits
{
    public static ReadLimits Default { get; } = new();

    /// <summary>One ride file, packed or unpacked, bytes. A day recorded every second takes 5 to 50 million as text, under 5 as FIT.</summary>
    public long LargestFileBytes { get; init; } = 64L << 20;

    /// <summary>From here on files are read one after another, whatever the number of threads, bytes.</summary>
    public long ReadAlone { get; init; } = 4L << 20;

    /// <summary>From here on memory is cleared before more of a file is taken into it, bytes.</summary>
    public long MakesRoom { get; init; } = 16L << 20;

    /// <summary>Rows of one CSV recording, records of one FIT file: eleven days of seconds.</summary>
    public const int MostRows = 1_000_000;

    /// <summary>All that one archive unpacks to, nested archives included, bytes.</summary>
    public long LargestArchiveBytes { get; init; } = 8L << 30;

    /// <summary>Entries of one archive, nested ones included.</summary>
    public int MostEntries { get; init; } = 200_000;
}
