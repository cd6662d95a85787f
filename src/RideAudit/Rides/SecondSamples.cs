namespace RideAudit.Rides;

/// <summary>A track's rows in order of time, grouped by second: rows of one second are one sample, the last valid value of each channel counting.</summary>
internal sealed class SecondSamples
{
    private readonly int[]? _order;
    private readonly int[]? _groupStart;

    private SecondSamples(long[] seconds, int[]? order, int[]? groupStart)
    {
        Seconds = seconds;
        _order = order;
        _groupStart = groupStart;
    }

    /// <summary>The distinct seconds, ascending.</summary>
    public long[] Seconds { get; }

    public int Count => Seconds.Length;

    public static SecondSamples From(Track track)
    {
        // One row a second, in order, as most recordings are: nothing to group.
        if (IsStrictlyAscending(track.Seconds))
            return new SecondSamples(track.Seconds, null, null);
        int[] order = [.. Enumerable.Range(0, track.Seconds.Length).OrderBy(i => track.Seconds[i])];
        var seconds = new List<long>(order.Length);
        var starts = new List<int>(order.Length + 1);
        for (var i = 0; i < order.Length; i++)
        {
            var second = track.Seconds[order[i]];
            if (seconds.Count > 0 && seconds[^1] == second)
                continue;
            seconds.Add(second);
            starts.Add(i);
        }
        starts.Add(order.Length);
        return new SecondSamples([.. seconds], order, [.. starts]);
    }

    /// <summary>True when a sample lies at or after <paramref name="from"/> and before <paramref name="to"/>.</summary>
    public bool AnyIn(long from, long to)
    {
        var at = Array.BinarySearch(Seconds, from);
        if (at < 0)
            at = ~at;
        return at < Seconds.Length && Seconds[at] < to;
    }

    /// <summary>One value a second: the last valid and plausible one, NaN without; null without the channel.</summary>
    /// <param name="column">The track's column; null without one.</param>
    /// <param name="lowest">The least that is plausible.</param>
    /// <param name="highest">The most that is.</param>
    /// <param name="refused">How many values were not; a stored 0 means no sensor and is not counted.</param>
    public float[]? Merge(float[]? column, float lowest, float highest, out int refused)
    {
        refused = 0;
        if (column is null)
            return null;
        var merged = new float[Count];
        if (_order is null || _groupStart is null)
        {
            var count = 0;
            for (var i = 0; i < merged.Length && i < column.Length; i++)
                merged[i] = Plausible(column[i], lowest, highest, ref count);
            refused = count;
            return merged;
        }
        for (var group = 0; group < Count; group++)
        {
            merged[group] = float.NaN;
            for (var i = _groupStart[group + 1] - 1; i >= _groupStart[group] && float.IsNaN(merged[group]); i--)
                merged[group] = Plausible(column[_order[i]], lowest, highest, ref refused);
        }
        return merged;
    }

    private static float Plausible(float value, float lowest, float highest, ref int refused)
    {
        if (value >= lowest && value <= highest)
            return value;
        if (!float.IsNaN(value) && value != 0)
            refused++;
        return float.NaN;
    }

    private static bool IsStrictlyAscending(long[] seconds)
    {
        for (var i = 1; i < seconds.Length; i++)
            if (seconds[i] <= seconds[i - 1])
                return false;
        return true;
    }
}
