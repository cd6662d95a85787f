using System.Collections.Immutable;

namespace RideAudit.Document;

/// <summary>Page one in words.</summary>
public sealed record SummaryEntry
{
    /// <summary>The week's verdict in one sentence.</summary>
    public required string Headline { get; init; }

    /// <summary>Counts of rules and the smallest change, one or two sentences.</summary>
    public required string Subline { get; init; }

    /// <summary>What of the judged week and its look-back lost data or could not be used, one sentence; the subline ends with it. Null without doubt.</summary>
    public string? DataLine { get; init; }

    /// <summary>Rules broken.</summary>
    public required int Broken { get; init; }

    /// <summary>Rules to watch.</summary>
    public required int Watch { get; init; }

    /// <summary>Rules kept.</summary>
    public required int Kept { get; init; }

    /// <summary>Rules not judged.</summary>
    public required int NotJudged { get; init; }

    /// <summary>At most three things to change, most serious first.</summary>
    public required ImmutableArray<ChangeAdvice> ToChange { get; init; }

    /// <summary>What held, a few words each.</summary>
    public required ImmutableArray<string> Held { get; init; }

    /// <summary>The split in words: by time against by session and why they differ, with the structure inside a sentence.</summary>
    public required string SplitSentence { get; init; }

    /// <summary>The cautions every reader sees, in order.</summary>
    public required ImmutableArray<string> Cautions { get; init; }
}
