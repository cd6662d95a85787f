using System.Globalization;
using NodaTime.Text;
using RideAudit.Document;
using RideAudit.Figures;
using RideAudit.Formatting;
using RideAudit.Rides;
using RideAudit.Rules;
using RideAudit.Units;

namespace RideAudit.Cli.Output;

/// <summary>The columns of the CSV outputs: each header is the path of the same value in the JSON.</summary>
internal static class CsvFields
{
    /// <summary>Columns of <c>rides</c>.</summary>
    public static IReadOnlyList<(string Name, Func<RideEntry, object?> Value)> Rides { get; } =
    [
        ("file", r => r.File),
        ("parts", r => r.Parts.IsDefaultOrEmpty ? null : string.Join("; ", r.Parts)),
        ("starts_at", r => OffsetDateTimePattern.Rfc3339.Format(r.StartsAt)),
        ("duration_seconds", r => r.DurationSeconds.To(0)),
        ("elapsed_seconds", r => r.ElapsedSeconds.To(0)),
        ("sport", r => Words.OrNull<RideSport>(r.Sport)),
        ("kind", r => Words.OrNull<RideKind>(r.Kind)),
        ("measured_by", r => Words.OrNull<MeasureSource>(r.MeasuredBy)),
        ("mean_power_w", r => r.MeanPowerW.To(1)),
        ("normalised_power_w", r => r.NormalisedPowerW.To(1)),
        ("intensity_ratio", r => r.IntensityRatio.To(3)),
        ("stress", r => r.Stress.To(1)),
        ("stress_from", r => Words.OrNull<StressSource>(r.StressFrom)),
        ("work_kj", r => r.WorkKj.To(1)),
        ("threshold_power_w", r => r.ThresholdPowerW.To(1)),
        ("threshold_from", r => Words.OrNull(r.ThresholdFrom)),
        ("band_seconds.low", r => r.BandSeconds.Low.To(0)),
        ("band_seconds.middle", r => r.BandSeconds.Middle.To(0)),
        ("band_seconds.high", r => r.BandSeconds.High.To(0)),
        ("zone_seconds.0", r => r.ZoneSeconds[0].To(0)),
        ("zone_seconds.1", r => r.ZoneSeconds[1].To(0)),
        ("zone_seconds.2", r => r.ZoneSeconds[2].To(0)),
        ("zone_seconds.3", r => r.ZoneSeconds[3].To(0)),
        ("zone_seconds.4", r => r.ZoneSeconds[4].To(0)),
        ("zone_seconds.5", r => r.ZoneSeconds[5].To(0)),
        ("zone_seconds.6", r => r.ZoneSeconds[6].To(0)),
        ("mean_heart_rate_bpm", r => r.MeanHeartRateBpm.To(1)),
        ("heart_rate_drift_percent", r => r.HeartRateDriftPercent.To(1)),
        ("power_coverage", r => r.PowerCoverage.To(3)),
        ("heart_rate_coverage", r => r.HeartRateCoverage.To(3)),
        ("partial", r => r.Partial),
        ("distance_km", r => r.DistanceKm.To(1)),
        ("rating", r => r.Rating.To(1)),
    ];

