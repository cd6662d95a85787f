using System.Collections.Immutable;
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
        if (track.StoredTimerRefused)
            remarks.Add("The file’s own timer time contradicts its records: the records' time is used.");
        return remarks.ToImmutable();
    }
}
