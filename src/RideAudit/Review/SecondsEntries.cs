using System.Collections.Immutable;
using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Units;

namespace RideAudit.Review;

/// <summary>Bands, zones and splits as the document holds them.</summary>
internal static class SecondsEntries
{
    public static BandEntry Entry(this BandSeconds bands) => new(bands.Low.Whole(), bands.Middle.Whole(), bands.High.Whole());

    public static ImmutableArray<long> Entry(this ZoneSeconds zones) => [.. zones.ToArray().Select(s => s.Whole())];

    public static SplitEntry? Split(this BandSeconds bands) => bands.Total > 0
        ? new SplitEntry((bands.Low / bands.Total).To(4), (bands.Middle / bands.Total).To(4), (bands.High / bands.Total).To(4))
        : null;
}
