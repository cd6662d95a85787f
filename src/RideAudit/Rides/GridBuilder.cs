using System.Collections.Immutable;

namespace RideAudit.Rides;

/// <summary>Lays a track on a 1 s grid of timer time.</summary>
/// <remarks>
/// No record for up to 10 s holds the last values; a longer silence is missing data while the timer ran, a pause where no timer events are known.
/// A record without power is 0 W where it says cadence 0, else it holds the last for up to 3 s, other channels for up to 10 s.
/// Power or heart rate that stands still for minutes while the ride goes on is missing.
/// </remarks>
internal static class GridBuilder
{
    /// <summary>Longest silence between records that holds the last values, s.</summary>
    public const int LongestHeldGapSeconds = 10;

    /// <summary>Longest run of records without power that holds the last power, s.</summary>
    public const int LongestHeldPowerSeconds = 3;

    private const float LowestHeartRateBpm = 30;
    private const float HighestHeartRateBpm = 230;

    /// <summary>Builds the grid.</summary>
    /// <param name="track">In any order; it is not changed.</param>
    /// <returns>The grid; empty when the timer never ran over a record.</returns>
    public static GriddedTrack Build(Track track)
    {
        var samples = SecondSamples.From(track);
        if (samples.Count == 0)
            return GriddedTrack.Empty;
        var intervals = TimerIntervals.Of(track, samples);
        var segments = SegmentsOf(intervals);
        var length = segments.Sum(s => s.Length);
        var firstRow = new int[length];
        RowPerSecond(samples, intervals, segments, firstRow);

        float[]? Lay(float[]? column, int longestHold) => GridBuilder.Lay(column, firstRow, segments, longestHold);
        var heart = samples.Merge(track.HeartRateBpm, LowestHeartRateBpm, HighestHeartRateBpm, out var refusedHeart);
        // Endless power stays: it is counted and said when spikes are taken out. Nothing else would be.
        var cadence = samples.Merge(track.CadenceRpm, 0, float.MaxValue, out _);
        var grid = new SampleGrid
        {
            Length = length,
            Segments = segments,
            PowerW = Lay(WithCoasting(samples.Merge(track.PowerW, 0, float.PositiveInfinity, out _), cadence), LongestHeldPowerSeconds),
            HeartRateBpm = Lay(heart, LongestHeldGapSeconds),
            CadenceRpm = Lay(cadence, LongestHeldGapSeconds),
            SpeedMps = Lay(samples.Merge(track.SpeedMps, 0, float.MaxValue, out _), LongestHeldGapSeconds),
            DistanceM = Lay(samples.Merge(track.DistanceM, 0, float.MaxValue, out _), LongestHeldGapSeconds),
        };
        var (sensed, stuckPower, stuckHeart) = StuckSensors.Remove(grid);
        return Time(track, samples, intervals, sensed, Recorded(firstRow)) with
        {
            ImplausibleHeartRates = refusedHeart,
            StuckPowerSeconds = stuckPower,
            StuckHeartRateSeconds = stuckHeart,
        };
    }

    /// <summary>In a ride with power a record without it that says cadence 0 is coasting: some devices leave 0 W out.</summary>
    private static float[]? WithCoasting(float[]? power, float[]? cadence)
    {
        if (cadence is null || !SampleGrid.Measures(power))
            return power;
        for (var i = 0; i < power!.Length; i++)
            if (float.IsNaN(power[i]) && cadence[i] == 0)
                power[i] = 0;
        return power;
    }

    private static GriddedTrack Time(
        Track track, SecondSamples samples, IReadOnlyList<TimerInterval> intervals, SampleGrid grid, int recorded)
    {
        var start = intervals.Count > 0 ? intervals[0].Start : samples.Seconds[0];
        var clock = intervals.Count > 0 ? intervals[^1].End - start : 0;
        // With timer events a stop may have been lost, without them a silence may have been a lost sensor: the stored total then lies between.
        var timerFits = track.StoredTimerSeconds is { } stored && (track.TimerEvents.Count > 0
            ? LiesBetween(stored, recorded, grid.Length)
            : LiesBetween(stored, grid.Length, clock));
        var timer = timerFits ? track.StoredTimerSeconds!.Value : grid.Length;
        var elapsedFits = track.StoredElapsedSeconds is { } elapsed && LiesBetween(elapsed, clock, clock) && elapsed >= timer;
        return new GriddedTrack(
            grid, start, timer, elapsedFits ? track.StoredElapsedSeconds!.Value : Math.Max(clock, timer),
            track.StoredTimerSeconds is not null && !timerFits);
    }

    private static bool LiesBetween(double storedSeconds, long least, long most) =>
        double.IsFinite(storedSeconds)
        && storedSeconds > 0
        && storedSeconds >= least - Math.Max(5, 0.02 * least)
        && storedSeconds <= most + Math.Max(5, 0.02 * most);

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

    /// <summary>For each grid second the row whose values hold there, −1 where none does.</summary>
    private static void RowPerSecond(
        SecondSamples samples, IReadOnlyList<TimerInterval> intervals, ImmutableArray<GridSegment> segments, int[] rows)
    {
        Array.Fill(rows, -1);
        var row = 0;
        for (var i = 0; i < intervals.Count; i++)
        {
            var interval = intervals[i];
            while (row < samples.Count && samples.Seconds[row] < interval.Start)
                row++;
            for (; row < samples.Count && samples.Seconds[row] < interval.End; row++)
            {
                var at = samples.Seconds[row];
                var next = row + 1 < samples.Count && samples.Seconds[row + 1] < interval.End ? samples.Seconds[row + 1] : interval.End;
                var held = next - at <= LongestHeldGapSeconds ? next - at : 1;
                rows.AsSpan(segments[i].Start + (int)(at - interval.Start), (int)held).Fill(row);
            }
        }
    }

    /// <summary>A record on every second, and no other: it lies on the grid as it is.</summary>
    private static bool IsEverySecond(int[] rows, int records)
    {
        if (rows.Length != records)
            return false;
        for (var i = 0; i < rows.Length; i++)
            if (rows[i] != i)
                return false;
        return true;
    }

    private static int Recorded(int[] rows)
    {
        var recorded = 0;
        foreach (var row in rows)
            recorded += row >= 0 ? 1 : 0;
        return recorded;
    }

    private static float[]? Lay(float[]? merged, int[] rows, ImmutableArray<GridSegment> segments, int longestHold)
    {
        if (merged is null)
            return null;
        if (Array.TrueForAll(merged, float.IsNaN))
            return null;
        var laid = IsEverySecond(rows, merged.Length) ? merged : Array.ConvertAll(rows, r => r < 0 ? float.NaN : merged[r]);
        var values = SampleGrid.CountValues(laid);
        if (values == 0)
            return null;
        if (values == laid.Length)
            return laid;
        foreach (var segment in segments)
            HoldShortRuns(laid.AsSpan(segment.Start, segment.Length), rows.AsSpan(segment.Start, segment.Length), longestHold);
        return laid;
    }

    private static void HoldShortRuns(Span<float> values, ReadOnlySpan<int> rows, int longestHold)
    {
        for (var i = 1; i < values.Length; i++)
        {
            if (!float.IsNaN(values[i]) || float.IsNaN(values[i - 1]))
                continue;
            var end = i;
            while (end < values.Length && float.IsNaN(values[end]) && rows[end] >= 0)
                end++;
            if (end - i <= longestHold && (end == values.Length || rows[end] >= 0))
                values[i..end].Fill(values[i - 1]);
            i = end;
        }
    }
}
