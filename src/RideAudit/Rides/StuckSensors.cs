namespace RideAudit.Rides;

/// <summary>Finds power and heart rate that a sensor or a device went on repeating: without any change for minutes while cadence or speed changes.</summary>
/// <remarks>
/// Common practice, no source. 0 W is what coasting down a pass looks like: it is stuck only where the cadence says that the rider pedals.
/// </remarks>
internal static class StuckSensors
{
    /// <summary>Shortest run of one value that is a stuck sensor, s of timer time.</summary>
    public const int LeastSeconds = 300;

    /// <summary>The grid without stuck values, and how many seconds of each channel were taken out.</summary>
    public static (SampleGrid Grid, int PowerSeconds, int HeartRateSeconds) Remove(SampleGrid grid)
    {
        var (power, powerSeconds) = Without(grid.PowerW, grid);
        var (heart, heartSeconds) = Without(grid.HeartRateBpm, grid);
        return (grid with { PowerW = power, HeartRateBpm = heart }, powerSeconds, heartSeconds);
    }

    private static (float[]? Values, int Removed) Without(float[]? values, SampleGrid grid)
    {
        if (values is null)
            return (null, 0);
        var removed = 0;
        for (int start = 0, end; start < values.Length; start = end)
        {
            for (end = start + 1; end < values.Length && values[end] == values[start];)
                end++;
            if (end - start < LeastSeconds || !RidesOn(grid, values[start], start, end))
                continue;
            values.AsSpan(start, end - start).Fill(float.NaN);
            removed += end - start;
        }
        return (Array.TrueForAll(values, float.IsNaN) ? null : values, removed);
    }

    private static bool RidesOn(SampleGrid grid, float value, int start, int end) => value == 0
        ? Pedals(grid.CadenceRpm, start, end) && Changes(grid.CadenceRpm, start, end)
        : Changes(grid.CadenceRpm, start, end) || Changes(grid.SpeedMps, start, end);

    private static bool Changes(float[]? values, int start, int end)
    {
        if (values is null)
            return false;
        var first = float.NaN;
        foreach (var value in values.AsSpan(start..end))
        {
            if (value != first && !float.IsNaN(value) && !float.IsNaN(first))
                return true;
            first = float.IsNaN(first) ? value : first;
        }
        return false;
    }

    private static bool Pedals(float[]? cadence, int start, int end)
    {
        var pedalled = 0;
        for (var i = start; cadence is not null && i < end; i++)
            if (cadence[i] > 0)
                pedalled++;
        return 2 * pedalled > end - start;
    }
}
