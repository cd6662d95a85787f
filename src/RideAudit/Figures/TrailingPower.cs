using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using RideAudit.Rides;

namespace RideAudit.Figures;

/// <summary>The trailing mean of power, over 30 s unless said, kept as sums so that limits compare without a rounding division.</summary>
/// <remarks>Windows restart after every pause and every stretch of missing power; until a window is full the mean so far stands.</remarks>
internal sealed class TrailingPower
{
    /// <summary>The window where none is said, s.</summary>
    public const int WindowSeconds = 30;

    /// <summary>Wider than what a sample loses as a 32-bit float, finer than the distance of whole watts to any limit they are not on.</summary>
    internal const double OnTheLimit = 1 - 1e-7;

    private readonly double[] _sums;
    private readonly byte[] _counts;

    private TrailingPower(double[] sums, byte[] counts, ImmutableArray<GridSegment> segments)
    {
        _sums = sums;
        _counts = counts;
        Segments = segments;
    }

    /// <summary>Seconds on the grid.</summary>
    public int Length => _sums.Length;

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

    /// <summary>For each second whether <see cref="IsAtLeast"/> holds: the limits are worked out once a count, not once a second.</summary>
    /// <param name="percent">The share, %.</param>
    /// <param name="thresholdW">Threshold power, W.</param>
    internal SecondsAtLeast At(double percent, double thresholdW) => new(_sums, _counts, percent, thresholdW);

    private static double Limit(double percent, double thresholdW, int count) => percent * thresholdW * count * OnTheLimit;

    /// <summary>Computes the trailing sums.</summary>
    /// <param name="powerW">Power on the grid, W, NaN where missing.</param>
    /// <param name="segments">Stretches between pauses.</param>
    /// <param name="windowSeconds">The window, s, 1 to 255.</param>
    public static TrailingPower Of(float[] powerW, ImmutableArray<GridSegment> segments, int windowSeconds = WindowSeconds)
    {
        var sums = new double[powerW.Length];
        var counts = new byte[powerW.Length];
        foreach (var segment in segments)
        {
            double sum = 0;
            var count = 0;
            for (var i = segment.Start; i < segment.End; i++)
            {
                if (float.IsNaN(powerW[i]))
                {
                    (sum, count) = (0, 0);
                    continue;
                }
                sum += powerW[i];
                if (count == windowSeconds)
                    sum -= powerW[i - windowSeconds];
                else
                    count++;
                sums[i] = sum;
                counts[i] = (byte)count;
            }
        }
        return new TrailingPower(sums, counts, segments);
    }

    /// <summary>The seconds at or above one limit.</summary>
    internal readonly ref struct SecondsAtLeast
    {
        private readonly ReadOnlySpan<double> _sums;
        private readonly ReadOnlySpan<byte> _counts;
        private readonly double[] _limits;

        internal SecondsAtLeast(double[] sums, byte[] counts, double percent, double thresholdW)
        {
            _sums = sums;
            _counts = counts;
            _limits = new double[byte.MaxValue + 1];
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
