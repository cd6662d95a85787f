using System.Collections.Immutable;

namespace RideAudit.Ingest;

/// <summary>What a folder holds: recordings, logged rides, and everything that could not be used.</summary>
public sealed record FolderContent
{
    /// <summary>Files looked at.</summary>
    public required int FilesSeen { get; init; }

    /// <summary>Files that could not be used, repairs, duplicates.</summary>
    public required ImmutableArray<FileNotice> Notices { get; init; }
}
