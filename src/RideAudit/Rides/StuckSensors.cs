namespace RideAudit.Rides;

/// <summary>Finds power and heart rate that a sensor or a device went on repeating: without any change for minutes while cadence or speed changes.</summary>
/// <remarks>
/// Common practice, no source. 0 W is what coasting down a pass looks like: it is stuck only where the cadence says that the rider pedals.
/// A trainer that holds the power may write its target instead of what it measured: stretches of a minute and more at one value, one right after the other
/// at another. Such power is believed, for a sensor that stuck does not go on at the next target.
/// </remarks>
internal static class StuckSensors
{
    /// <summary>Shortest run of one value that is a stuck sensor, s of timer time.</summary>
    public const int LeastSeconds = 300;

    private const int LeastTargetSeconds = 60;
    private const int LongestStepSeconds = 30;
    private const int FewestTargets = 3;

    /// <summary>The grid without stuck values, and how many seconds of each channel were taken out.</summary>
    public static (SampleGrid Grid, int PowerSeconds, int HeartRateSeconds) Remove(SampleGrid grid)
    {
        var (power, powerSeconds) = Without(grid.PowerW, grid, TargetsIn(grid.PowerW));
        var (heart, heartSeconds) = Without(grid.HeartRateBpm, grid, []);
        return (grid with { PowerW = power, HeartRateBpm = heart }, powerSeconds, heartSeconds);
    }

    private static (float[]? Values, int Removed) Without(float[]? values, SampleGrid grid, HashSet<int> targets)
    {
        if (values is null)
            return (null, 0);
        var removed = 0;
        foreach (var (start, end) in RunsOf(values, LeastSeconds))
        {
            if (targets.Contains(start) || !RidesOn(grid, values[start], start, end))
                continue;
            values.AsSpan(start, end - start).Fill(float.NaN);
            removed += end - start;
        }
        return (Array.TrueForAll(values, float.IsNaN) ? null : values, removed);
    }

    /// <summary>Where a trainer’s targets begin.</summary>
    private static HashSet<int> TargetsIn(float[]? power)
    {
        var flat = power is null ? [] : RunsOf(power, LeastTargetSeconds).Where(r => power[r.Start] > 0).ToList();
        var targets = new HashSet<int>();
        for (var i = 1; i < flat.Count && flat.Count >= FewestTargets; i++)
        {
            if (flat[i].Start - flat[i - 1].End > LongestStepSeconds || power![flat[i].Start] == power[flat[i - 1].Start])
                continue;
            targets.Add(flat[i - 1].Start);
            targets.Add(flat[i].Start);
        }
        return targets;
    }

    private static List<(int Start, int End)> RunsOf(float[] values, int least)
    {
        var runs = new List<(int, int)>();
        for (int start = 0, end; start < values.Length; start = end)
        {
            for (end = start + 1; end < values.Length && values[end] == values[start];)
                end++;
            if (end - start >= least)
                runs.Add((start, end));
        }
        return runs;
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
