using System.Collections.Immutable;
using RideAudit.Document;
using RideAudit.Units;

namespace RideAudit.Review;

/// <summary>Bands, zones and splits as the document holds them.</summary>
internal static class SecondsEntries
{
    public static BandEntry Entry(this BandSeconds bands) => new(bands.Low, bands.Middle, bands.High);

    public static ImmutableArray<double> Entry(this ZoneSeconds zones) => [.. zones.ToArray()];

    public static SplitEntry? Split(this BandSeconds bands) => bands.Total > 0
        ? new SplitEntry(bands.Low / bands.Total, bands.Middle / bands.Total, bands.High / bands.Total)
        : null;
}
