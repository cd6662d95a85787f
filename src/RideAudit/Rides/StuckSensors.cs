namespace RideAudit.Rides;

/// <summary>Finds power and heart rate that a sensor or a device went on repeating: without any change for minutes while cadence or speed changes.</summary>
/// <remarks>
/// Common practice, no source. 0 W is what coasting down a pass looks like: it is stuck only where the cadence says that the rider pedals.
/// </remarks>
internal static class StuckSensors
{
    /// <summary>Shortest run of one value that is a stuck sensor, s of timer time.</summary>
    public const int LeastSeconds = 300;

    private const int Stride = LeastSeconds / 2;

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
    /// <returns>How many seconds were stuck.</returns>
    public static int Remove(Span<float> values, ReadOnlySpan<float> cadence, ReadOnlySpan<float> speed)
    {
        var removed = 0;
        for (int start = 0, end; start < values.Length; start = end)
        {
            for (end = start + 1; end < values.Length && values[end] == values[start];)
                end++;
            if (end - start < LeastSeconds || !RidesOn(values[start], cadence[start..end], speed[start..end]))
                continue;
            values[start..end].Fill(float.NaN);
            removed += end - start;
        }
        return removed;
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
