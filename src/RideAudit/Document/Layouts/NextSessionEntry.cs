using System.Text.Json.Serialization;
using RideAudit.Document.Converters;
using RideAudit.Plan;
using RideAudit.Plan.Blocks;
using RideAudit.Plan.Table;

namespace RideAudit.Document.Layouts;

/// <summary>One session of a week to come.</summary>
public sealed record NextSessionEntry
{
    /// <summary>What it is meant to be.</summary>
    public required PlannedKind Kind { get; init; }

    /// <summary>Its name; null for one without.</summary>
    public required string? Session { get; init; }

    /// <summary>Timer time, min; 0 for an event of unknown length.</summary>
    public required int Minutes { get; init; }

    /// <summary>The least of its range, min: every rule that the week keeps it keeps with this as well.</summary>
    public required int MinutesFrom { get; init; }

    /// <summary>The most of its range, min.</summary>
    public required int MinutesTo { get; init; }

    /// <summary>Training stress to expect, points; null when nothing says.</summary>
    [JsonConverter(typeof(Rounded.To0))]
    public required double? ExpectedStress { get; init; }

    /// <summary>What to ride, fitted to its minutes, in the grammar of docs/plan.md; null where only its length is known.</summary>
    [JsonConverter(typeof(SessionBlocksJson))]
    public required SessionBlocks? Blocks { get; init; }

    /// <summary>What to ride in words, told in what the rider has.</summary>
    public required string Sentence { get; init; }

    /// <summary>It stands in the rider file or in the plan table, and was not laid out.</summary>
    public bool Stands { get; init; }

    /// <summary>What it is called in a word: <c>test</c>, <c>openers</c>; null where its kind says it.</summary>
    [JsonIgnore]
    public string? CalledFor { get; init; }

    /// <summary>The row of the plan table it was read from; null where it was laid out.</summary>
    [JsonIgnore]
    public PlannedSession? Row { get; init; }
}
