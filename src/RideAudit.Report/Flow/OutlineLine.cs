namespace RideAudit.Report.Flow;

/// <summary>A line of a document's outline.</summary>
/// <param name="Title">As shown.</param>
/// <param name="Place">The named place it leads to.</param>
internal readonly record struct OutlineLine(string Title, string Place);
