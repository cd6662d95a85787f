using NodaTime;
using RideAudit.Fit;
using RideAudit.Fit.Messages;
using RideAudit.Ingest.Tracks;
using RideAudit.Rides;
using RideAudit.Units;

namespace RideAudit.Ingest.Fit;

/// <summary>Turns one part of a FIT file into recordings: one a session.</summary>
internal sealed class FitPartReader(string name, FitPart part, FitClock clock, IngestContext context)
{
    private const double LongestElapsedSeconds = 7 * 86_400;
    private const int LeastThresholdW = 50;
    private const int MostThresholdW = 700;

    public IEnumerable<Recording> Recordings() =>
        FitSessions.Of(part, clock).Select(s => Build(s.Session, s.Window)).OfType<Recording>();

    private Recording? Build(FitSession? session, FitSessions.Window window)
    {
        var sport = FitSports.Of(session?.Sport ?? part.Sport?.Sport, session?.SubSport ?? part.Sport?.SubSport);
        var track = FitTracks.Of(part, clock, session, window, withPower: sport != RideSport.EBike);
        var gridded = GridBuilder.Build(track, context.KeepsAll);
        if (gridded.Grid.Length == 0)
            return FromTotals(session, sport);
        var start = Instant.FromUnixTimeSeconds(gridded.StartSecond);
        var (offset, offsetFrom) = LocalOffset(start);
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
            StoredThreshold = StoredThreshold(session),
            StoredRating = Rating(session),
            Remarks = [.. clock.Remarks, .. Remarks(sport, session), .. TrackRemarks.Of(gridded)],
        };
    }

    /// <summary>A session without records still was riding: its hours count, nothing else is known.</summary>
    private Recording? FromTotals(FitSession? session, RideSport sport)
    {
        if (session is not { StartTime: { } startTime, TotalTimerSeconds: { } timer and > 0 and <= TrackRecording.LongestTimerSeconds })
            return null;
        var start = Instant.FromUnixTimeSeconds(clock.Unix(startTime));
        var (offset, offsetFrom) = LocalOffset(start);
        return new Recording
        {
            File = name,
            Sport = sport,
            Start = start,
            Offset = offset,
            OffsetFrom = offsetFrom,
            Grid = SampleGrid.Empty,
            TimerSeconds = timer,
            ElapsedSeconds = session.TotalElapsedSeconds is { } elapsed && elapsed >= timer && elapsed <= LongestElapsedSeconds ? elapsed : timer,
            StoredRating = Rating(session),
            Remarks = [.. clock.Remarks, TrackRecording.TotalsOnly],
        };
    }

    /// <summary>In order of trust: the closing message, a correlation of clocks, the rider's zone; the device's setting, often left wrong, only where no zone is given. Never the position.</summary>
    private (Offset Offset, OffsetSource From) LocalOffset(Instant start) =>
        LocalOffsets.Decide(clock.DateFromName ? [] : StoredOffsets(), start, context);

    private IEnumerable<long?> StoredOffsets()
    {
        yield return part.Activity?.LocalOffsetSeconds;
        foreach (var correlation in part.TimestampCorrelations)
            yield return correlation.LocalOffsetSeconds;
        if (!context.ZoneIsTheMachines)
            yield break;
        foreach (var settings in part.DeviceSettings)
            yield return settings.TimeOffsetSeconds;
    }

    private Watts? StoredThreshold(FitSession? session)
    {
        var stored = session?.ThresholdPower ?? part.ZonesTargets.LastOrDefault(z => z.ThresholdPower is not null)?.ThresholdPower;
        return stored is >= LeastThresholdW and <= MostThresholdW ? new Watts(stored.Value) : null;
    }

    private static double? Rating(FitSession? session) => session?.EffortRating is { } effort and >= 0 and <= 100 ? effort / 10.0 : null;

    private IEnumerable<string> Remarks(RideSport sport, FitSession? session)
    {
        foreach (var sentence in PowerRemarks(sport))
            yield return sentence;
        if (session is null)
            yield return "The recording has no summary of its own; times come from its records.";
        if (session?.Sport is null && part.Sport?.Sport is null)
            yield return "The recording does not say what sport it is: it is taken as a ride.";
    }

    private IEnumerable<string> PowerRemarks(RideSport sport)
    {
        var hasDeveloper = part.Records.DeveloperPower.Length > 0;
        if (sport != RideSport.EBike && !hasDeveloper && part.Records.Power.ContainsAnyInRange(float.Epsilon, float.PositiveInfinity))
            yield break;
        var power = part.Records.PowerFacts;
        if (sport == RideSport.EBike && (power.Values > 0 || hasDeveloper))
            yield return TrackRemarks.EBike;
        else if (hasDeveloper && (power.Values == 0 || power.IsAllZero))
            yield return TrackRemarks.Developer;
        else if (power.IsAllZero)
            yield return TrackRemarks.AllZero;
        else if (hasDeveloper && power.Invalid + power.Absent > 0)
            yield return TrackRemarks.DeveloperInGaps;
    }
}
