using System.Collections.Immutable;
using RideAudit.Rides;

namespace RideAudit.Ingest;

/// <summary>What one file gave.</summary>
internal sealed record FileContent
{
    public ImmutableArray<Recording> Recordings { get; init; } = [];

    public ImmutableArray<LoggedRide> LoggedRides { get; init; } = [];

    public ImmutableArray<FileNotice> Notices { get; init; } = [];

    public static FileContent Nothing { get; } = new();

    public static FileContent Unusable(string file, string problem, string sentence) =>
        new() { Notices = [new FileNotice(file, problem, null, sentence, true)] };

    public static FileContent Combine(IEnumerable<FileContent> contents)
    {
        var all = contents.ToArray();
        return new FileContent
        {
            Recordings = [.. all.SelectMany(c => c.Recordings)],
            LoggedRides = [.. all.SelectMany(c => c.LoggedRides)],
            Notices = [.. all.SelectMany(c => c.Notices)],
        };
    }
}
