using System.Collections.Immutable;
using NodaTime;

namespace RideAudit.Rules;

/// <summary>One place in the week where a rule was looked at and found wanting (or worth naming).</summary>
public sealed record Occurrence
{
    /// <summary>This occurrence's own verdict.</summary>
    public required Verdict Verdict { get; init; }

    /// <summary>The days it is about.</summary>
    public ImmutableArray<LocalDate> Dates { get; init; } = [];

    /// <summary>The rides it is about, by file.</summary>
    public ImmutableArray<string> Rides { get; init; } = [];

    /// <summary>Its numbers.</summary>
    public ImmutableArray<NamedNumber> Numbers { get; init; } = [];
}
