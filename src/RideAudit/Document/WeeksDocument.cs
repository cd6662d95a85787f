using System.Collections.Immutable;

namespace RideAudit.Document;

/// <summary>All weeks of a folder.</summary>
/// <param name="Schema">Always <c>rideaudit-weeks/1</c>.</param>
/// <param name="Weeks">Oldest first.</param>
public sealed record WeeksDocument(string Schema, ImmutableArray<WeekEntry> Weeks)
{
    /// <summary>What the reader should know of the rows: that they end with the last week ridden.</summary>
    public ImmutableArray<NoticeEntry> Notices { get; init; } = [];
}
