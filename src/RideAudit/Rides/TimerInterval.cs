namespace RideAudit.Rides;

/// <summary>A stretch of clock time over which the timer ran.</summary>
/// <param name="Start">First second, in the zero of whoever made it.</param>
/// <param name="End">Second after the last.</param>
internal readonly record struct TimerInterval(long Start, long End)
{
    public long Length => End - Start;
}
