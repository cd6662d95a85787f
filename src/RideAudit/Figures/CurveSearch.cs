using System.Numerics;
using System.Runtime.InteropServices;

namespace RideAudit.Figures;

/// <summary>Finds the largest sum of every window length by branch and bound.</summary>
/// <remarks>
/// Sums come from running totals. For a block of durations the totals are tilted by a constant power c: with Q(i) = total(i) − c·i, a window
/// of d seconds from a block of starts to a block of ends sums to at most c·d + max Q over the ends − min Q over the starts. With c the slope of
/// the best sums over the durations, Q varies little, so the bound is tight even on an even ride. Missing power counts as a large negative
/// power: no window over it wins while another fits.
/// </remarks>
internal sealed class CurveSearch
{
    /// <summary>Starts, and durations, of a block that is bounded first.</summary>
    private const int Block = 64;

    /// <summary>Starts, and durations, of a block that is tried window by window where its bound does not rule it out.</summary>
    private const int Leaf = 16;

    private const int LeavesPerBlock = Block / Leaf;

    private const int MostDurations = 2 * Block;

    private const int ScanChunk = 512;

    private const double MissingW = -1e7;

    private readonly double[] _totals;
    private readonly int _count;
    private readonly int _longest;
    private readonly TiltedTotals _tilted;

    public CurveSearch(ReadOnlySpan<float> powerW, int longest)
    {
        (_count, _longest) = (powerW.Length, longest);
        // Leaves read a little beyond the last total: what lies there never wins.
        _totals = new double[_count + 1 + 2 * Block];
        for (var i = 0; i < _count; i++)
            _totals[i + 1] = _totals[i] + (float.IsNaN(powerW[i]) ? MissingW : powerW[i]);
        _totals.AsSpan(_count + 1).Fill(double.NegativeInfinity);
        _tilted = new TiltedTotals(_totals, _count + 1, Leaf, LeavesPerBlock);
        Best = new double[longest + 1 + Block];
        Starts = new int[longest + 1 + Block];
        Array.Fill(Best, double.NegativeInfinity);
        Best[0] = 0;
    }

    /// <summary>The largest sum a duration, W·s; longer than the longest duration.</summary>
    public double[] Best { get; }

    /// <summary>Where such a window starts.</summary>
    public int[] Starts { get; }

    /// <summary>Leaves tried window by window: what the bounds have not spared. Windows of a leaf: <see cref="Leaf"/> starts by as many durations.</summary>
    public long LeavesTried { get; private set; }

    public void Run()
    {
        for (var from = 1; from <= _longest; from += DurationsFrom(from))
            Seed(from, Math.Min(from + DurationsFrom(from) - 1, _longest));
        for (var from = 1; from <= _longest; from += DurationsFrom(from))
            Search(from, Math.Min(from + DurationsFrom(from) - 1, _longest));
    }

    /// <summary>Durations bounded at a time: the longer the window, the less its best mean changes from one to the next.</summary>
    private static int DurationsFrom(int duration) => duration < 8 * Block ? Block : MostDurations;

    /// <summary>Finds the best window of the last duration of a block, and good ones of the others: its window shrunk by the weaker end each time, and the one before grown by the stronger.</summary>
    private void Seed(int from, int to)
    {
        ScanAll(to);
        var (start, end) = (Starts[to], Starts[to] + to);
        for (var duration = to - 1; duration >= from; duration--)
        {
            if (_totals[start + 1] - _totals[start] < _totals[end] - _totals[end - 1])
                start++;
            else
                end--;
            Offer(duration, start);
        }
        (start, end) = (Starts[from - 1], Starts[from - 1] + from - 1);
        for (var duration = from; duration < to; duration++)
        {
            if (end == _count || (start > 0 && _totals[start] - _totals[start - 1] > _totals[end + 1] - _totals[end]))
                start--;
            else
                end++;
            Offer(duration, start);
        }
    }

    private void ScanAll(int duration)
    {
        var windows = _count - duration + 1;
        var (best, at) = (double.NegativeInfinity, 0);
        for (var from = 0; from < windows; from += ScanChunk)
        {
            var length = Math.Min(ScanChunk, windows - from);
            var most = LargestDifference(_totals.AsSpan(from + duration, length), _totals.AsSpan(from, length));
            if (most > best)
                (best, at) = (most, from);
        }
        Take(duration, best, at, Math.Min(at + ScanChunk, windows));
    }

    /// <summary>The largest of the ends less their starts; −∞ without any.</summary>
    internal static double LargestDifference(ReadOnlySpan<double> ends, ReadOnlySpan<double> starts)
    {
        var wideEnds = MemoryMarshal.Cast<double, Vector<double>>(ends);
        var wideStarts = MemoryMarshal.Cast<double, Vector<double>>(starts)[..wideEnds.Length];
        // Two running maxima: one would make every step wait for the one before.
        var (even, odd) = (new Vector<double>(double.NegativeInfinity), new Vector<double>(double.NegativeInfinity));
        var i = 0;
        for (; i + 1 < wideEnds.Length; i += 2)
        {
            even = Vector.Max(even, wideEnds[i] - wideStarts[i]);
            odd = Vector.Max(odd, wideEnds[i + 1] - wideStarts[i + 1]);
        }
        even = Vector.Max(even, odd);
        var largest = double.NegativeInfinity;
        for (var lane = 0; lane < Vector<double>.Count; lane++)
            largest = Math.Max(largest, even[lane]);
        for (i *= Vector<double>.Count; i < ends.Length; i++)
            largest = Math.Max(largest, ends[i] - starts[i]);
        return largest;
    }

