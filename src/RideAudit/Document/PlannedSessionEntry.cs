using System.Text.Json.Serialization;
using NodaTime;
using RideAudit.Document.Converters;
using RideAudit.Plan;

namespace RideAudit.Document;

/// <summary>One row of a plan table.</summary>
public sealed record PlannedSessionEntry
{
    /// <summary>Its day.</summary>
    public required LocalDate Date { get; init; }

    /// <summary>What it is meant to be.</summary>
    public required PlannedKind Kind { get; init; }

    /// <summary>Its length, min; null for rest, and for an event of unknown length.</summary>
    public required int? Minutes { get; init; }

    /// <summary>Its short name; null without one.</summary>
    public required string? Session { get; init; }

    /// <summary>What to do, in the plan’s words; null without them.</summary>
    public required string? Note { get; init; }

    /// <summary>Planned training stress, points: the row’s own, else that of its blocks, else from kind and minutes; null for an event of unknown length.</summary>
    [JsonConverter(typeof(Rounded.To1))]
    public double? Stress { get; init; }

    /// <summary>What to ride, in the words of blocks; null where neither the row nor its session’s name says.</summary>
    public string? Blocks { get; init; }

    /// <summary>Intensity ratio that stress and length come to; null without either.</summary>
    [JsonIgnore]
    public double? IntensityRatio => Stress is { } stress && Minutes is > 0 and var minutes ? Math.Sqrt(stress / 100 / (minutes / 60.0)) : null;
}
