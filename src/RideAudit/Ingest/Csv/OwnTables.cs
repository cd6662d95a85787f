namespace RideAudit.Ingest.Csv;

/// <summary>Knows the tables that this program writes itself: left in the folder of rides they are no rides, and no mistake either.</summary>
internal static class OwnTables
{
    private static readonly string[][] FirstHeaders =
    [
        ["file", "parts", "starts_at", "duration_seconds"],
        ["starts_on", "iso_week", "finished", "hours"],
        ["rule", "limits", "evidence", "source"],
    ];

    public static bool Are(IReadOnlyList<string> headers) =>
        FirstHeaders.Any(own => headers.Take(own.Length).SequenceEqual(own));
}
