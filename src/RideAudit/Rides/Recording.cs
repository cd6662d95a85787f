using System.Collections.Immutable;
using NodaTime;
using RideAudit.Units;

namespace RideAudit.Rides;

/// <summary>One activity in one part of one file.</summary>
public sealed record Recording
{
    /// <summary>Path under the folder with <c>/</c>; <c>#2</c> is appended for the second activity of a file.</summary>
    public required string File { get; init; }

    /// <summary>What was done.</summary>
    public required RideSport Sport { get; init; }

    /// <summary>The first timer second.</summary>
    public required Instant Start { get; init; }

    /// <summary>Offset from UTC at the start.</summary>
    public required Offset Offset { get; init; }

    /// <summary>Where the offset came from.</summary>
    public OffsetSource OffsetFrom { get; init; }

    /// <summary>The samples; empty for an activity that is not cycling.</summary>
    public required SampleGrid Grid { get; init; }

    /// <summary>Timer time, s.</summary>
    public required double TimerSeconds { get; init; }

    /// <summary>Time on the clock, s.</summary>
    public required double ElapsedSeconds { get; init; }

    /// <summary>The recording's own threshold power; null without one.</summary>
    public Watts? StoredThreshold { get; init; }

    /// <summary>The recording's own session rating, 0 to 10; null without one.</summary>
    public double? StoredRating { get; init; }

    /// <summary>Plain sentences about its data.</summary>
    public ImmutableArray<string> Remarks { get; init; } = [];

    /// <summary>The moment after the last second.</summary>
    public Instant End => Start + Duration.FromMilliseconds((long)(ElapsedSeconds * 1000));

    /// <summary>The local start.</summary>
    public OffsetDateTime StartsAt => Start.WithOffset(Offset);

    /// <summary>Seconds with power over timer seconds, 0 to 1; 0 for power that is 0 throughout.</summary>
    public double PowerCoverage => TimerSeconds > 0 && SampleGrid.Measures(Grid.PowerW)
        ? Math.Min(1, SampleGrid.CountValues(Grid.PowerW) / TimerSeconds)
        : 0;
}
