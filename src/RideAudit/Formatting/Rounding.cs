namespace RideAudit.Formatting;

/// <summary>Rounds figures once, as every output prints them: halves away from zero.</summary>
internal static class Rounding
{
    public static double To(this double value, int decimals) => Math.Round(value, decimals, MidpointRounding.AwayFromZero) + 0.0;

    public static double? To(this double? value, int decimals) => value?.To(decimals);

    public static long Whole(this double seconds) => (long)Math.Round(seconds, MidpointRounding.AwayFromZero);
}
