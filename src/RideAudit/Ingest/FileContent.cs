using System.Collections.Immutable;
using RideAudit.Rides;

namespace RideAudit.Ingest;

/// <summary>What one file gave; a file inside an archive is one of its own.</summary>
internal sealed record FileContent
{
    /// <summary>The name it is shown under.</summary>
    public required string File { get; init; }

    public ImmutableArray<Recording> Recordings { get; init; } = [];

    public ImmutableArray<LoggedRide> LoggedRides { get; init; } = [];

    public ImmutableArray<FileNotice> Notices { get; init; } = [];

    /// <summary>Of the unpacked bytes: tells the same file under two names.</summary>
    public UInt128 Hash { get; init; }

    public bool HoldsRides => !Recordings.IsEmpty || !LoggedRides.IsEmpty;

    public static FileContent Nothing(string file) => new() { File = file };

    public static FileContent Unusable(string file, string problem, string sentence) =>
        new() { File = file, Notices = [new FileNotice(file, problem, null, sentence, true)] };
}
