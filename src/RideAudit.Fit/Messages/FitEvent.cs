namespace RideAudit.Fit.Messages;

/// <summary>An event (message 21): the timer's starts and stops above all.</summary>
/// <param name="Timestamp">When, FIT seconds; null if absent.</param>
/// <param name="Event">What: 0 timer, 8 session, 9 lap; unknown numbers are kept; null if absent.</param>
/// <param name="EventType">How: 0 start, 1 stop, 3 marker, 4 stop all, 8 stop and disable, 9 stop and disable all; null if absent.</param>
/// <param name="Data">The event's data; null if absent.</param>
/// <param name="Group">The event's group; null if absent.</param>
/// <param name="FileOrder">Position among the part's messages; says nothing about time.</param>
public sealed record FitEvent(uint? Timestamp, byte? Event, byte? EventType, uint? Data = null, byte? Group = null, int FileOrder = 0)
{
    /// <summary>The number of the timer among events.</summary>
    public const byte Timer = 0;

    /// <summary>True if the timer starts here.</summary>
    public bool StartsTimer => Event == Timer && EventType == 0;

    /// <summary>True if the timer stops here, by any of the four stop types that devices write.</summary>
    public bool StopsTimer => Event == Timer && EventType is (1 or 4 or 8 or 9);
}
