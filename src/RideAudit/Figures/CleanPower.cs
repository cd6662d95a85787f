using System.Collections.Immutable;
using RideAudit.Rides;
using RideAudit.Units;

namespace RideAudit.Figures;

/// <summary>A ride's power without spikes: worked out once, read by every figure and drawing.</summary>
internal sealed class CleanPower
{
    private readonly ImmutableArray<GridSegment> _segments;

    private ImmutableArray<BestPower> _bests;

    private CleanPower(float[] samples, int spikes, int count, ImmutableArray<GridSegment> segments) =>
        (Samples, Spikes, Count, _segments) = (samples, spikes, count, segments);

    /// <summary>Power on the grid, W, NaN where missing.</summary>
    public float[] Samples { get; }

    /// <summary>Seconds of impossible power left out.</summary>
    public int Spikes { get; }

    /// <summary>Seconds with power, above 0.</summary>
    public int Count { get; }

    /// <summary>The bests, worked out when first asked for: of most old rides nobody asks.</summary>
    public ImmutableArray<BestPower> Bests
    {
        get
        {
            if (_bests.IsDefault)
                _bests = BestPowers.Of(Samples, BestPowers.Durations);
            return _bests;
        }
    }

    /// <summary>The trailing mean. It is not kept: of years of rides it would be the most of what is in memory.</summary>
    /// <param name="windowSeconds">The window, s, 1 to 255.</param>
    public TrailingPower Over(int windowSeconds = TrailingPower.WindowSeconds) => TrailingPower.Of(Samples, _segments, windowSeconds);

    /// <summary>Cleans a ride's power; null for a ride without power.</summary>
    /// <param name="grid">The ride's grid.</param>
    /// <param name="threshold">Threshold power in force; null: only the absolute limit applies.</param>
    public static CleanPower? Of(SampleGrid grid, Watts? threshold) =>
        SpikeFilter.Clean(grid, threshold) is var (samples, spikes) && SampleGrid.CountValues(samples) is > 0 and var count
            ? new CleanPower(samples, spikes, count, grid.Segments)
            : null;
}
