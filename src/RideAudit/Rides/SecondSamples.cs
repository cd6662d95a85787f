using System.Numerics;
using System.Runtime.InteropServices;

namespace RideAudit.Rides;

/// <summary>A track's rows in order of time, grouped by second: rows of one second are one sample, the last valid value of each channel counting.</summary>
internal readonly ref struct SecondSamples
{
    private readonly int[]? _order;
    private readonly int[]? _groupStart;

    private SecondSamples(ReadOnlySpan<long> seconds, int[]? order, int[]? groupStart)
    {
        Seconds = seconds;
        _order = order;
        _groupStart = groupStart;
    }

    /// <summary>The distinct seconds, ascending.</summary>
    public ReadOnlySpan<long> Seconds { get; }

    public int Count => Seconds.Length;

    public static SecondSamples From(in Track track)
    {
        // One row a second, in order, as most recordings are: nothing to group.
        if (IsStrictlyAscending(track.Seconds))
            return new SecondSamples(track.Seconds, null, null);
        var all = track.Seconds.ToArray();
        int[] order = [.. Enumerable.Range(0, all.Length).OrderBy(i => all[i])];
        var seconds = new List<long>(order.Length);
        var starts = new List<int>(order.Length + 1);
        for (var i = 0; i < order.Length; i++)
        {
            var second = all[order[i]];
            if (seconds.Count > 0 && seconds[^1] == second)
                continue;
            seconds.Add(second);
            starts.Add(i);
        }
        starts.Add(order.Length);
        return new SecondSamples(seconds.ToArray(), order, [.. starts]);
    }

    /// <summary>True when a sample lies at or after <paramref name="from"/> and before <paramref name="to"/>.</summary>
    public bool AnyIn(long from, long to)
    {
        var at = Seconds.BinarySearch(from);
        if (at < 0)
            at = ~at;
        return at < Seconds.Length && Seconds[at] < to;
    }

    /// <summary>One value a second: the last valid and plausible one, NaN without.</summary>
    /// <param name="column">The track's column.</param>
    /// <param name="lowest">The least that is plausible.</param>
    /// <param name="highest">The most that is.</param>
    /// <param name="merged">Gets a value a distinct second.</param>
    /// <param name="refused">How many values were not; a stored 0 means no sensor and is not counted.</param>
    /// <returns>How many seconds have a value.</returns>
    public int Merge(ReadOnlySpan<float> column, float lowest, float highest, Span<float> merged, out int refused)
    {
        if (_order is null || _groupStart is null)
            return Plausible(column, lowest, highest, merged, out refused);
        refused = 0;
        var values = 0;
        for (var group = 0; group < Count; group++)
        {
            merged[group] = float.NaN;
            for (var i = _groupStart[group + 1] - 1; i >= _groupStart[group] && float.IsNaN(merged[group]); i--)
            {
                var value = column[_order[i]];
                if (value >= lowest && value <= highest)
                    merged[group] = value;
                else
                    refused += Counts(value);
            }
            values += float.IsNaN(merged[group]) ? 0 : 1;
        }
        return values;
    }

    /// <summary>The last value of one distinct second that is not below 0; NaN without one.</summary>
    public double LastOf(ReadOnlySpan<double> column, int second)
    {
        if (_order is null || _groupStart is null)
            return column[second] >= 0 ? column[second] : double.NaN;
        for (var i = _groupStart[second + 1] - 1; i >= _groupStart[second]; i--)
            if (column[_order[i]] >= 0)
                return column[_order[i]];
        return double.NaN;
    }

    private static int Plausible(ReadOnlySpan<float> column, float lowest, float highest, Span<float> merged, out int refused)
    {
        var wideColumn = MemoryMarshal.Cast<float, Vector<float>>(column);
        var wideMerged = MemoryMarshal.Cast<float, Vector<float>>(merged);
        var (least, most, missing) = (new Vector<float>(lowest), new Vector<float>(highest), new Vector<float>(float.NaN));
        var found = Vector<int>.Zero;
        for (var i = 0; i < wideMerged.Length && i < wideColumn.Length; i++)
        {
            var isPlausible = Vector.GreaterThanOrEqual(wideColumn[i], least) & Vector.LessThanOrEqual(wideColumn[i], most);
            wideMerged[i] = Vector.ConditionalSelect(isPlausible, wideColumn[i], missing);
            // What holds is −1.
            found -= isPlausible;
        }
        var values = Vector.Sum(found);
        for (var i = wideMerged.Length * Vector<float>.Count; i < merged.Length; i++)
        {
            var isPlausible = column[i] >= lowest && column[i] <= highest;
            merged[i] = isPlausible ? column[i] : float.NaN;
            values += isPlausible ? 1 : 0;
        }
        refused = 0;
        for (var i = 0; values < merged.Length && i < merged.Length; i++)
            refused += float.IsNaN(merged[i]) ? Counts(column[i]) : 0;
        return values;
    }

    private static int Counts(float refused) => float.IsNaN(refused) || refused == 0 ? 0 : 1;

    private static bool IsStrictlyAscending(ReadOnlySpan<long> seconds)
    {
        for (var i = 1; i < seconds.Length; i++)
            if (seconds[i] <= seconds[i - 1])
                return false;
        return true;
    }
}
