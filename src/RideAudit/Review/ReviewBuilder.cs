using RideAudit.Ingest;
using RideAudit.Plan;

namespace RideAudit.Review;

/// <summary>Turns what a folder holds into documents. Pure: the same input gives the same document.</summary>
public static class ReviewBuilder
{
    /// <summary>Reviews one week.</summary>
    /// <param name="folder">What the folder holds.</param>
    /// <param name="rider">The rider file.</param>
    /// <param name="request">Which week, from when.</param>
    /// <returns>The review; null when the folder has no usable ride on or before the as-of date.</returns>
    public static ReviewDocument? Review(FolderContent folder, Rider rider, ReviewRequest request) => throw new NotImplementedException();

    /// <summary>Every ride.</summary>
    public static RidesDocument Rides(FolderContent folder, Rider rider, ReviewRequest request) => throw new NotImplementedException();

    /// <summary>Every week from the first ride's to the last.</summary>
    public static WeeksDocument Weeks(FolderContent folder, Rider rider, ReviewRequest request) => throw new NotImplementedException();

    /// <summary>The rules in force for a rider.</summary>
    public static RulesDocument Rules(Rider rider) => throw new NotImplementedException();
}
