using System.Collections.Immutable;
using RideAudit.Plan.Table;
using RideAudit.Rides;

namespace RideAudit.Ingest;

/// <summary>What one file gave; a file inside an archive is one of its own.</summary>
internal sealed record FileContent
{
    /// <summary>The name it is shown under.</summary>
    public required string File { get; init; }

    public ImmutableArray<Recording> Recordings { get; init; } = [];

    public ImmutableArray<LoggedRide> LoggedRides { get; init; } = [];

    /// <summary>The plan table that the file is; null for every other file.</summary>
    public PlanSheet? Plan { get; init; }

    public ImmutableArray<FileNotice> Notices { get; init; } = [];

    /// <summary>The rider file or a note.</summary>
    public ImmutableArray<NamedText> Texts { get; init; } = [];

    /// <summary>Of the unpacked bytes: tells the same file under two names.</summary>
    public UInt128 Hash { get; init; }

    /// <summary>Reads the same bytes for another rider; null where that gives the same.</summary>
    public Func<IngestContext, FileContent>? Again { get; init; }

    /// <summary>Rides or a plan.</summary>
    public bool IsOfUse => !Recordings.IsEmpty || !LoggedRides.IsEmpty || Plan is not null;

    /// <summary>What the file gives for a rider that was not known when it was read.</summary>
    public FileContent ReadFor(IngestContext context) => Again is null ? this : Again(context.ForNextFile()) with { Again = null };

    /// <summary>Adds to what it gives; what it gives for another rider gets the same.</summary>
    public FileContent With(Func<FileContent, FileContent> added) =>
        added(this) with { Again = Again is { } again ? context => added(again(context)) : null };

    public static FileContent Nothing(string file) => new() { File = file };

    public static FileContent Unusable(string file, string problem, string sentence) =>
        Unusable(file, problem, [], sentence);

    /// <param name="file">The name it is shown under.</param>
    /// <param name="problem">One or two words.</param>
    /// <param name="headers">The first row of a CSV file whose columns were not understood.</param>
    /// <param name="sentence">What, and what to do.</param>
    public static FileContent Unusable(string file, string problem, ImmutableArray<string> headers, string sentence) =>
        new() { File = file, Notices = [new FileNotice(file, problem, null, sentence, true) { Headers = headers }] };
}
