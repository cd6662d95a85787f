namespace RideAudit.Rides;

/// <summary>The timer of a recording started or stopped.</summary>
/// <param name="Second">When, in the track's seconds.</param>
/// <param name="Starts">True for a start.</param>
public readonly record struct TimerEvent(long Second, bool Starts);
