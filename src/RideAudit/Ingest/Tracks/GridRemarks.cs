using System.Collections.Immutable;
using System.Globalization;
using RideAudit.Rides;

namespace RideAudit.Ingest.Tracks;

/// <summary>Says in plain sentences what laying a track on the grid had to repair.</summary>
internal static class GridRemarks
{
    public static ImmutableArray<string> Of(GriddedTrack track)
    {
        var remarks = ImmutableArray.CreateBuilder<string>();
        if (track.ImplausibleHeartRates > 0)
            remarks.Add($"{track.ImplausibleHeartRates} heart-rate {(track.ImplausibleHeartRates == 1 ? "value" : "values")} outside 30 to 230 bpm left out.");
        if (track.StuckPowerSeconds > 0)
            remarks.Add($"Power did not change at all for {Minutes(track.StuckPowerSeconds)} while the ride went on: those count as missing; check the sensor.");
        if (track.StuckHeartRateSeconds > 0)
            remarks.Add($"Heart rate did not change at all for {Minutes(track.StuckHeartRateSeconds)} while the ride went on: those count as missing; check the sensor.");
        if (track.StoredTimerRefused)
            remarks.Add("The file’s own timer time contradicts its records: the records' time is used.");
        return remarks.ToImmutable();
    }

    /// <summary>Never fewer than five: a stuck sensor is one from there on.</summary>
    private static string Minutes(int seconds) => string.Create(CultureInfo.InvariantCulture, $"{Math.Round(seconds / 60.0)} minutes");
}
