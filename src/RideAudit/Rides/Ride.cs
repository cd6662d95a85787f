using System.Collections.Immutable;
using NodaTime;
using RideAudit.Units;

namespace RideAudit.Rides;

/// <summary>One recording, or several whose gaps are at most an hour: warm-up, race and cool-down are one ride.</summary>
public sealed record Ride
{
    /// <summary>The first recording's name.</summary>
    public required string File { get; init; }

    /// <summary>All its recordings in order.</summary>
    public required ImmutableArray<string> Parts { get; init; }

    /// <summary>Local start.</summary>
    public required OffsetDateTime StartsAt { get; init; }

    /// <summary>What was ridden.</summary>
    public required RideSport Sport { get; init; }

    /// <summary>The samples of all parts, the gaps between them being pauses.</summary>
    public required SampleGrid Grid { get; init; }

    /// <summary>Timer time, s.</summary>
    public required double TimerSeconds { get; init; }

    /// <summary>Time on the clock, s.</summary>
    public required double ElapsedSeconds { get; init; }

    /// <summary>The first stored threshold power among the parts; null without one.</summary>
    public Watts? StoredThreshold { get; init; }

    /// <summary>Session rating, 0 to 10; null without one.</summary>
    public double? Rating { get; init; }

    /// <summary>What the rider or coach says it was, from the ride log; null where nobody says. It comes before what the samples say.</summary>
    public RideKind? GivenKind { get; init; }

    /// <summary>What the ride log notes about it, as written; null without a note.</summary>
    public string? Note { get; init; }

    /// <summary>What the ride log says of a ride without recording; null otherwise.</summary>
    public LoggedFigures? Logged { get; init; }

    /// <summary>Plain sentences about its data.</summary>
    public ImmutableArray<string> Remarks { get; init; } = [];

    /// <summary>The local day it belongs to.</summary>
    public LocalDate Date => StartsAt.Date;
}
