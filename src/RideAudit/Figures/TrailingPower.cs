using System.Buffers;
using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using RideAudit.Rides;
using RideAudit.Units;

namespace RideAudit.Figures;

/// <summary>The trailing mean of power, over 30 s unless said, kept as sums so that limits compare without a rounding division.</summary>
/// <remarks>
/// Windows restart after every pause and every stretch of missing power; until a window is full the mean so far stands.
/// It lies in lent buffers: whoever is done with one disposes of it, and then it is not to be read.
/// </remarks>
internal sealed class TrailingPower : IDisposable
{
    /// <summary>The window where none is said, s.</summary>
    public const int WindowSeconds = 30;

    /// <summary>Wider than what a sample loses as a 32-bit float, finer than the distance of whole watts to any limit they are not on.</summary>
    internal const double OnTheLimit = 1 - 1e-7;

    private readonly double[] _sums;
    private readonly byte[] _counts;
    private readonly int _window;
    private double _highestMean = double.NegativeInfinity;

    private TrailingPower(int length, ImmutableArray<GridSegment> segments, int window)
    {
        _window = window;
        _sums = ArrayPool<double>.Shared.Rent(length);
        _counts = ArrayPool<byte>.Shared.Rent(length);
        Length = length;
        Segments = segments;
    }

    /// <summary>Seconds on the grid.</summary>
    public int Length { get; }

    /// <summary>The grid's stretches between pauses.</summary>
    public ImmutableArray<GridSegment> Segments { get; }

    /// <summary>Samples in the window that ends at a second: 0 where power is missing, all of them for a full window.</summary>
    public int CountAt(int second) => _counts[second];

    /// <summary>Sum of the window that ends at a second, W·s.</summary>
    public double SumAt(int second) => _sums[second];

    /// <summary>Mean of the window that ends at a second, W; NaN where power is missing.</summary>
    public double MeanAt(int second) => _counts[second] == 0 ? double.NaN : _sums[second] / _counts[second];

    /// <summary>True when the mean at a second is at or above a share of a threshold; false where power is missing.</summary>
    /// <param name="second">Grid second.</param>
    /// <param name="percent">The share, %.</param>
    /// <param name="thresholdW">Threshold power, W.</param>
    public bool IsAtLeast(int second, double percent, double thresholdW) =>
        _counts[second] > 0 && 100 * _sums[second] >= Limit(percent, thresholdW, _counts[second]);

    /// <summary>False where no second can be at or above a share of a threshold, so that none needs to be looked at.</summary>
    /// <param name="percent">The share, %.</param>
    /// <param name="thresholdW">Threshold power, W.</param>
    internal bool MayReach(double percent, double thresholdW) => 100 * _highestMean * (2 - OnTheLimit) >= percent * thresholdW;

    /// <summary>For each second whether <see cref="IsAtLeast"/> holds: the limits are worked out once a count, not once a second.</summary>
    /// <param name="percent">The share, %.</param>
    /// <param name="thresholdW">Threshold power, W.</param>
    internal SecondsAtLeast At(double percent, double thresholdW) => new(_sums.AsSpan(0, Length), _counts.AsSpan(0, Length), _window, percent, thresholdW);

    private static double Limit(double percent, double thresholdW, int count) => percent * thresholdW * count * OnTheLimit;

    /// <summary>Computes the trailing sums.</summary>
    /// <param name="powerW">Power on the grid, W, NaN where missing.</param>
    /// <param name="segments">Stretches between pauses, covering the grid.</param>
    /// <param name="windowSeconds">The window, s, 1 to 255.</param>
    public static TrailingPower Of(ReadOnlySpan<float> powerW, ImmutableArray<GridSegment> segments, int windowSeconds = WindowSeconds)
    {
        using var totals = new RunningTotals(powerW);
        return Of(totals, segments, windowSeconds);
    }

    /// <summary>The same from running totals that others read too.</summary>
    internal static TrailingPower Of(in RunningTotals totals, ImmutableArray<GridSegment> segments, int windowSeconds = WindowSeconds)
    {
        using var phase = Phase.Begin("trailing means");
        var length = totals.Totals.Length - 1;
        var trailing = new TrailingPower(length, segments, windowSeconds);
        if (totals.HasGaps)
        {
            trailing._sums.AsSpan(0, length).Clear();
            trailing._counts.AsSpan(0, length).Clear();
        }
        var run = 0;
        foreach (var segment in segments)
        {
            while (run < totals.Runs.Count && totals.Runs[run].End <= segment.Start)
                run++;
            for (var i = run; i < totals.Runs.Count && totals.Runs[i].Start < segment.End; i++)
                trailing.Fill(totals.Totals, Math.Max(segment.Start, totals.Runs[i].Start), Math.Min(segment.End, totals.Runs[i].End));
        }
        return trailing;
    }

    /// <summary>Gives the buffers back.</summary>
    public void Dispose()
    {
        ArrayPool<double>.Shared.Return(_sums);
        ArrayPool<byte>.Shared.Return(_counts);
    }

    private void Fill(ReadOnlySpan<double> totals, int start, int end)
    {
        var full = Math.Min(start + _window, end);
        for (var i = start; i < full; i++)
        {
            _sums[i] = totals[i + 1] - totals[start];
            _counts[i] = (byte)(i + 1 - start);
            _highestMean = Math.Max(_highestMean, _sums[i] / _counts[i]);
        }
        if (full == end)
            return;
        _counts.AsSpan(full, end - full).Fill((byte)_window);
        var ends = totals.Slice(full + 1, end - full);
        var starts = totals.Slice(full + 1 - _window, end - full);
        var sums = _sums.AsSpan(full, end - full);
        _highestMean = Math.Max(_highestMean, CurveSearch.Differences(ends, starts, sums) / _window);
    }

    /// <summary>The seconds at or above one limit.</summary>
    internal readonly ref struct SecondsAtLeast
    {
        private readonly ReadOnlySpan<double> _sums;
        private readonly ReadOnlySpan<byte> _counts;
        private readonly double[] _limits;

        internal SecondsAtLeast(ReadOnlySpan<double> sums, ReadOnlySpan<byte> counts, int window, double percent, double thresholdW)
        {
            _sums = sums;
            _counts = counts;
            _limits = new double[window + 1];
            _limits[0] = double.PositiveInfinity;
            for (var count = 1; count < _limits.Length; count++)
                _limits[count] = Limit(percent, thresholdW, count);
        }

        /// <summary>True when the mean at a second is at or above the limit; false where power is missing.</summary>
        public bool this[int second]
        {
            [MethodImpl(MethodImplOptions.AggressiveInlining)]
            get => 100 * _sums[second] >= _limits[_counts[second]];
        }
    }
}
