using NodaTime;
using RideAudit.Plan;

namespace RideAudit.Ingest;

/// <summary>Reads every ride file under a folder. Opens for reading only; one bad file never stops the rest.</summary>
public static class FolderReader
{
    /// <summary>Reads a folder at any depth.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="rider">For the time zone and the CSV column map.</param>
    /// <param name="machineZone">Used when the rider file names no zone.</param>
    /// <param name="progress">Told after each file; may be null.</param>
    /// <param name="cancel">Stops between files.</param>
    /// <exception cref="DirectoryNotFoundException">There is no such folder.</exception>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    public static FolderContent Read(
        string folder, Rider rider, DateTimeZone machineZone, IProgress<IngestProgress>? progress, CancellationToken cancel) =>
        throw new NotImplementedException();
}
