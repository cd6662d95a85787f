namespace RideAudit.Document;

/// <summary>Which notice is about which ride.</summary>
public static class RideNotices
{
    /// <summary>The notice is about the file that the ride came from, or about one of its parts.</summary>
    public static bool IsAbout(this NoticeEntry notice, RideEntry ride) =>
        notice.File is { } file && (ride.File == file || ride.File.StartsWith(file + "#", StringComparison.Ordinal)
            || (!ride.Parts.IsDefaultOrEmpty && ride.Parts.Contains(file)));

    /// <summary>What happened to files that gave a ride all the same: cut short, joined, repaired.</summary>
    /// <param name="document">The rides that are shown, and all notices.</param>
    public static IReadOnlyList<NoticeEntry> AboutRides(this RidesDocument document) =>
        [.. document.Notices.Where(n => !n.Unusable && n.Kept is not null && document.Rides.Any(n.IsAbout))];

    /// <summary>Notices for a page with room for few: files near the week that could not be used, what is about the whole folder, and repairs of the week's rides.</summary>
    /// <param name="document">The review.</param>
    public static IReadOnlyList<NoticeEntry> ForOnePage(this ReviewDocument document) =>
        [.. document.Notices.Where(n => (n.Unusable && n.IsNear(document.Week.StartsOn.PlusDays(-7 * NoticeEntry.WeeksLookedBack), document.Week.StartsOn.PlusDays(6))) || n.File is null || n.Problem == "assumption" || (n.Kept is not null && document.Rides.Any(n.IsAbout)))];
}
