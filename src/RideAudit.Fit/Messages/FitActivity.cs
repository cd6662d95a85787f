namespace RideAudit.Fit.Messages;

/// <summary>The closing message of an activity (message 34).</summary>
/// <param name="Timestamp">When written, FIT seconds; null if absent.</param>
/// <param name="LocalTimestamp">The same instant on the rider's clock, FIT seconds; null if absent. Some devices write 0 or nonsense.</param>
/// <param name="TotalTimerSeconds">Timer time, s; null if absent. Some devices store elapsed time here: prefer the session's.</param>
/// <param name="NumSessions">Number of sessions; null if absent.</param>
/// <param name="FileOrder">Position among the part's messages; says nothing about time.</param>
public sealed record FitActivity(uint? Timestamp, uint? LocalTimestamp, double? TotalTimerSeconds = null, ushort? NumSessions = null, int FileOrder = 0)
{
    /// <summary>Local minus universal time, s; null if either is absent. Not judged: accept only what a zone can be.</summary>
    public long? LocalOffsetSeconds => LocalTimestamp is { } local && Timestamp is { } utc ? (long)local - utc : null;
}
