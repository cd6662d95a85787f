using System.Collections.Immutable;
using System.Text.Json.Serialization;
using NodaTime;

namespace RideAudit.Document;

/// <summary>One ride of the reviewed week, or one row of <c>rides</c>.</summary>
public sealed record RideEntry
{
    /// <summary>Path under the folder with <c>/</c>, unique in the document.</summary>
    public required string File { get; init; }

    /// <summary>The recordings it was joined from; empty when it is one.</summary>
    public required ImmutableArray<string> Parts { get; init; }

    /// <summary>Local start with offset.</summary>
    public required OffsetDateTime StartsAt { get; init; }

    /// <summary>Timer time, whole seconds.</summary>
    public required long DurationSeconds { get; init; }

    /// <summary>Time on the clock, whole seconds.</summary>
    public required long ElapsedSeconds { get; init; }

    /// <summary><c>cycling</c>, <c>road</c>, <c>mountain</c>, <c>gravel</c>, <c>indoor</c>, <c>virtual</c>, <c>e-bike</c>.</summary>
    public required string Sport { get; init; }

    /// <summary><c>recovery</c>, <c>endurance</c>, <c>unrated</c>, <c>long</c>, <c>threshold</c>, <c>high</c>; null under ten minutes.</summary>
    public required string? Kind { get; init; }

    /// <summary><c>power</c>, <c>heart rate</c>; null for an unrated ride.</summary>
    public string? MeasuredBy { get; init; }

    /// <summary>Mean power, W, one decimal.</summary>
    public required double? MeanPowerW { get; init; }

    /// <summary>Normalised power, W, one decimal.</summary>
    public required double? NormalisedPowerW { get; init; }

    /// <summary>Intensity ratio, three decimals.</summary>
    public required double? IntensityRatio { get; init; }

    /// <summary>Training stress, points, one decimal.</summary>
    public required double? Stress { get; init; }

    /// <summary><c>power</c>, <c>heart rate</c>, <c>rating</c>; null when unknown.</summary>
    public required string? StressFrom { get; init; }

    /// <summary>Work, kJ, one decimal.</summary>
    public required double? WorkKj { get; init; }

    /// <summary>Threshold power in force, W, one decimal.</summary>
    public required double? ThresholdPowerW { get; init; }

    /// <summary><c>rider file</c>, <c>rider file, first entry</c>, <c>recording</c>, <c>estimate</c>; null without one.</summary>
    public required string? ThresholdFrom { get; init; }

    /// <summary>Seconds in the bands.</summary>
    public required BandEntry BandSeconds { get; init; }

    /// <summary>Seconds in the seven power zones.</summary>
    public required ImmutableArray<long> ZoneSeconds { get; init; }

    /// <summary>Mean heart rate, bpm, one decimal.</summary>
    public required double? MeanHeartRateBpm { get; init; }

    /// <summary>Heart-rate drift, %, one decimal.</summary>
    public required double? HeartRateDriftPercent { get; init; }

    /// <summary>Share of timer time with power, 0 to 1.</summary>
    public required double PowerCoverage { get; init; }

    /// <summary>Share of timer time with heart rate, 0 to 1.</summary>
    public required double HeartRateCoverage { get; init; }

    /// <summary>Power covers between half and nine tenths of the ride.</summary>
    public required bool Partial { get; init; }

    /// <summary>Distance, km, one decimal.</summary>
    public double? DistanceKm { get; init; }

    /// <summary>Rating from the ride log, 0 to 10.</summary>
    public double? Rating { get; init; }

    /// <summary>Best mean powers.</summary>
    public ImmutableArray<BestPowerEntry> BestPowers { get; init; } = [];

    /// <summary>Best mean power over every whole duration, W, one decimal, 1 s first; null unless asked for, and without power.</summary>
    public ImmutableArray<double>? PowerCurveW { get; init; }

    /// <summary>Sustained stretches at or above 84 and 91 % of threshold power.</summary>
    public ImmutableArray<StretchEntry> Stretches { get; init; } = [];

    /// <summary>Plain sentences about the ride's data.</summary>
    public ImmutableArray<string> Remarks { get; init; } = [];

    /// <summary>What the ride's strip draws; null where a trace is not wanted.</summary>
    [JsonIgnore]
    public RideTrace? Trace { get; init; }
}