    /// <summary>The ends less their starts, and the largest of these; −∞ without any.</summary>
    internal static double Differences(ReadOnlySpan<double> ends, ReadOnlySpan<double> starts, Span<double> differences)
    {
        var wideEnds = MemoryMarshal.Cast<double, Vector<double>>(ends);
        var wideStarts = MemoryMarshal.Cast<double, Vector<double>>(starts)[..wideEnds.Length];
        var wideDifferences = MemoryMarshal.Cast<double, Vector<double>>(differences)[..wideEnds.Length];
        var most = new Vector<double>(double.NegativeInfinity);
        for (var i = 0; i < wideEnds.Length; i++)
        {
            wideDifferences[i] = wideEnds[i] - wideStarts[i];
            most = Vector.Max(most, wideDifferences[i]);
        }
        var largest = double.NegativeInfinity;
        for (var lane = 0; lane < Vector<double>.Count; lane++)
            largest = Math.Max(largest, most[lane]);
        for (var i = wideEnds.Length * Vector<double>.Count; i < ends.Length; i++)
        {
            differences[i] = ends[i] - starts[i];
            largest = Math.Max(largest, differences[i]);
        }
        return largest;
    }

    private void Offer(int duration, int start)
    {
        var sum = _totals[start + duration] - _totals[start];
        if (sum > Best[duration])
            (Best[duration], Starts[duration]) = (sum, start);
    }

    private void Take(int duration, double sum, int from, int to)
    {
        for (var i = from; i < to; i++)
            if (_totals[i + duration] - _totals[i] == sum)
            {
                (Best[duration], Starts[duration]) = (sum, i);
                return;
            }
    }

    private void Search(int from, int to)
    {
        var tilt = (Best[to] - Best[from - 1]) / (to - from + 1);
        _tilted.Tilt(tilt, _count - from, from);
        Span<double> toBeat = stackalloc double[MostDurations / Leaf];
        var leastToBeat = double.PositiveInfinity;
        for (var leaf = 0; leaf < toBeat.Length; leaf++)
        {
            toBeat[leaf] = double.PositiveInfinity;
            var first = from + leaf * Leaf;
            for (var duration = first; duration < Math.Min(first + Leaf, to + 1); duration++)
                toBeat[leaf] = Math.Min(toBeat[leaf], Best[duration] - tilt * duration);
            leastToBeat = Math.Min(leastToBeat, toBeat[leaf]);
        }
        for (var start = 0; start + from <= _count; start += Block)
            if (_tilted.HighestOfBlocks(start + from, start + Block - 1 + to) - _tilted.LowestOfBlock(start) > leastToBeat)
                SearchBlock(start, from, to, toBeat);
    }

    private void SearchBlock(int blockStart, int from, int to, ReadOnlySpan<double> toBeat)
    {
        for (var leaf = 0; leaf < toBeat.Length; leaf++)
        {
            var first = from + leaf * Leaf;
            if (first > to)
                return;
            // Durations begin one after a multiple of a leaf, so that the ends of a leaf of starts and durations lie in two leaves, not in three.
            var (startLeaf, endLeaf) = (blockStart / Leaf, (blockStart + first) / Leaf);
            for (var i = 0; i < LeavesPerBlock; i++)
                if (_tilted.MostBetween(startLeaf + i, endLeaf + i) > toBeat[leaf] && (startLeaf + i) * Leaf + first <= _count)
                    TryLeaf((startLeaf + i) * Leaf, first, to);
        }
    }

    private void TryLeaf(int start, int first, int to)
    {
        LeavesTried++;
        var last = Math.Min(start + Leaf, _count - first + 1);
        Span<double> most = stackalloc double[Leaf];
        var beaten = false;
        for (var offset = 0; offset < Leaf; offset += 2 * Vector<double>.Count)
        {
            var known = MemoryMarshal.Cast<double, Vector<double>>(Best.AsSpan(first + offset, 2 * Vector<double>.Count));
            var (shorter, longer) = (known[0], known[1]);
            for (var i = start; i < last; i++)
            {
                var ends = MemoryMarshal.Cast<double, Vector<double>>(_totals.AsSpan(i + first + offset, 2 * Vector<double>.Count));
                var total = new Vector<double>(_totals[i]);
                shorter = Vector.Max(shorter, ends[0] - total);
                longer = Vector.Max(longer, ends[1] - total);
            }
            beaten |= shorter != known[0] || longer != known[1];
            shorter.CopyTo(most[offset..]);
            longer.CopyTo(most[(offset + Vector<double>.Count)..]);
        }
        if (beaten)
            TakeBetter(most, first, to, start, last);
    }

    private void TakeBetter(ReadOnlySpan<double> sums, int first, int to, int start, int end)
    {
        for (var duration = first; duration < first + Leaf && duration <= to; duration++)
            if (sums[duration - first] > Best[duration])
                Take(duration, sums[duration - first], start, end);
    }
}
