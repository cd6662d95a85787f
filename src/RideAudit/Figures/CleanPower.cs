using System.Collections.Immutable;
using RideAudit.Rides;
using RideAudit.Units;

namespace RideAudit.Figures;

/// <summary>A ride's power without spikes: worked out once, read by every figure and drawing.</summary>
internal sealed class CleanPower
{
    private readonly ImmutableArray<GridSegment> _segments;
    private readonly Watts? _threshold;

    private ImmutableArray<BestPower> _bests;
    private ZoneSeconds? _zones;

    private CleanPower(PackedSamples samples, int spikes, ImmutableArray<GridSegment> segments, Watts? threshold) =>
        (Samples, Spikes, _segments, _threshold) = (samples, spikes, segments, threshold);

    /// <summary>Power on the grid, W, NaN where missing.</summary>
    public PackedSamples Samples { get; }

    /// <summary>The same in an array of its own.</summary>
    public float[] InFull()
    {
        var samples = new float[Samples.Count];
        Samples.CopyTo(0, samples);
        return samples;
    }

    /// <summary>Seconds of impossible power left out.</summary>
    public int Spikes { get; }

    /// <summary>Seconds with power, above 0.</summary>
    public int Count => Samples.Values;

    /// <summary>The bests, worked out when first asked for: of most old rides nobody asks where they lie.</summary>
    public ImmutableArray<BestPower> Bests
    {
        get
        {
            if (_bests.IsDefault)
            {
                using var samples = Samples.Lend();
                _bests = BestPowers.Of(samples.Span, BestPowers.Durations);
            }
            return _bests;
        }
    }

    /// <summary>The zones, worked out when first asked for; all 0 without a threshold power.</summary>
    public ZoneSeconds Zones
    {
        get
        {
            if (_zones is null && _threshold is { } threshold)
            {
                using var samples = Samples.Lend();
                _zones = PowerZones.Of(samples.Span, threshold);
            }
            return _zones ?? default;
        }
    }

    /// <summary>A pause lies within a range of grid seconds, its ends included.</summary>
    public bool HasPauseWithin(int from, int to) => _segments.Skip(1).Any(s => s.Start >= from && s.Start <= to);

    /// <summary>The trailing mean. It is not kept: of years of rides it would be the most of what is in memory.</summary>
    /// <param name="windowSeconds">The window, s, 1 to 255.</param>
    public TrailingPower Over(int windowSeconds = TrailingPower.WindowSeconds)
    {
        using var samples = Samples.Lend();
        return TrailingPower.Of(samples.Span, _segments, windowSeconds);
    }

    /// <summary>Cleans a ride's power; null for a ride without power.</summary>
    /// <param name="grid">The ride's grid.</param>
    /// <param name="threshold">Threshold power in force; null: only the absolute limit applies.</param>
    public static CleanPower? Of(SampleGrid grid, Watts? threshold) =>
        SpikeFilter.Clean(grid, threshold) is var (samples, spikes) && samples.Values > 0
            ? new CleanPower(samples, spikes, grid.Segments, threshold)
            : null;
}
