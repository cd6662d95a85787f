namespace RideAudit.Formatting;

/// <summary>Rounds a figure once, as every output prints it: halves away from zero.</summary>
public static class Rounding
{
    /// <summary>The value with so many decimals; never a negative zero.</summary>
    /// <param name="value">Unrounded.</param>
    /// <param name="decimals">0 to 15.</param>
    public static double To(this double value, int decimals) => Math.Round(value, decimals, MidpointRounding.AwayFromZero) + 0.0;

    /// <summary>The value with so many decimals; null stays null.</summary>
    /// <param name="value">Unrounded.</param>
    /// <param name="decimals">0 to 15.</param>
    public static double? To(this double? value, int decimals) => value?.To(decimals);

    /// <summary>The nearest whole number.</summary>
    /// <param name="value">Finite, within ±9.2e18.</param>
    public static long Whole(this double value) => (long)Math.Round(value, MidpointRounding.AwayFromZero);
}
