namespace RideAudit.Document;

/// <summary>The rider of a review: a label, no other personal detail.</summary>
public sealed record RiderEntry
{
    /// <summary>As the rider file says.</summary>
    public required string Label { get; init; }

    /// <summary><c>low</c>, <c>middle</c>, <c>high</c>, <c>very high</c>; null without planned hours.</summary>
    public required string? Tier { get; init; }

    /// <summary><c>new</c>, <c>regular</c>, <c>racing</c>.</summary>
    public required string Experience { get; init; }

    /// <summary>IANA name.</summary>
    public required string TimeZone { get; init; }

    /// <summary>Planned hours, h; null when neither given nor derivable.</summary>
    public double? PlannedHours { get; init; }

    /// <summary>Planned hours are the mean of the weeks before.</summary>
    public bool PlannedHoursFromHistory { get; init; }
}
