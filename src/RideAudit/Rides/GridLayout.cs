using System.Collections.Immutable;

namespace RideAudit.Rides;

/// <summary>Which record holds on each second of the grid, and how channels are laid by it.</summary>
internal readonly ref struct GridLayout
{
    private readonly SecondSamples _samples;

    /// <summary>For each grid second the record whose values hold there, −1 where none does; nothing where every second has its own, in order.</summary>
    private readonly Lent<int> _rows;
    private readonly bool _everySecond;

    /// <param name="samples">The track's records, by second.</param>
    /// <param name="intervals">When the timer ran.</param>
    public GridLayout(in SecondSamples samples, IReadOnlyList<TimerInterval> intervals)
    {
        _samples = samples;
        Segments = SegmentsOf(intervals);
        foreach (var segment in Segments)
            Length += segment.Length;
        // A record on every second, and no other: it lies on the grid as it is.
        _everySecond = intervals.Count == 1 && Length == samples.Count
            && samples.Seconds[0] == intervals[0].Start && samples.Seconds[^1] == intervals[0].End - 1;
        _rows = new Lent<int>(_everySecond ? 0 : Length);
        if (!_everySecond)
            PlaceRows(intervals);
    }

    /// <summary>Seconds on the grid.</summary>
    public int Length { get; }

    /// <summary>Seconds that have a record of their own.</summary>
    public int Records => _samples.Count;

    /// <summary>The stretches on which the timer ran.</summary>
    public ImmutableArray<GridSegment> Segments { get; }

    /// <summary>Grid seconds on which a record holds.</summary>
    public int RecordedSeconds => _everySecond ? Length : Length - _rows.Span.Count(-1);

    public void Dispose() => _rows.Dispose();

    /// <summary>Lays a column; all missing without it.</summary>
    /// <param name="column">The track's column; empty without one.</param>
    /// <param name="lowest">The least that is plausible.</param>
    /// <param name="highest">The most that is.</param>
    /// <param name="longestHold">Longest run of records without a value that holds the last one, s.</param>
    /// <param name="laid">Gets a value a grid second.</param>
    /// <param name="refused">How many values were not plausible.</param>
    public void Lay(ReadOnlySpan<float> column, float lowest, float highest, int longestHold, Span<float> laid, out int refused)
    {
        refused = 0;
        if (column.IsEmpty)
        {
            laid.Fill(float.NaN);
            return;
        }
        if (_everySecond)
        {
            if (Merge(column, lowest, highest, laid, out refused) < Length)
                Hold(laid, longestHold);
            return;
        }
        using var merged = new Lent<float>(Records);
        Merge(column, lowest, highest, merged.Span, out refused);
        LayMerged(merged.Span, longestHold, laid);
    }

    /// <summary>Lays what has a value a record.</summary>
    public void LayMerged(ReadOnlySpan<float> merged, int longestHold, Span<float> laid)
    {
        if (_everySecond)
            merged.CopyTo(laid);
        var rows = _rows.Span;
        for (var i = 0; i < rows.Length; i++)
            laid[i] = rows[i] < 0 ? float.NaN : merged[rows[i]];
        Hold(laid, longestHold);
    }

    /// <summary>One value a record: the last valid and plausible one of its second, NaN without.</summary>
    /// <returns>How many records have a value.</returns>
    public int Merge(ReadOnlySpan<float> column, float lowest, float highest, Span<float> merged, out int refused) =>
        _samples.Merge(column, lowest, highest, merged, out refused);

    /// <summary>True where a column lacks a value, or has one that cannot be.</summary>
    public bool HasGaps(ReadOnlySpan<float> column)
    {
        foreach (var value in column)
            if (!(value >= 0))
                return true;
        return false;
    }

    /// <summary>Distance at the ends of each stretch; what lies between is not looked at.</summary>
    /// <param name="column">The track's column, m; empty without one.</param>
    public ImmutableArray<DistanceStretch> Distances(ReadOnlySpan<double> column)
    {
        if (column.IsEmpty)
            return [];
        var stretches = ImmutableArray.CreateBuilder<DistanceStretch>(Segments.Length);
        foreach (var segment in Segments)
        {
            var (from, to) = (segment.Start, segment.End - 1);
            while (from <= to && double.IsNaN(At(column, from)))
                from++;
            while (to > from && double.IsNaN(At(column, to)))
                to--;
            if (from <= to)
                stretches.Add(new DistanceStretch(from, (float)At(column, from), to, (float)At(column, to)));
        }
        return stretches.ToImmutable();
    }

    private double At(ReadOnlySpan<double> column, int second)
    {
        var row = _everySecond ? second : _rows.Span[second];
        return row >= 0 && _samples.LastOf(column, row) is >= 0 and <= float.MaxValue and var metres ? metres : double.NaN;
    }

    private static ImmutableArray<GridSegment> SegmentsOf(IReadOnlyList<TimerInterval> intervals)
    {
        var builder = ImmutableArray.CreateBuilder<GridSegment>(intervals.Count);
        var next = 0;
        foreach (var interval in intervals)
        {
            builder.Add(new GridSegment(next, (int)interval.Length, interval.Start - intervals[0].Start));
            next += (int)interval.Length;
        }
        return builder.MoveToImmutable();
    }

    private void PlaceRows(IReadOnlyList<TimerInterval> intervals)
    {
        var rows = _rows.Span;
        var seconds = _samples.Seconds;
        rows.Fill(-1);
        var row = 0;
        for (var i = 0; i < intervals.Count; i++)
        {
            var interval = intervals[i];
            while (row < seconds.Length && seconds[row] < interval.Start)
                row++;
            for (; row < seconds.Length && seconds[row] < interval.End; row++)
            {
                var at = seconds[row];
                var next = row + 1 < seconds.Length && seconds[row + 1] < interval.End ? seconds[row + 1] : interval.End;
                var held = next - at <= GridBuilder.LongestHeldGapSeconds ? next - at : 1;
                var second = Segments[i].Start + (int)(at - interval.Start);
                for (var end = second + (int)held; second < end; second++)
                    rows[second] = row;
            }
        }
    }

    private void Hold(Span<float> laid, int longest)
    {
        foreach (var segment in Segments)
            HoldShortRuns(laid.Slice(segment.Start, segment.Length), segment.Start, longest);
    }

    private void HoldShortRuns(Span<float> values, int start, int longest)
    {
        for (var i = 1; i < values.Length; i++)
        {
            if (!float.IsNaN(values[i]) || float.IsNaN(values[i - 1]))
                continue;
            var end = i;
            while (end < values.Length && float.IsNaN(values[end]) && HasRecord(start + end))
                end++;
            if (end - i <= longest && (end == values.Length || HasRecord(start + end)))
                values[i..end].Fill(values[i - 1]);
            i = end;
        }
    }

    private bool HasRecord(int second) => _everySecond || _rows.Span[second] >= 0;
}