    /// <summary>Columns of <c>weeks</c>.</summary>
    public static IReadOnlyList<(string Name, Func<WeekEntry, object?> Value)> Weeks { get; } =
    [
        ("starts_on", w => Shown.Iso(w.StartsOn)),
        ("iso_week", w => w.IsoWeek?.ToString()),
        ("finished", w => w.Finished),
        ("hours", w => w.Hours.To(2)),
        ("ride_count", w => w.RideCount),
        ("stress", w => w.Stress.To(1)),
        ("stress_unknown_hours", w => w.StressUnknownHours.To(2)),
        ("work_kj", w => w.WorkKj.To(0)),
        ("band_seconds.low", w => w.BandSeconds.Low.To(0)),
        ("band_seconds.middle", w => w.BandSeconds.Middle.To(0)),
        ("band_seconds.high", w => w.BandSeconds.High.To(0)),
        ("split_by_time.low", w => (w.SplitByTime?.Low).To(4)),
        ("split_by_time.middle", w => (w.SplitByTime?.Middle).To(4)),
        ("split_by_time.high", w => (w.SplitByTime?.High).To(4)),
        ("split_by_session.easy", w => (w.SplitBySession?.Easy).To(4)),
        ("split_by_session.hard", w => (w.SplitBySession?.Hard).To(4)),
        ("polarization_index", w => w.PolarizationIndex.To(2)),
        ("structure", w => Words.OrNull(w.Structure)),
        ("intended_low_share", w => w.IntendedLowShare.To(4)),
        ("longest_ride_seconds", w => w.LongestRideSeconds.To(0)),
        ("other_activity_hours", w => w.OtherActivityHours.To(2)),
        ("exception", w => Words.OrNull(w.Exception)),
        ("acute_load", w => w.AcuteLoad.To(1)),
        ("chronic_load", w => w.ChronicLoad.To(1)),
        ("ramp_per_week", w => w.RampPerWeek.To(1)),
        ("acute_chronic_ratio", w => w.AcuteChronicRatio.To(2)),
        ("settling_in", w => w.SettlingIn),
        ("monotony", w => w.Monotony.To(2)),
        ("strain", w => w.Strain.To(1)),
    ];

    /// <summary>Columns of <c>rules</c>.</summary>
    public static IReadOnlyList<(string Name, Func<RuleEntry, object?> Value)> Rules { get; } =
    [
        ("rule", r => r.Rule),
        ("limits", r => string.Join("; ", r.Limits.Select(l => $"{l.Name}={l.Value?.ToString("R", CultureInfo.InvariantCulture)}"))),
        ("evidence", r => Words.Of(r.Evidence)),
        ("source", r => r.Source),
        ("sentence", r => r.Sentence),
    ];

    /// <summary>Columns of <c>roster</c>.</summary>
    public static IReadOnlyList<(string Name, Func<RosterEntry, object?> Value)> Roster { get; } =
    [
        ("folder", r => r.Folder),
        ("label", r => r.Label),
        ("need", r => Words.OrNull<RosterNeed>(r.Need)),
        ("why", r => r.Why),
        ("week_starts_on", r => r.WeekStartsOn is { } d ? Shown.Iso(d) : null),
        ("broken", r => string.Join("; ", r.Broken)),
        ("watch", r => string.Join("; ", r.Watch)),
        ("not_judged", r => r.NotJudged),
        ("hours", r => r.Hours.To(2)),
        ("planned_hours", r => r.PlannedHours.To(2)),
        ("stress", r => r.Stress.To(1)),
        ("low_share", r => r.LowShare.To(4)),
        ("ramp_per_week", r => r.RampPerWeek.To(1)),
        ("files_not_used", r => r.FilesNotUsed),
        ("review_file", r => r.ReviewFile),
        ("exception", r => Words.OrNull(r.Exception)),
        ("planned_sessions", r => r.PlannedSessions),
        ("planned_sessions_done", r => r.PlannedSessionsDone),
        ("note", r => r.Note),
        ("next_event", r => r.NextEvent is { } next ? Shown.Iso(next.From) : null),
        .. RuleBook.Standard.Ids.Select(rule => (rule, (Func<RosterEntry, object?>)(r => r.Verdicts.FirstOrDefault(v => v.Rule == rule) is { } known ? Words.Of(known.Verdict) : null))),
    ];

    /// <summary>Columns of the weeks to come of a roster.</summary>
    public static IReadOnlyList<(string Name, Func<RosterSession, object?> Value)> Next { get; } =
    [
        ("folder", r => r.Folder),
        ("label", r => r.Label),
        ("date", r => Shown.Iso(r.Date)),
        ("kind", r => Words.Of(r.Session.Kind)),
        ("minutes", r => r.Session.Minutes > 0 ? r.Session.Minutes : null),
        ("session", r => r.Session.Session),
        ("stress", r => r.Session.ExpectedStress.To(0)),
        ("note", r => r.Session.Sentence.Replace('\u00A0', ' ')),
    ];
}
