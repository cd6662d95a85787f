namespace RideAudit.Rides;

/// <summary>When the timer of a recording ran, in seconds since the Unix epoch.</summary>
internal static class RunningTime
{
    /// <summary>The stretches between pauses; the whole span of a recording without samples.</summary>
    public static IReadOnlyList<TimerInterval> Of(Recording recording)
    {
        var start = recording.Start.ToUnixTimeSeconds();
        if (recording.Grid.Segments.IsEmpty)
            return [new TimerInterval(start, recording.End.ToUnixTimeSeconds())];
        return [.. recording.Grid.Segments.Select(s => new TimerInterval(start + s.ClockSecond, start + s.ClockSecond + s.Length))];
    }

    public static long Total(IReadOnlyList<TimerInterval> intervals) => intervals.Sum(i => i.Length);

    /// <summary>What is left of some stretches without others; each list is in order and free of overlaps, and so is the result.</summary>
    public static IReadOnlyList<TimerInterval> Without(IReadOnlyList<TimerInterval> stretches, IReadOnlyList<TimerInterval> others)
    {
        var left = new List<TimerInterval>();
        foreach (var stretch in stretches)
        {
            var start = stretch.Start;
            foreach (var other in others.Where(o => o.End > stretch.Start && o.Start < stretch.End))
            {
                if (other.Start > start)
                    left.Add(new TimerInterval(start, other.Start));
                start = Math.Max(start, other.End);
            }
            if (start < stretch.End)
                left.Add(new TimerInterval(start, stretch.End));
        }
        return left;
    }

    /// <summary>Seconds on which both run; each list is in order and free of overlaps.</summary>
    public static long Overlap(IReadOnlyList<TimerInterval> a, IReadOnlyList<TimerInterval> b)
    {
        long overlap = 0;
        for (int i = 0, j = 0; i < a.Count && j < b.Count;)
        {
            overlap += Math.Max(0, Math.Min(a[i].End, b[j].End) - Math.Max(a[i].Start, b[j].Start));
            if (a[i].End < b[j].End)
                i++;
            else
                j++;
        }
        return overlap;
    }
}
