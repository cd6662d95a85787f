using System.Collections.Immutable;
using RideAudit.Rides;
using RideAudit.Units;

namespace RideAudit.Figures;

/// <summary>Takes out power values that no rider produced.</summary>
/// <remarks>
/// Above 2,500 W; or a lone second above three times both its neighbours and above three times threshold power. Real sprints last longer and stay.
/// A spike is missing power, and missing power of up to 3 s holds the last value. Common practice, no source.
/// </remarks>
internal static class SpikeFilter
{
    /// <summary>Power above this is a fault, W.</summary>
    public const float HighestPowerW = 2500;

    private const float TimesNeighbours = 3;
    private const double TimesThreshold = 3;

    /// <summary>Cleans the power of a grid.</summary>
    /// <param name="grid">The grid; it is not changed.</param>
    /// <param name="threshold">Threshold power; without it only the absolute limit applies.</param>
    /// <returns>The power without spikes (the grid's own when there are none), and how many seconds of them there were; null without power.</returns>
    public static (PackedSamples PowerW, int Spikes)? Clean(SampleGrid grid, Watts? threshold)
    {
        if (grid.PowerW is not { } power)
            return null;
        var least = Math.Min(HighestPowerW, TimesThreshold * (threshold?.Value ?? HighestPowerW));
        return power.Highest > least ? Clean(power, grid.Segments, least) : (power, 0);
    }

    private static (PackedSamples PowerW, int Spikes) Clean(PackedSamples recorded, ImmutableArray<GridSegment> segments, double least)
    {
        using var power = recorded.Lend();
        using var cleaned = recorded.Lend();
        var spikes = 0;
        foreach (var segment in segments)
            for (var i = segment.Start; i < segment.End; i++)
            {
                if (!(power.Span[i] > least) || !(power.Span[i] > HighestPowerW || IsLone(power.Span, i, segment)))
                    continue;
                cleaned.Span[i] = float.NaN;
                spikes++;
            }
        if (spikes == 0)
            return (recorded, 0);
        foreach (var segment in segments)
            HoldOverSpikes(cleaned.Span.Slice(segment.Start, segment.Length), power.Span.Slice(segment.Start, segment.Length));
        return (PackedSamples.Of(cleaned.Span), spikes);
    }

    private static void HoldOverSpikes(Span<float> cleaned, ReadOnlySpan<float> power)
    {
        for (var start = 1; start < cleaned.Length; start++)
        {
            if (!float.IsNaN(cleaned[start]) || float.IsNaN(cleaned[start - 1]))
                continue;
            var end = start;
            var onlySpikes = true;
            for (; end < cleaned.Length && float.IsNaN(cleaned[end]); end++)
                onlySpikes &= !float.IsNaN(power[end]);
            if (onlySpikes && end - start <= GridBuilder.LongestHeldPowerSeconds)
                cleaned[start..end].Fill(cleaned[start - 1]);
            start = end;
        }
    }

    private static bool IsLone(ReadOnlySpan<float> power, int i, GridSegment segment) =>
        i > segment.Start && i + 1 < segment.End
        && power[i] > TimesNeighbours * power[i - 1]
        && power[i] > TimesNeighbours * power[i + 1];
}
