using System.Collections.Immutable;
using System.Globalization;
using RideAudit.Rides;

namespace RideAudit.Ingest.Tracks;

/// <summary>Says in plain sentences what is not used of a track, or not as it is stored.</summary>
internal static class TrackRemarks
{
    public const string EBike = "E-bike: its power is not the rider’s alone and is not used.";
    public const string AllZero = "Power is 0 throughout: no sensor, not a measurement.";
    public const string Developer = "Power comes from an added data field of the recording.";
    public const string DeveloperInGaps = "Where the recording has no power of its own, that of an added data field is used.";

    /// <summary>What laying it on the grid had to repair.</summary>
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

    /// <summary>Samples too far apart to tell riding from standing.</summary>
    public static FileNotice Sparse(string name) => new(
        name, "sparse", null, "Most of its samples are more than 10 s apart, so nearly all of its time counts as pauses: export it with a sample every second.", false);
}
