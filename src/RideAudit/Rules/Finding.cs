using System.Collections.Immutable;

namespace RideAudit.Rules;

/// <summary>What one rule says of one week.</summary>
public sealed record Finding
{
    /// <summary>The rule's id, such as <c>hard-day-spacing</c>.</summary>
    public required string Rule { get; init; }

    /// <summary>The worst of the occurrences' verdicts, or the rule's own.</summary>
    public required Verdict Verdict { get; init; }

    /// <summary>One plain sentence with the numbers.</summary>
    public required string Sentence { get; init; }

    /// <summary>What would have kept the rule; null when it was kept or not judged.</summary>
    public string? WouldHaveKept { get; init; }

    /// <summary>Why the rule is not judged; null when it is.</summary>
    public string? Reason { get; init; }

    /// <summary>The limits it was judged against.</summary>
    public ImmutableArray<NamedNumber> Limits { get; init; } = [];

    /// <summary>Where in the week.</summary>
    public ImmutableArray<Occurrence> Occurrences { get; init; } = [];

    /// <summary>What the rule rests on.</summary>
    public required Evidence Evidence { get; init; }

    /// <summary>The source, or "common practice, no source".</summary>
    public required string Source { get; init; }
}
