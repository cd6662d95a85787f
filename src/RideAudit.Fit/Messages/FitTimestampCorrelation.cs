namespace RideAudit.Fit.Messages;

/// <summary>One instant on three clocks (message 162).</summary>
/// <param name="Timestamp">Universal time, FIT seconds; null if absent.</param>
/// <param name="FractionSeconds">Its fraction of a second, 0 up to 1; null if absent.</param>
/// <param name="SystemTimestamp">The device's own clock, FIT seconds; null if absent.</param>
/// <param name="LocalTimestamp">The rider's clock, FIT seconds; null if absent.</param>
public sealed record FitTimestampCorrelation(uint? Timestamp, double? FractionSeconds, uint? SystemTimestamp, uint? LocalTimestamp)
{
    /// <summary>Local minus universal time, s; null if either is absent. Not judged.</summary>
    public long? LocalOffsetSeconds => LocalTimestamp is { } local && Timestamp is { } utc ? (long)local - utc : null;
}
