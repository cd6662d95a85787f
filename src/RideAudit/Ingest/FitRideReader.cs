using NodaTime;
using RideAudit.Fit;
using RideAudit.Fit.Messages;
using RideAudit.Rides;
using RideAudit.Units;

namespace RideAudit.Ingest;

/// <summary>Turns a decoded FIT file into recordings: one a session, one a part where there is no session.</summary>
internal static class FitRideReader
{
    public static FileContent Read(string name, byte[] bytes, IngestContext context)
    {
        var file = FitDecoder.Decode(bytes);
        if (file.Rejection is { } rejection)
            return FileContent.Unusable(name, FitNotices.Problem(rejection), FitNotices.Sentence(rejection));
        var recordings = new List<Recording>();
        var notices = new List<FileNotice>();
        var parts = file.Parts.Where(p => p.Continues is null).ToArray();
        foreach (var part in parts.Where(p => p.IsActivity))
            ReadPart(name, part, context, recordings, notices);
        if (recordings.Count == 0)
            return new FileContent { Notices = [notices.FirstOrDefault() ?? FitNotices.NothingToUse(name, parts)] };
        if (FitNotices.Damage(name, file) is { } damage)
            notices.Add(damage);
        return new FileContent { Recordings = [.. Numbered(name, recordings)], Notices = [.. notices] };
    }

    private static IEnumerable<Recording> Numbered(string name, List<Recording> recordings) =>
        recordings.Select((r, i) => i == 0 ? r : r with { File = $"{name}#{i + 1}" });

    private static void ReadPart(string name, FitPart part, IngestContext context, List<Recording> recordings, List<FileNotice> notices)
    {
        var clock = FitClock.Repair(part, name, context);
        if (clock is null)
        {
            notices.Add(new FileNotice(name, "clock not set", null, "The device’s clock was never set, so the date of this ride is unknown: put the date in the file’s name, such as 2026-05-05.fit.", true));
            return;
        }
        var sessions = part.Sessions.Where(s => s.StartTime is not null).OrderBy(s => s.StartTime).ToArray();
        if (sessions.Length <= 1)
        {
            Add(recordings, Build(name, part, clock, sessions.FirstOrDefault() ?? part.Sessions.FirstOrDefault(), long.MinValue, long.MaxValue, context));
            return;
        }
        for (var i = 0; i < sessions.Length; i++)
        {
            var from = i == 0 ? long.MinValue : clock.Unix(sessions[i].StartTime!.Value);
            var to = i + 1 < sessions.Length ? clock.Unix(sessions[i + 1].StartTime!.Value) : long.MaxValue;
            Add(recordings, Build(name, part, clock, sessions[i], from, to, context));
        }
    }

    private static void Add(List<Recording> recordings, Recording? recording)
    {
        if (recording is not null)
            recordings.Add(recording);
    }

    private static Recording? Build(
        string name, FitPart part, FitClock clock, FitSession? session, long from, long to, IngestContext context)
    {
        var sport = FitSports.Of(session?.Sport ?? part.Sport?.Sport, session?.SubSport ?? part.Sport?.SubSport, part.Sport is null && session is null);
        var track = FitTracks.Of(part, clock, session, from, to, withPower: sport != RideSport.EBike);
        var gridded = GridBuilder.Build(track);
        if (gridded.Grid.Length == 0)
            return FromTotals(name, part, clock, session, sport, context);
        var start = Instant.FromUnixTimeSeconds(gridded.StartSecond);
        var (offset, offsetFrom) = LocalOffset(part, start, context);
        return new Recording
        {
            File = name,
            Sport = sport,
            Start = start,
            Offset = offset,
            OffsetFrom = offsetFrom,
            Grid = sport == RideSport.Other ? SampleGrid.Empty : gridded.Grid,
            TimerSeconds = gridded.TimerSeconds,
            ElapsedSeconds = gridded.ElapsedSeconds,
            StoredThreshold = StoredThreshold(part, session),
            StoredRating = session?.EffortRating is { } effort and >= 0 and <= 100 ? effort / 10.0 : null,
            Remarks = [.. clock.Remarks, .. Remarks(part, sport), .. GridRemarks.Of(gridded)],
        };
    }

    /// <summary>A session without records still was riding: its hours count, nothing else is known.</summary>
    private static Recording? FromTotals(
        string name, FitPart part, FitClock clock, FitSession? session, RideSport sport, IngestContext context)
    {
        if (session is not { StartTime: { } startTime, TotalTimerSeconds: > 0 and < 86_400 * 2 })
            return null;
        var start = Instant.FromUnixTimeSeconds(clock.Unix(startTime));
        var (offset, offsetFrom) = LocalOffset(part, start, context);
        var timer = session.TotalTimerSeconds.Value;
        return new Recording
        {
            File = name,
            Sport = sport,
            Start = start,
            Offset = offset,
            OffsetFrom = offsetFrom,
            Grid = SampleGrid.Empty,
            TimerSeconds = timer,
            ElapsedSeconds = session.TotalElapsedSeconds is { } elapsed && elapsed >= timer && elapsed < 86_400 * 7 ? elapsed : timer,
            Remarks = [.. clock.Remarks, "The file has totals and no records: only its hours count."],
        };
    }

    private static (Offset Offset, OffsetSource From) LocalOffset(FitPart part, Instant start, IngestContext context)
    {
        var zone = context.OffsetAt(start);
        var stored = new[] { part.Activity?.LocalOffsetSeconds }.Concat(part.TimestampCorrelations.Select(t => t.LocalOffsetSeconds));
        foreach (var seconds in stored)
            if (seconds is { } s && s % 900 == 0 && s is >= -12 * 3600 and <= 14 * 3600 && (s != 0 || zone == Offset.Zero))
                return (Offset.FromSeconds((int)s), OffsetSource.File);
        return (zone, context.ZoneSource);
    }

    private static Watts? StoredThreshold(FitPart part, FitSession? session)
    {
        var stored = session?.ThresholdPower ?? part.ZonesTargets.LastOrDefault(z => z.ThresholdPower is not null)?.ThresholdPower;
        return stored is >= 50 and <= 700 ? new Watts(stored.Value) : null;
    }

    private static IEnumerable<string> Remarks(FitPart part, RideSport sport)
    {
        if (sport == RideSport.EBike && part.Records.PowerFacts.Values > 0)
            yield return "E-bike: its power is not the rider’s alone and is not used.";
        else if (part.Records.PowerFacts.IsAllZero)
            yield return "Power is 0 throughout: no sensor, not a measurement.";
        else if (part.Records.PowerFacts.Values == 0 && part.Records.DeveloperPower.Length > 0)
            yield return "Power comes from an added data field of the recording.";
        if (part.Integrity is { HasSession: false })
            yield return "The recording has no summary of its own; times come from its records.";
    }
}
