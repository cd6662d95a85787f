using System.Collections.Immutable;
using RideAudit.Document;

namespace RideAudit.Report.Charts;

/// <summary>The repeats of a ride: its sustained stretches at the share that parts it into most; of equals the highest.</summary>
internal static class Repeats
{
    private const int Fewest = 2;

    /// <summary>In order; empty for a ride without repeats.</summary>
    public static ImmutableArray<StretchEntry> Of(RideEntry ride) =>
        ride.Stretches.GroupBy(stretch => stretch.SharePercent).OrderByDescending(group => group.Count()).ThenByDescending(group => group.Key)
            .FirstOrDefault(group => group.Count() >= Fewest) is { } found
            ? [.. found.OrderBy(stretch => stretch.StartSecond)]
            : [];
}
