using RideAudit.Fit.Messages;

namespace RideAudit.Fit.Reading;

/// <summary>Looks again at the last few messages before a break: a stream that has slipped can still yield a message that looks whole.</summary>
internal static class DoubtfulTail
{
    private const int MessagesLookedAt = 8;
    private const int RecordsSearchedForTime = 4_096;
    private const uint JumpSeconds = 86_400;

    /// <summary>Drops the last records from the first whose time jumps by more than a day, and summaries of that tail with such times.</summary>
    /// <returns>How many messages were dropped.</returns>
    public static int Drop(PartContent content)
    {
        var dropped = DropRecords(content.Records);
        if (LastTime(content.Records.Times) is not { } reference)
            return dropped;
        var from = content.Messages - MessagesLookedAt;
        dropped += content.Events.RemoveAll(e => e.FileOrder >= from && IsFar(e.Timestamp, reference));
        dropped += content.Laps.RemoveAll(l => l.FileOrder >= from && IsFar(l.Timestamp, reference));
        dropped += content.Sessions.RemoveAll(s => s.FileOrder >= from && IsFar(s.Timestamp, reference));
        if (content.Activity is { } activity && activity.FileOrder >= from && IsFar(activity.Timestamp, reference))
        {
            content.Activity = null;
            dropped++;
        }

        return dropped;
    }

    /// <summary>The last known time among the last records; null if there is none.</summary>
    public static uint? LastTime(ReadOnlySpan<uint> times)
    {
        var farthest = Math.Max(0, times.Length - RecordsSearchedForTime);
        for (var i = times.Length - 1; i >= farthest; i--)
        {
            if (times[i] != RecordChannels.NoTime)
                return times[i];
        }

        return null;
    }

    /// <summary>The last time that does not jump from the one before it, looking at the last few records only.</summary>
    public static uint? LastSoundTime(RecordColumns records)
    {
        var times = records.Times;
        var jump = FirstJump(times);
        return LastTime(jump < 0 ? times : times[..jump]);
    }

    private static int DropRecords(RecordColumns records)
    {
        var jump = FirstJump(records.Times);
        if (jump < 0)
            return 0;
        var dropped = records.Count - jump;
        records.Truncate(jump);
        return dropped;
    }

    private static int FirstJump(ReadOnlySpan<uint> times)
    {
        for (var i = Math.Max(1, times.Length - MessagesLookedAt); i < times.Length; i++)
        {
            if (times[i - 1] != RecordChannels.NoTime && times[i] != RecordChannels.NoTime && IsFar(times[i], times[i - 1]))
                return i;
        }

        return -1;
    }

    private static bool IsFar(uint? time, uint reference) =>
        time is { } known && Math.Abs((long)known - reference) > JumpSeconds;
}
