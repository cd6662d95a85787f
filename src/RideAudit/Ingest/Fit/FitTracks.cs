using RideAudit.Fit;
using RideAudit.Fit.Messages;
using RideAudit.Rides;

namespace RideAudit.Ingest.Fit;

/// <summary>Cuts one session's samples and timer events out of a part.</summary>
internal static class FitTracks
{
    /// <param name="part">May hold other sessions as well.</param>
    /// <param name="clock">Gives the part's times after repair.</param>
    /// <param name="session">For its totals; null where the part has no summary.</param>
    /// <param name="window">The time whose samples and events are taken.</param>
    /// <param name="withPower">False where the power is not the rider's.</param>
    public static Track Of(FitPart part, FitClock clock, FitSession? session, FitSessions.Window window, bool withPower)
    {
        var seconds = Inside(clock, window, out var rows);
        var records = part.Records;
        return new Track
        {
            Seconds = seconds,
            PowerW = withPower ? Power(records, rows) : [],
            HeartRateBpm = Pick(records.HeartRate, rows),
            CadenceRpm = records.Declared.HasFlag(FitChannels.Cadence) ? Pick(records.Cadence, rows) : [],
            SpeedMps = records.Declared.HasFlag(FitChannels.Speed) ? Pick(records.SpeedMps, rows) : [],
            DistanceM = records.Declared.HasFlag(FitChannels.Distance) ? Distance(part, clock, rows, window) : [],
            TimerEvents = clock.EventsCount ? Timer(part, clock, window) : [],
            StoredTimerSeconds = session?.TotalTimerSeconds,
            StoredElapsedSeconds = session?.TotalElapsedSeconds,
        };
    }

    /// <summary>The seconds of the records that belong to the session.</summary>
    /// <param name="rows">Which records these are; null for all of them, as in most files.</param>
    private static ReadOnlySpan<long> Inside(FitClock clock, FitSessions.Window window, out int[]? rows)
    {
        rows = null;
        if (window == FitSessions.Window.All && clock.AllSeconds is { IsEmpty: false } all)
            return all;
        var (inside, seconds) = (new List<int>(), new List<long>());
        for (var i = 0; i < clock.Records; i++)
            if (clock.TryGetSecond(i, out var second) && window.Holds(second))
            {
                inside.Add(i);
                seconds.Add(second);
            }
        rows = [.. inside];
        return seconds.ToArray();
    }

    /// <summary>Events by time, never by place: some devices write them all at the end.</summary>
    private static List<Track.TimerEvent> Timer(FitPart part, FitClock clock, FitSessions.Window window)
    {
        var all = part.Events
            .Where(e => e.Timestamp is not null && (e.StartsTimer || e.StopsTimer))
            .Select(e => (Event: new Track.TimerEvent(clock.Unix(e.Timestamp!.Value), e.StartsTimer), e.FileOrder))
            .OrderBy(e => e.Event.Second).ThenBy(e => e.FileOrder)
            .Select(e => e.Event)
            .ToList();
        var inside = all.Where(e => e.Second >= window.From && (e.Second < window.To || (!e.Starts && e.Second == window.To))).ToList();
        // A timer started in an earlier session runs on through this one.
        if (inside.Count == 0 && all.LastOrDefault(e => e.Second < window.From) is { Starts: true })
            inside.Add(new Track.TimerEvent(window.From, true));
        return inside;
    }

    /// <summary>Native power; where there is none, that of a developer field. A native field of zeros alone is no sensor.</summary>
    private static ReadOnlySpan<float> Power(RecordChannels records, int[]? rows)
    {
        var native = Pick(records.Power, rows);
        var developer = Pick(records.DeveloperPower, rows);
        if (developer.IsEmpty)
            return native;
        var power = native.ToArray();
        var isDead = !Array.Exists(power, p => p > 0);
        for (var i = 0; i < power.Length; i++)
            if (isDead || float.IsNaN(power[i]))
                power[i] = developer[i];
        return power;
    }

    private static ReadOnlySpan<float> Pick(ReadOnlySpan<float> channel, int[]? rows)
    {
        if (rows is null || channel.IsEmpty)
            return channel;
        var picked = new float[rows.Length];
        for (var i = 0; i < picked.Length; i++)
            picked[i] = channel[rows[i]];
        return picked;
    }

    /// <summary>Distance from the session's own start: most devices count on from the session before, some begin again.</summary>
    private static ReadOnlySpan<double> Distance(FitPart part, FitClock clock, int[]? rows, FitSessions.Window window)
    {
        var distances = part.Records.DistanceM;
        if (rows is null)
            return distances;
        var before = 0.0;
        for (var i = 0; window.From != long.MinValue && i < distances.Length; i++)
            if (!double.IsNaN(distances[i]) && clock.TryGetSecond(i, out var second) && second < window.From)
                before = distances[i];
        foreach (var row in rows)
            if (distances[row] < before)
                before = 0;
        var picked = new double[rows.Length];
        for (var i = 0; i < picked.Length; i++)
            picked[i] = distances[rows[i]] - before;
        return picked;
    }
}
