namespace RideAudit.Ingest.Archives;

/// <summary>The archives around a file: how deep, and how much they may still unpack to together.</summary>
/// <param name="Zips">Zip archives around it.</param>
/// <param name="Gzips">Gzip streams around it.</param>
/// <param name="Budget">What is left of the outermost archive's allowance.</param>
internal readonly record struct ArchiveLayers(int Zips, int Gzips, UnpackBudget Budget)
{
    /// <summary>An archive inside an archive is read, one inside that is not.</summary>
    public const int MostZips = 2;

    /// <summary>Some servers pack once more on the way.</summary>
    public const int MostGzips = 2;

    public static ArchiveLayers None(ReadLimits limits) => new(0, 0, new UnpackBudget(limits));
}
