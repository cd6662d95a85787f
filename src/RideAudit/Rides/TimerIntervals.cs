namespace RideAudit.Rides;

/// <summary>Works out when the timer ran: from timer events, else from the gaps between records.</summary>
internal static class TimerIntervals
{
    /// <summary>More than this many days between first and last record is a broken clock, not a ride: see the ingest's clock repairs.</summary>
    private const long LongestIntervalSeconds = 7 * 86400;

    public static IReadOnlyList<TimerInterval> Of(in Track track, in SecondSamples samples)
    {
        var intervals = track.TimerEvents.Count > 0 ? FromEvents(track, samples) : FromGaps(track, samples);
        return [.. intervals.Where(i => i.Length is > 0 and <= LongestIntervalSeconds)];
    }

    private static List<TimerInterval> FromEvents(in Track track, in SecondSamples samples)
    {
        var first = samples.Seconds[0];
        var last = samples.Seconds[samples.Count - 1];
        var running = new List<(long Start, long End)>();
        // Tolerant of a first event that is a stop and of a last start that has none.
        var ordered = track.TimerEvents.OrderBy(e => e.Second).ToArray();
        long? runningSince = ordered[0].Starts ? null : first;
        foreach (var timer in ordered)
        {
            if (timer.Starts)
            {
                runningSince ??= timer.Second;
                continue;
            }
            if (runningSince is { } since && timer.Second > since)
                Run(since, timer.Second);
            runningSince = null;
        }
        if (runningSince is { } open && last >= open)
            Run(open, last + 1);
        var intervals = new List<TimerInterval>();
        foreach (var (start, end) in running)
            Add(intervals, start, end, samples);
        foreach (var interval in intervals)
            if (samples.AnyIn(interval.Start, interval.End))
                return intervals;
        return FromGaps(track, samples);

        // A stop and a start in the same second are no pause.
        void Run(long start, long end)
        {
            if (running is [.., var before] && before.End == start)
                running[^1] = (before.Start, end);
            else
                running.Add((start, end));
        }
    }

    /// <summary>A sample stands for the second that starts at it; where a device stamps the second's end, the interval is read that way round.</summary>
    private static void Add(List<TimerInterval> intervals, long start, long end, in SecondSamples samples)
    {
        var stampsEnds = !samples.AnyIn(start, start + 1) && samples.AnyIn(start + 1, start + 2) && samples.AnyIn(end, end + 1);
        var shift = stampsEnds ? 1 : 0;
        if (intervals.Count > 0 && intervals[^1].End == start + shift)
            intervals[^1] = new TimerInterval(intervals[^1].Start, end + shift);
        else
            intervals.Add(new TimerInterval(Math.Max(start + shift, intervals.Count > 0 ? intervals[^1].End : long.MinValue), end + shift));
    }

    private static List<TimerInterval> FromGaps(in Track track, in SecondSamples samples)
    {
        var first = samples.Seconds[0];
        var last = samples.Seconds[samples.Count - 1];
        var span = last - first + 1;
        // A stored timer time that fills the whole span says that no silence was a pause.
        if (track.StoredTimerSeconds is { } stored && Math.Abs(stored - span) <= Math.Max(2, 0.005 * span))
            return [new TimerInterval(first, last + 1)];
        var intervals = new List<TimerInterval>();
        var start = first;
        for (var i = 1; i < samples.Count; i++)
        {
            if (samples.Seconds[i] - samples.Seconds[i - 1] <= GridBuilder.LongestHeldGapSeconds)
                continue;
            intervals.Add(new TimerInterval(start, samples.Seconds[i - 1] + 1));
            start = samples.Seconds[i];
        }
        intervals.Add(new TimerInterval(start, last + 1));
        return intervals;
    }
}
