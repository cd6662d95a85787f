namespace RideAudit.Review;

/// <summary>What came of one rider's folder.</summary>
/// <param name="Folder">The folder's name under the roster's.</param>
/// <param name="Review">The review; null when there is none.</param>
/// <param name="Problem">Why there is none, one line; null when there is one.</param>
/// <param name="ReviewFile">The review's file beside the overview; null without one.</param>
public sealed record RosterInput(string Folder, ReviewDocument? Review, string? Problem, string? ReviewFile);
