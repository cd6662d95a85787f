namespace RideAudit.Report;

/// <summary>How the pages are laid out.</summary>
public sealed record PageOptions
{
    /// <summary>Paper size.</summary>
    public Paper Paper { get; init; } = Paper.A4;

    /// <summary>Leave blank ruled lines under the verdict when the review has no coach's note.</summary>
    public bool RoomForNotes { get; init; }

    /// <summary>Every ride's strip, every limit and the whole method after the three pages.</summary>
    public bool Appendix { get; init; }
}
