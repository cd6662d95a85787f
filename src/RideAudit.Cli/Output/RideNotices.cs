using RideAudit.Document;
using RideAudit.Ingest;

namespace RideAudit.Cli.Output;

/// <summary>What happened to files that gave a ride all the same: cut short, joined, repaired.</summary>
internal static class RideNotices
{
    /// <summary>The notices about rides that are shown, those of files that gave none left out.</summary>
    public static IReadOnlyList<FileNotice> Of(FolderContent content, IReadOnlyList<RideEntry> rides) =>
        [.. content.Notices.Where(n => !n.Unusable && n.Kept is not null && rides.Any(r => IsAbout(n.File, r)))];

    /// <summary>A notice about a file is about the ride that it gave, or that it gave a part of.</summary>
    public static bool IsAbout(string? file, RideEntry ride) =>
        file is not null && (ride.File == file || ride.File.StartsWith(file + "#", StringComparison.Ordinal)
            || (!ride.Parts.IsDefaultOrEmpty && ride.Parts.Contains(file)));
}
