using RideAudit.Rides;
using RideAudit.Units;

namespace RideAudit.Figures;

/// <summary>Takes out power values that no rider produced.</summary>
/// <remarks>Above 2,500 W; or a lone second above three times both its neighbours and above three times threshold power. Real sprints last longer and stay. Common practice, no source.</remarks>
public static class SpikeFilter
{
    /// <summary>Power above this is a fault, W.</summary>
    public const float HighestPowerW = 2500;

    private const float TimesNeighbours = 3;
    private const double TimesThreshold = 3;

    /// <summary>Cleans the power of a grid.</summary>
    /// <param name="grid">The grid; it is not changed.</param>
    /// <param name="threshold">Threshold power; without it only the absolute limit applies.</param>
    /// <returns>The power with spikes missing (the grid's own array when there are none), and how many there were; null without power.</returns>
    public static (float[] PowerW, int Spikes)? Clean(SampleGrid grid, Watts? threshold)
    {
        if (grid.PowerW is not { } power)
            return null;
        float[]? cleaned = null;
        var spikes = 0;
        foreach (var segment in grid.Segments)
            for (var i = segment.Start; i < segment.End; i++)
            {
                if (!(power[i] > HighestPowerW) && !IsLone(power, i, segment, threshold))
                    continue;
                cleaned ??= (float[])power.Clone();
                cleaned[i] = float.NaN;
                spikes++;
            }
        return (cleaned ?? power, spikes);
    }

    private static bool IsLone(float[] power, int i, GridSegment segment, Watts? threshold) =>
        threshold is { } t
        && power[i] > TimesThreshold * t.Value
        && i > segment.Start && i + 1 < segment.End
        && power[i] > TimesNeighbours * power[i - 1]
        && power[i] > TimesNeighbours * power[i + 1];
}
