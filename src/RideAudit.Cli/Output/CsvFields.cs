using System.Globalization;
using NodaTime.Text;
using RideAudit.Document;
using RideAudit.Formatting;

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
        ("duration_seconds", r => r.DurationSeconds),
        ("elapsed_seconds", r => r.ElapsedSeconds),
        ("sport", r => r.Sport),
        ("kind", r => r.Kind),
        ("measured_by", r => r.MeasuredBy),
        ("mean_power_w", r => r.MeanPowerW),
        ("normalised_power_w", r => r.NormalisedPowerW),
        ("intensity_ratio", r => r.IntensityRatio),
        ("stress", r => r.Stress),
        ("stress_from", r => r.StressFrom),
        ("work_kj", r => r.WorkKj),
        ("threshold_power_w", r => r.ThresholdPowerW),
        ("threshold_from", r => r.ThresholdFrom),
        ("band_seconds.low", r => r.BandSeconds.Low),
        ("band_seconds.middle", r => r.BandSeconds.Middle),
        ("band_seconds.high", r => r.BandSeconds.High),
        ("zone_seconds.0", r => r.ZoneSeconds[0]),
        ("zone_seconds.1", r => r.ZoneSeconds[1]),
        ("zone_seconds.2", r => r.ZoneSeconds[2]),
        ("zone_seconds.3", r => r.ZoneSeconds[3]),
        ("zone_seconds.4", r => r.ZoneSeconds[4]),
        ("zone_seconds.5", r => r.ZoneSeconds[5]),
        ("zone_seconds.6", r => r.ZoneSeconds[6]),
        ("mean_heart_rate_bpm", r => r.MeanHeartRateBpm),
        ("heart_rate_drift_percent", r => r.HeartRateDriftPercent),
        ("power_coverage", r => r.PowerCoverage),
        ("heart_rate_coverage", r => r.HeartRateCoverage),
        ("partial", r => r.Partial),
        ("distance_km", r => r.DistanceKm),
        ("rating", r => r.Rating),
    ];

    /// <summary>Columns of <c>weeks</c>.</summary>
    public static IReadOnlyList<(string Name, Func<WeekEntry, object?> Value)> Weeks { get; } =
    [
        ("starts_on", w => Shown.Iso(w.StartsOn)),
        ("iso_week", w => w.IsoWeek),
        ("finished", w => w.Finished),
        ("hours", w => w.Hours),
        ("ride_count", w => w.RideCount),
        ("stress", w => w.Stress),
        ("stress_unknown_hours", w => w.StressUnknownHours),
        ("work_kj", w => w.WorkKj),
        ("band_seconds.low", w => w.BandSeconds.Low),
        ("band_seconds.middle", w => w.BandSeconds.Middle),
        ("band_seconds.high", w => w.BandSeconds.High),
        ("split_by_time.low", w => w.SplitByTime?.Low),
        ("split_by_time.middle", w => w.SplitByTime?.Middle),
        ("split_by_time.high", w => w.SplitByTime?.High),
        ("split_by_session.easy", w => w.SplitBySession?.Easy),
        ("split_by_session.hard", w => w.SplitBySession?.Hard),
        ("polarization_index", w => w.PolarizationIndex),
        ("structure", w => w.Structure),
        ("intended_low_share", w => w.IntendedLowShare),
        ("longest_ride_seconds", w => w.LongestRideSeconds),
        ("other_activity_hours", w => w.OtherActivityHours),
        ("exception", w => w.Exception),
        ("acute_load", w => w.AcuteLoad),
        ("chronic_load", w => w.ChronicLoad),
        ("ramp_per_week", w => w.RampPerWeek),
        ("acute_chronic_ratio", w => w.AcuteChronicRatio),
        ("settling_in", w => w.SettlingIn),
        ("monotony", w => w.Monotony),
        ("strain", w => w.Strain),
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
        ("need", r => r.Need),
        ("why", r => r.Why),
        ("week_starts_on", r => r.WeekStartsOn is { } d ? Shown.Iso(d) : null),
        ("broken", r => string.Join("; ", r.Broken)),
        ("watch", r => string.Join("; ", r.Watch)),
        ("not_judged", r => r.NotJudged),
        ("hours", r => r.Hours),
        ("planned_hours", r => r.PlannedHours),
        ("stress", r => r.Stress),
        ("low_share", r => r.LowShare),
        ("ramp_per_week", r => r.RampPerWeek),
        ("files_not_used", r => r.FilesNotUsed),
        ("review_file", r => r.ReviewFile),
        ("exception", r => r.Exception),
    ];
}
