using RideAudit.Fit;
using RideAudit.Fit.Messages;
using RideAudit.Rides;

namespace RideAudit.Ingest;

/// <summary>Cuts one session's samples and timer events out of a part.</summary>
internal static class FitTracks
{
    public static Track Of(FitPart part, FitClock clock, FitSession? session, long from, long to, bool withPower)
    {
        var rows = new List<int>(part.Records.Count);
        for (var i = 0; i < part.Records.Count; i++)
            if (clock.SecondOf(i) is { } second && second >= from && second < to)
                rows.Add(i);
        var records = part.Records;
        return new Track
        {
            Seconds = [.. rows.Select(i => clock.SecondOf(i)!.Value)],
            PowerW = withPower ? Power(records, rows) : null,
            HeartRateBpm = Pick(records.HeartRate, rows),
            CadenceRpm = Pick(records.Cadence, rows),
            SpeedMps = Pick(records.SpeedMps, rows),
            AltitudeM = Pick(records.AltitudeM, rows),
            DistanceM = Distance(records, rows),
            TimerEvents = [.. part.Events
                .Where(e => e.Timestamp is not null && (e.StartsTimer || e.StopsTimer))
                .OrderBy(e => e.Timestamp).ThenBy(e => e.FileOrder)
                .Select(e => new TimerEvent(clock.Unix(e.Timestamp!.Value), e.StartsTimer))
                .Where(e => e.Second >= from && e.Second <= to)],
            StoredTimerSeconds = session?.TotalTimerSeconds,
            StoredElapsedSeconds = session?.TotalElapsedSeconds,
        };
    }

    private static float[] Power(RecordChannels records, List<int> rows)
    {
        var power = Pick(records.Power, rows);
        var developer = records.DeveloperPower;
        if (developer.IsEmpty)
            return power;
        for (var i = 0; i < power.Length; i++)
            if (float.IsNaN(power[i]))
                power[i] = developer[rows[i]];
        return power;
    }

    private static float[] Pick(ReadOnlySpan<float> channel, List<int> rows)
    {
        var picked = new float[rows.Count];
        for (var i = 0; i < picked.Length; i++)
            picked[i] = channel[rows[i]];
        return picked;
    }

    private static float[] Distance(RecordChannels records, List<int> rows)
    {
        var distances = records.DistanceM;
        var picked = new float[rows.Count];
        for (var i = 0; i < picked.Length; i++)
            picked[i] = (float)distances[rows[i]];
        return picked;
    }
}
