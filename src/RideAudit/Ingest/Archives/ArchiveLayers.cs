namespace RideAudit.Ingest.Archives;

/// <summary>The archives around a file: how deep, and how much they may still unpack to together.</summary>
/// <param name="Zips">Zip archives around it, 0 for a file of the folder.</param>
/// <param name="Gzips">Gzip streams around it, inside the innermost zip.</param>
/// <param name="Budget">What is left of the outermost archive's allowance.</param>
internal readonly record struct ArchiveLayers(int Zips, int Gzips, ArchiveLayers.UnpackBudget Budget)
{
    /// <summary>An archive inside an archive is read, one inside that is not.</summary>
    public const int MostZips = 2;

    /// <summary>Some servers pack once more on the way.</summary>
    public const int MostGzips = 2;

    public static ArchiveLayers None(ReadLimits limits) => new(0, 0, new UnpackBudget(limits));

    /// <summary>Counts what an archive unpacks to. Used by one thread.</summary>
    internal sealed class UnpackBudget(ReadLimits limits)
    {
        private long _bytes = limits.LargestArchiveBytes;
        private int _entries = limits.MostEntries;

        public bool IsSpent => _bytes <= 0 || _entries <= 0;

        public bool Enter() => _entries-- > 0;

        public void Spend(long bytes) => _bytes -= bytes;
    }
}
