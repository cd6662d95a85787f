using RideAudit.Cli.Terminal;
using RideAudit.Ingest;

namespace RideAudit.Cli.Work;

/// <summary>Reads a folder with progress on a terminal.</summary>
internal static class FolderSource
{
    /// <summary>Reads a folder.</summary>
    /// <param name="shell">For progress, the machine's zone and Ctrl-C.</param>
    /// <param name="folder">The full path.</param>
    /// <param name="rider">The rider, whose notices join the folder's.</param>
    /// <param name="quiet">No progress.</param>
    public static FolderContent Read(Shell shell, string folder, RiderFound rider, bool quiet)
    {
        using var progress = shell.ShowsProgress && !quiet ? new ReadProgress(shell) : null;
        var content = FolderReader.Read(folder, rider.Rider, shell.Zone, progress, shell.Cancel);
        return content with { Notices = [.. rider.Notices, .. content.Notices] };
    }
}
