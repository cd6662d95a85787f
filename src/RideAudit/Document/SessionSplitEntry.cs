namespace RideAudit.Document;

/// <summary>Shares of the rides by what they were for, 0 to 1, four decimals.</summary>
/// <param name="Easy">Rides that are neither high nor threshold.</param>
/// <param name="Hard">High and threshold rides.</param>
public sealed record SessionSplitEntry(double Easy, double Hard);
