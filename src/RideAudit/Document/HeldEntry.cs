using System.Collections.Immutable;
using NodaTime;
using RideAudit.Held;
using RideAudit.Plan;

namespace RideAudit.Document;

/// <summary>A planned session and what became of it, or a ride that nobody planned.</summary>
public sealed record HeldEntry
{
    /// <summary>The session; null for an added ride.</summary>
    public required PlannedPart? Planned { get; init; }

    /// <summary>The rides that were ridden for it, by file.</summary>
    public required ImmutableArray<string> Rides { get; init; }

    /// <summary>The day it was ridden on; null when it was not.</summary>
    public required LocalDate? RiddenOn { get; init; }

    /// <summary>What became of it; at least one.</summary>
    public required ImmutableArray<HeldOutcome> Outcomes { get; init; }

    /// <summary>Rules that are not kept for what was changed, in the order of the method; empty where the change is as good as the plan.</summary>
    public ImmutableArray<string> Against { get; init; } = [];

    /// <summary>The repeats of the session beside what was ridden; empty for an easy session, for one told in heart rate or by feel, and where no power was ridden.</summary>
    public ImmutableArray<RepeatEntry> Repeats { get; init; } = [];

    /// <summary><see cref="Repeats"/> in one sentence; null without any.</summary>
    public string? RepeatsSentence { get; init; }

    /// <summary>The same in one or two sentences.</summary>
    public required string Sentence { get; init; }

    /// <summary>The session in short.</summary>
    /// <param name="Date">Its day.</param>
    /// <param name="Kind">What it was meant to be.</param>
    /// <param name="Minutes">Its length, min; null for rest, and for an event of unknown length.</param>
    /// <param name="Session">Its short name; null without one.</param>
    public sealed record PlannedPart(LocalDate Date, PlannedKind Kind, int? Minutes, string? Session);
}
