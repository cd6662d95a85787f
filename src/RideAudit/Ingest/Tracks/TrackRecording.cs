using NodaTime;
using RideAudit.Rides;

namespace RideAudit.Ingest.Tracks;

/// <summary>Makes a recording of rows from a text format.</summary>
internal static class TrackRecording
{
    /// <summary>A longer timer time without a sample to prove it is not believed, s.</summary>
    public const double LongestTimerSeconds = 2 * 86_400;

    public const string TotalsOnly = "The recording has totals and no records: only its hours count.";

    /// <param name="name">The name the recording is shown under.</param>
    /// <param name="sport">Decides whether samples and power are kept.</param>
    /// <param name="rows">At least one, in the order of the file.</param>
    /// <param name="zero">Unix second of the rows' second 0.</param>
    /// <param name="storedTimerSeconds">The recording's own timer time; null without one.</param>
    /// <param name="fileOffset">Local minus universal time as its timestamps write it, s; null without one.</param>
    /// <param name="context">For the zone where the file has no offset.</param>
    /// <param name="said">Sentences of the reader's own about the data.</param>
    /// <returns>Null when no second was ridden.</returns>
    public static Recording? Of(
        string name, RideSport sport, SampleRows rows, long zero, double? storedTimerSeconds, long? fileOffset, IngestContext context, params IEnumerable<string> said)
    {
        var remarks = new List<string>(said);
        var track = rows.ToTrack(zero, storedTimerSeconds, remarks);
        if (sport == RideSport.EBike && !track.PowerW.IsEmpty)
            remarks.Add(TrackRemarks.EBike);
        else if (!track.PowerW.IsEmpty && !track.PowerW.ContainsAnyInRange(float.Epsilon, float.PositiveInfinity))
            remarks.Add(TrackRemarks.AllZero);
        var gridded = GridBuilder.Build(track, context.KeepsAll);
        if (gridded.Grid.Length == 0)
            return null;
        var start = Instant.FromUnixTimeSeconds(gridded.StartSecond);
        var (offset, offsetFrom) = LocalOffsets.Decide([fileOffset], start, context);
        return new Recording
        {
            File = name,
            Sport = sport,
            Start = start,
            Offset = offset,
            OffsetFrom = offsetFrom,
            Grid = sport switch
            {
                RideSport.Other => SampleGrid.Empty,
                RideSport.EBike => gridded.Grid with { PowerW = null },
                _ => gridded.Grid,
            },
            TimerSeconds = gridded.TimerSeconds,
            ElapsedSeconds = gridded.ElapsedSeconds,
            Remarks = [.. remarks, .. TrackRemarks.Of(gridded)],
        };
    }

    /// <summary>An activity without samples still was riding: its hours count, nothing else is known.</summary>
    /// <returns>Null when the length cannot be one of an activity.</returns>
    public static Recording? OfTotals(string name, RideSport sport, long startSecond, double timerSeconds, long? fileOffset, IngestContext context)
    {
        if (timerSeconds is not (> 0 and <= LongestTimerSeconds))
            return null;
        var start = Instant.FromUnixTimeSeconds(startSecond);
        var (offset, offsetFrom) = LocalOffsets.Decide([fileOffset], start, context);
        return new Recording
        {
            File = name,
            Sport = sport,
            Start = start,
            Offset = offset,
            OffsetFrom = offsetFrom,
            Grid = SampleGrid.Empty,
            TimerSeconds = timerSeconds,
            ElapsedSeconds = timerSeconds,
            Remarks = [TotalsOnly],
        };
    }
}
