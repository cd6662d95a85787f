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

    private const int Stride = LeastSeconds / 2;
    private const int LeastTargetSeconds = 60;
    private const int LongestStepSeconds = 30;
    private const int FewestTargets = 3;

    /// <summary>True where a channel may have a run long enough: such a run holds two looked-at seconds, half of it apart, and all between them.</summary>
    /// <param name="values">The channel on the grid, NaN where missing.</param>
    public static bool AnyStandsStill(ReadOnlySpan<float> values)
    {
        for (var i = 0; i + Stride < values.Length; i += Stride)
            if (values[i] == values[i + Stride] && !values.Slice(i, Stride).ContainsAnyExcept(values[i]))
                return true;
        return false;
    }

    /// <summary>Makes stuck values missing.</summary>
    /// <param name="values">Power or heart rate on the grid, NaN where missing.</param>
    /// <param name="cadence">Cadence on the grid.</param>
    /// <param name="speed">Speed on the grid.</param>
    /// <param name="mayBeTargets">The values may be those that a trainer holds.</param>
    /// <returns>How many seconds were stuck.</returns>
    public static int Remove(Span<float> values, ReadOnlySpan<float> cadence, ReadOnlySpan<float> speed, bool mayBeTargets)
    {
        var runs = RunsOf(values, LeastSeconds);
        var targets = mayBeTargets && runs.Count > 0 ? TargetsIn(values) : [];
        var removed = 0;
        foreach (var (start, end) in runs)
        {
            if (targets.Contains(start) || !RidesOn(values[start], cadence[start..end], speed[start..end]))
                continue;
            values[start..end].Fill(float.NaN);
            removed += end - start;
        }
        return removed;
    }

    /// <summary>Where a trainer’s targets begin.</summary>
    private static HashSet<int> TargetsIn(ReadOnlySpan<float> power)
    {
        var flat = new List<(int Start, int End)>();
        foreach (var run in RunsOf(power, LeastTargetSeconds))
            if (power[run.Start] > 0)
                flat.Add(run);
        var targets = new HashSet<int>();
        for (var i = 1; i < flat.Count && flat.Count >= FewestTargets; i++)
        {
            if (flat[i].Start - flat[i - 1].End > LongestStepSeconds || power[flat[i].Start] == power[flat[i - 1].Start])
                continue;
            targets.Add(flat[i - 1].Start);
            targets.Add(flat[i].Start);
        }
        return targets;
    }

    private static List<(int Start, int End)> RunsOf(ReadOnlySpan<float> values, int least)
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

    private static bool RidesOn(float value, ReadOnlySpan<float> cadence, ReadOnlySpan<float> speed) => value == 0
        ? Pedals(cadence) && Changes(cadence)
        : Changes(cadence) || Changes(speed);

    private static bool Changes(ReadOnlySpan<float> values)
    {
        var first = float.NaN;
        foreach (var value in values)
        {
            if (value != first && !float.IsNaN(value) && !float.IsNaN(first))
                return true;
            first = float.IsNaN(first) ? value : first;
        }
        return false;
    }

    private static bool Pedals(ReadOnlySpan<float> cadence)
    {
        var pedalled = 0;
        foreach (var rpm in cadence)
            if (rpm > 0)
                pedalled++;
        return 2 * pedalled > cadence.Length;
    }
}
