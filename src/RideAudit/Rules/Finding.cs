using System.Collections.Immutable;
using System.Text.Json.Serialization;
using RideAudit.Plan;

namespace RideAudit.Rules;

/// <summary>What one rule says of one week.</summary>
public sealed record Finding
{
    /// <summary>The rule's id, such as <c>hard-day-spacing</c>.</summary>
    public required string Rule { get; init; }

    /// <summary>The rule's name, such as <c>Hard day spacing</c>.</summary>
    [JsonIgnore]
    public string Name { get; init; } = "";

    /// <summary>The worst of the occurrences' verdicts, or the rule's own.</summary>
    public required Verdict Verdict { get; init; }

    /// <summary>One plain sentence with the numbers.</summary>
    public required string Sentence { get; init; }

    /// <summary>What would have kept the rule; null when it was kept or not judged.</summary>
    public string? WouldHaveKept { get; init; }

    /// <summary>Why the rule is not judged; null when it is.</summary>
    public string? Reason { get; init; }

    /// <summary>The coach has set the rule aside for the week, which is why it is not judged; null otherwise.</summary>
    public SetAsideRule? SetAside { get; init; }

    /// <summary>Weeks right before in which the same rule was met no better, 0 to 8; 0 when it was kept or not judged.</summary>
    public int WeeksInARow { get; init; }

    /// <summary>The limits it was judged against.</summary>
    public ImmutableArray<NamedNumber> Limits { get; init; } = [];

    /// <summary>Where in the week.</summary>
    public ImmutableArray<Occurrence> Occurrences { get; init; } = [];

    /// <summary>What the rule rests on.</summary>
    public required Evidence Evidence { get; init; }

    /// <summary>The source, or "common practice, no source".</summary>
    public required string Source { get; init; }

    /// <summary>The source by author and year, for a page that has no room for it in full; null where it is short as it is.</summary>
    [JsonIgnore]
    public string? SourceInShort { get; init; }

    /// <summary>What to do about it, one short sentence; null when it was kept or not judged, and where another finding asks for the same.</summary>
    [JsonIgnore]
    public string? Advice { get; init; }

    /// <summary>The finding as a part of a headline; null when it was kept or not judged.</summary>
    [JsonIgnore]
    public string? Headline { get; init; }

    /// <summary>What held, a few words; null when it was not kept, and where there was nothing to hold.</summary>
    [JsonIgnore]
    public string? Held { get; init; }

    /// <summary>Its figure of the week in the fewest words, for a row of a table; null when it was not kept, and where the verdict says it all.</summary>
    [JsonIgnore]
    public string? Figure { get; init; }

    /// <summary>Its place among the week's findings.</summary>
    [JsonIgnore]
    public Standing Standing { get; init; } = new();

    /// <summary>Spans between hard rides that the rule looks at, in order.</summary>
    [JsonIgnore]
    public ImmutableArray<HardSpan> Spans { get; init; } = [];
}
