using System.Collections.Immutable;
using System.Text.Json.Serialization;
using RideAudit.Document.Converters;

namespace RideAudit.Document;

/// <summary>What the plan tables lay out for a week.</summary>
public sealed record PlannedWeekEntry
{
    /// <summary>Planned hours: the sum of the sessions’ minutes on days that are not out. They stand for the weekly hours in every rule.</summary>
    [JsonConverter(typeof(Rounded.To2))]
    public required double Hours { get; init; }

    /// <summary>Planned training stress, points; sessions of unknown stress left out.</summary>
    [JsonConverter(typeof(Rounded.To1))]
    public required double Stress { get; init; }

    /// <summary>The sessions by date, rest days included.</summary>
    public required ImmutableArray<PlannedSessionEntry> Sessions { get; init; }

    /// <summary>Rules that the week would break ridden exactly as it is planned, in the order of the method.</summary>
    public ImmutableArray<string> Breaks { get; init; } = [];

    /// <summary>The same in words, and that moving sessions within the rules is no fault; null where there is nothing to say.</summary>
    public string? Sentence { get; init; }
}
