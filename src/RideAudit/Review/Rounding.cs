using System.Collections.Immutable;
using RideAudit.Units;

namespace RideAudit.Review;

/// <summary>Rounds figures once, as every output prints them: halves away from zero.</summary>
internal static class Rounding
{
    public static double To(this double value, int decimals) => Math.Round(value, decimals, MidpointRounding.AwayFromZero) + 0.0;

    public static double? To(this double? value, int decimals) => value?.To(decimals);

    public static long Whole(this double seconds) => (long)Math.Round(seconds, MidpointRounding.AwayFromZero);

    public static BandEntry Entry(this BandSeconds bands) => new(bands.Low.Whole(), bands.Middle.Whole(), bands.High.Whole());

    public static ImmutableArray<long> Entry(this ZoneSeconds zones) => [.. zones.ToArray().Select(Whole)];

    public static SplitEntry? Split(this BandSeconds bands) => bands.Total > 0
        ? new SplitEntry((bands.Low / bands.Total).To(4), (bands.Middle / bands.Total).To(4), (bands.High / bands.Total).To(4))
        : null;
}
