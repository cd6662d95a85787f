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

    /// <summary>Counts what a file unpacks to, and lets large ones in one after another. Used by one thread, and let go by it.</summary>
    internal sealed class UnpackBudget(ReadLimits limits) : IDisposable
    {
        private static readonly Lock OneLarge = new();
        private long _bytes = limits.LargestArchiveBytes;
        private int _entries = limits.MostEntries;
        private bool _hasRoom;

        public bool IsSpent => _bytes <= 0 || _entries <= 0;

        public bool Enter() => _entries-- > 0;

        public void Spend(long bytes) => _bytes -= bytes;

        /// <summary>Told of the size of what is kept in memory: waits where it is large until no other large file is read.</summary>
        public void Hold(long bytes)
        {
            if (bytes < limits.ReadAlone)
            {
                _hasRoom = false;
                return;
            }
            if (!OneLarge.IsHeldByCurrentThread)
                OneLarge.Enter();
            if (_hasRoom || bytes < limits.MakesRoom)
                return;
            // Arrays of this size lie uncollected for long: what the last large file left goes before the next one comes.
            GC.Collect();
            _hasRoom = true;
        }

        /// <summary>Lets the next large file in.</summary>
        public void Dispose()
        {
            if (OneLarge.IsHeldByCurrentThread)
                OneLarge.Exit();
        }
    }
}
