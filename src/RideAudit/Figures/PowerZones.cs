using RideAudit.Units;

namespace RideAudit.Figures;

/// <summary>Time in the seven power zones on 1 Hz power, half-open limits.</summary>
/// <remarks>Limits 55, 75, 90, 105, 120, 150 % of threshold power (Allen and Coggan; from memory). The printed table has whole-number ranges; half-open is our choice.</remarks>
internal static class PowerZones
{
    /// <summary>Upper limits of zones 1 to 6, % of threshold power.</summary>
    public static IReadOnlyList<int> UpperLimitsPercent { get; } = [55, 75, 90, 105, 120, 150];

    private const int Zones = 7;

    /// <summary>The zone of one power, 1 to 7.</summary>
    /// <param name="threshold">Threshold power, W, above 0.</param>
    public static int ZoneOf(double powerW, Watts threshold)
    {
        Span<double> limits = stackalloc double[Zones - 1];
        Limits(threshold, limits);
        return ZoneOf(100 * powerW, limits);
    }

    /// <summary>Seconds in each zone; seconds without power are in none.</summary>
    /// <param name="powerW">Power on the grid, W, NaN where missing.</param>
    /// <param name="threshold">Threshold power, W, above 0.</param>
    public static ZoneSeconds Of(ReadOnlySpan<float> powerW, Watts threshold)
    {
        Span<double> limits = stackalloc double[Zones - 1];
        Limits(threshold, limits);
        Span<int> seconds = stackalloc int[Zones + 1];
        foreach (var power in powerW)
            if (!float.IsNaN(power))
                seconds[ZoneOf(100.0 * power, limits)]++;
        return new ZoneSeconds(seconds[1], seconds[2], seconds[3], seconds[4], seconds[5], seconds[6], seconds[7]);
    }

    private static void Limits(Watts threshold, Span<double> limits)
    {
        for (var i = 0; i < limits.Length; i++)
            limits[i] = UpperLimitsPercent[i] * threshold.Value * TrailingPower.OnTheLimit;
    }

    private static int ZoneOf(double hundredfoldW, ReadOnlySpan<double> limits)
    {
        var zone = 1;
        foreach (var limit in limits)
            zone += hundredfoldW >= limit ? 1 : 0;
        return zone;
    }
}
