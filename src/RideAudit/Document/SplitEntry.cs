namespace RideAudit.Document;

/// <summary>Shares of the banded time, 0 to 1, four decimals.</summary>
/// <param name="Low">Low share.</param>
/// <param name="Middle">Middle share.</param>
/// <param name="High">High share.</param>
public sealed record SplitEntry(double Low, double Middle, double High);
