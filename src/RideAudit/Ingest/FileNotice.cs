using System.Collections.Immutable;

namespace RideAudit.Ingest;

/// <summary>What happened to one file.</summary>
/// <param name="File">Path under the folder with <c>/</c>.</param>
/// <param name="Problem">One or two words in lower case, the same for all files with that problem.</param>
/// <param name="Kept">What was kept; null when nothing had to be given up, or nothing was kept.</param>
/// <param name="Sentence">One plain sentence: what, and what to do.</param>
/// <param name="Unusable">True when the file could not be used at all.</param>
public sealed record FileNotice(string File, string Problem, string? Kept, string Sentence, bool Unusable)
{
    /// <summary>How many files it counts without naming them: <see cref="File"/> then says so in words. 0 when it is about the one file.</summary>
    public int OtherFiles { get; init; }

    /// <summary>The whole of it in one line.</summary>
    public string Line => OtherFiles > 0 ? Sentence : $"{File}: {Sentence}";

    /// <summary>The first row of a CSV file whose columns were not understood, as it is written; empty for every other notice.</summary>
    public ImmutableArray<string> Headers { get; init; } = [];
}
