namespace RideAudit.Rides;

/// <summary>A track's rows in order of time, grouped by second: rows of one second are one sample, the last valid value of each channel counting.</summary>
internal sealed class SecondSamples
{
    private readonly int[] _order;
    private readonly int[] _groupStart;

    private SecondSamples(long[] seconds, int[] order, int[] groupStart)
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
        var order = Enumerable.Range(0, track.Seconds.Length).ToArray();
        if (!IsAscending(track.Seconds))
            order = [.. order.OrderBy(i => track.Seconds[i])];
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
    public float[]? Merge(float[]? column, Func<float, bool> plausible, out int refused)
    {
        refused = 0;
        if (column is null)
            return null;
        var merged = new float[Count];
        for (var group = 0; group < Count; group++)
        {
            merged[group] = float.NaN;
            for (var i = _groupStart[group + 1] - 1; i >= _groupStart[group]; i--)
            {
                var value = column[_order[i]];
                if (float.IsNaN(value))
                    continue;
                if (plausible(value))
                {
                    merged[group] = value;
                    break;
                }
                // A stored 0 means no sensor; anything else out of range is worth counting.
                if (value != 0)
                    refused++;
            }
        }
        return merged;
    }

    private static bool IsAscending(long[] seconds)
    {
        for (var i = 1; i < seconds.Length; i++)
            if (seconds[i] < seconds[i - 1])
                return false;
        return true;
    }
}
