using RideAudit.Document;

namespace RideAudit.Review;

/// <summary>What came of one rider's folder.</summary>
/// <param name="Folder">The folder's name under the roster's.</param>
/// <param name="Review">The review; null when there is none.</param>
/// <param name="Problem">Why there is none, one line; null when there is one.</param>
/// <param name="ReviewFile">The review's file beside the overview; null without one.</param>
public sealed record RosterInput(string Folder, ReviewDocument? Review, string? Problem, string? ReviewFile)
{
    /// <summary>The folder has a rider file, whose label is the rider's; without one the folder's name is.</summary>
    public bool HasRiderFile { get; init; } = true;
}
