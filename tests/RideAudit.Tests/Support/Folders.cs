using NodaTime;
using RideAudit.Document;
using RideAudit.Ingest;
using RideAudit.Plan;
using RideAudit.Review;
using RideAudit.Rides;

namespace RideAudit.Tests.Support;

/// <summary>Reviews of recordings that were never files.</summary>
internal static class Folders
{
    public static FolderContent Of(IEnumerable<Recording> recordings, params LoggedRide[] log)
    {
        var (kept, _) = DuplicateFinder.Split(recordings);
        return new FolderContent { FilesSeen = kept.Length, Recordings = kept, LoggedRides = [.. log], Notices = [], TimeZone = "UTC" };
    }

    public static ReviewDocument Review(IEnumerable<Recording> recordings, Rider rider, LocalDate asOf) => Review(Of(recordings), rider, asOf);

    public static ReviewDocument Review(FolderContent folder, Rider rider, LocalDate asOf) =>
        ReviewBuilder.Review(folder, rider, new ReviewRequest { Today = asOf, AsOf = asOf })!;
}
