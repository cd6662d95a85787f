using NodaTime;
using RideAudit.Ingest;
using RideAudit.Plan;
using RideAudit.Rides;

namespace RideAudit.Fuzz;

/// <summary>What must hold of the readers of rides and archives for any bytes, through the door by which files come in.</summary>
internal static class FolderInvariants
{
    private static readonly Rider Rider = new() { TimeZone = DateTimeZoneProviders.Tzdb["Europe/Lisbon"] };

    public static string Check(byte[] bytes, string name)
    {
        var content = Read(bytes, name);
        foreach (var notice in content.Notices)
        {
            Invariant.RequireSentence(notice.Sentence);
            Invariant.Require(!notice.Sentence.Contains("should not happen", StringComparison.Ordinal), "no reader throws: " + notice.Sentence);
        }
        foreach (var recording in content.Recordings)
            Check(recording);
        var again = Read(bytes, name);
        Invariant.Require(content.Notices.Select(n => (n.File, n.Sentence, n.Unusable)).SequenceEqual(again.Notices.Select(n => (n.File, n.Sentence, n.Unusable))), "the same bytes give the same notices");
        Invariant.Require(content.Recordings.Select(r => (r.File, r.Start, r.TimerSeconds)).SequenceEqual(again.Recordings.Select(r => (r.File, r.Start, r.TimerSeconds))), "and the same rides");
        return $"{content.Recordings.Length} recordings, {content.LoggedRides.Length} logged rides, {content.Plan.Sessions.Length} planned sessions, {content.Notices.Length} notices";
    }

    private static FolderContent Read(byte[] bytes, string name)
    {
        var intake = new Intake(Rider, DateTimeZone.Utc);
        intake.Add(name, new MemoryStream(bytes, writable: false));
        return intake.Finish();
    }

    private static void Check(Recording recording)
    {
        Invariant.Require(recording.TimerSeconds > 0 && recording.ElapsedSeconds >= recording.TimerSeconds - 1, "a recording has time, and no less on the clock");
        Invariant.Require(recording.Offset.Seconds is >= -12 * 3600 and <= 14 * 3600, "an offset is one that exists");
        Invariant.Require(recording.Grid.Length == recording.Grid.Segments.Sum(s => s.Length), "a grid is as long as its segments");
        var grid = recording.Grid;
        // Endless power is still there: it is counted and taken out with the other spikes.
        Invariant.Require(grid.PowerW is null || grid.PowerW.All(v => float.IsNaN(v) || v >= 0), "power is missing or from 0");
        foreach (var channel in new[] { grid.HeartRateBpm, grid.CadenceRpm, grid.SpeedMps })
            Invariant.Require(channel is null || (channel.Count == grid.Length && channel.All(v => float.IsNaN(v) || (float.IsFinite(v) && v >= 0))), "a value is missing, or a number from 0");
        Invariant.Require(grid.Distance.All(d => float.IsFinite(d.FromM) && float.IsFinite(d.ToM) && d.FromM >= 0), "a distance is a number from 0");
    }
}
