using System.Collections.Immutable;
using NodaTime;

namespace RideAudit.Document;

/// <summary>One rider of a roster.</summary>
public sealed record RosterEntry
{
    /// <summary>The rider's folder, its name under the roster's.</summary>
    public required string Folder { get; init; }

    /// <summary>The rider's label; the folder's name where there is no review.</summary>
    public required string Label { get; init; }

    /// <summary><c>broken</c>, <c>no review</c>, <c>watch</c>, <c>kept</c>.</summary>
    public required string Need { get; init; }

    /// <summary>Why the rider stands here, one line.</summary>
    public required string Why { get; init; }

    /// <summary>First day of the reviewed week; null without a review.</summary>
    public LocalDate? WeekStartsOn { get; init; }

    /// <summary>Rules broken, by id, in the order of the method.</summary>
    public ImmutableArray<string> Broken { get; init; } = [];

    /// <summary>Rules to watch, by id, in the order of the method.</summary>
    public ImmutableArray<string> Watch { get; init; } = [];

    /// <summary>Rules not judged; null without a review.</summary>
    public int? NotJudged { get; init; }

    /// <summary>Hours ridden, two decimals; null without a review.</summary>
    public double? Hours { get; init; }

    /// <summary>Planned hours, two decimals; null when unknown.</summary>
    public double? PlannedHours { get; init; }

    /// <summary>Training stress, points, one decimal; null without a review.</summary>
    public double? Stress { get; init; }

    /// <summary>Low share by time, 0 to 1; null without banded time.</summary>
    public double? LowShare { get; init; }

    /// <summary>The week's change in chronic load, one decimal; null without a review.</summary>
    public double? RampPerWeek { get; init; }

    /// <summary>Files that could not be used; null without a review.</summary>
    public int? FilesNotUsed { get; init; }

    /// <summary>The review's file beside the overview; null without one.</summary>
    public string? ReviewFile { get; init; }

    /// <summary>What the week is excepted for: <c>lighter</c>, <c>event</c> or <c>away</c>; null for an ordinary week and without a review.</summary>
    public string? Exception { get; init; }
}
