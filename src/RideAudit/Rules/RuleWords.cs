using System.Collections.Immutable;

namespace RideAudit.Rules;

/// <summary>A judged week in a rule's own words, each form made from the rule's unrounded values.</summary>
internal sealed record RuleWords
{
    /// <summary>One plain sentence with the numbers.</summary>
    public required string Sentence { get; init; }

    /// <summary>What would have kept it; null when it was kept.</summary>
    public string? WouldHaveKept { get; init; }

    /// <summary>What to do about it, one short sentence in the imperative; null where another rule asks for the same.</summary>
    public string? Advice { get; init; }

    /// <summary>The finding as a part of the week's headline, without a capital.</summary>
    public string? Headline { get; init; }

    /// <summary>What held, a few words; null where there was nothing to hold.</summary>
    public string? Held { get; init; }

    /// <summary>Its figure of a kept week in the fewest words, for a row of a table; null where the verdict says it all.</summary>
    public string? Figure { get; init; }

    /// <summary>Nothing else that was missed in the week says as much.</summary>
    public bool Leads { get; init; }

    /// <summary>Where in the week.</summary>
    public ImmutableArray<Occurrence> Occurrences { get; init; } = [];
}
