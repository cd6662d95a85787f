using NodaTime;
using RideAudit.Plan.Blocks;

namespace RideAudit.Plan.Table;

/// <summary>One row of a plan table.</summary>
public sealed record PlannedSession
{
    /// <summary>Its day.</summary>
    public required LocalDate Date { get; init; }

    /// <summary>What it is meant to be.</summary>
    public required PlannedKind Kind { get; init; }

    /// <summary>Its length, whole min; null for rest, and for an event of unknown length.</summary>
    public int? Minutes { get; init; }

    /// <summary>A short name; null without one.</summary>
    public string? Session { get; init; }

    /// <summary>What to do, in words; null without them.</summary>
    public string? Note { get; init; }

    /// <summary>Planned stress, points; null: told from kind, minutes and blocks.</summary>
    public double? Stress { get; init; }

    /// <summary>What to ride; null where the row names no blocks.</summary>
    public SessionBlocks? Blocks { get; init; }

    /// <summary>What its day is excepted for, as in the rider file; null for an ordinary day. The day of an <see cref="PlannedKind.Event"/> is an event without it.</summary>
    public ExceptionKind? Exception { get; init; }

    /// <summary>The row was written by this program and not touched by hand since: it may be replaced.</summary>
    public bool MadeHere { get; init; }

    /// <summary>A day without riding.</summary>
    public bool IsRest => Kind == PlannedKind.Rest;
}
