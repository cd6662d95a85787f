using System.Collections.Immutable;
using System.Text.Json.Serialization;
using NodaTime;
using RideAudit.Document.Converters;
using RideAudit.Figures;
using RideAudit.Rides;
using RideAudit.Units;

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

    /// <summary>Timer time, s.</summary>
    [JsonConverter(typeof(Rounded.To0))]
    public required double DurationSeconds { get; init; }

    /// <summary>Time on the clock, s.</summary>
    [JsonConverter(typeof(Rounded.To0))]
    public required double ElapsedSeconds { get; init; }

    /// <summary>What was ridden.</summary>
    public required RideSport Sport { get; init; }

    /// <summary>What kind of ride it was; none under ten minutes.</summary>
    public required RideKind Kind { get; init; }

    /// <summary>What told the kind; none for an unrated ride.</summary>
    public KindSource KindFrom { get; init; }

    /// <summary>As long as the plan’s long ride and mostly low, whatever its kind.</summary>
    public bool LongEnough { get; init; }

    /// <summary>Which channel kind and bands came from; none for an unrated ride.</summary>
    public MeasureSource MeasuredBy { get; init; }

    /// <summary>Mean power, W.</summary>
    [JsonConverter(typeof(Rounded.To1))]
    public required double? MeanPowerW { get; init; }

    /// <summary>Normalised power, W.</summary>
    [JsonConverter(typeof(Rounded.To1))]
    public required double? NormalisedPowerW { get; init; }

    /// <summary>Intensity ratio.</summary>
    [JsonConverter(typeof(Rounded.To3))]
    public required double? IntensityRatio { get; init; }

    /// <summary>Training stress, points.</summary>
    [JsonConverter(typeof(Rounded.To1))]
    public required double? Stress { get; init; }

    /// <summary>Where the stress came from.</summary>
    public required StressSource StressFrom { get; init; }

    /// <summary>Work, kJ.</summary>
    [JsonConverter(typeof(Rounded.To1))]
    public required double? WorkKj { get; init; }

    /// <summary>Threshold power in force, W.</summary>
    [JsonConverter(typeof(Rounded.To1))]
    public required double? ThresholdPowerW { get; init; }

    /// <summary>Where the threshold power came from; null without one.</summary>
    public required ThresholdSource? ThresholdFrom { get; init; }

    /// <summary>Seconds in the bands.</summary>
    public required BandEntry BandSeconds { get; init; }

    /// <summary>Seconds in the seven power zones.</summary>
    [JsonConverter(typeof(Rounded.To0))]
    public required ImmutableArray<double> ZoneSeconds { get; init; }

    /// <summary>Mean heart rate, bpm.</summary>
    [JsonConverter(typeof(Rounded.To1))]
    public required double? MeanHeartRateBpm { get; init; }

    /// <summary>Heart-rate drift, %.</summary>
    [JsonConverter(typeof(Rounded.To1))]
    public required double? HeartRateDriftPercent { get; init; }

    /// <summary>Share of timer time with power, 0 to 1.</summary>
    [JsonConverter(typeof(Rounded.To3))]
    public required double PowerCoverage { get; init; }

    /// <summary>Share of timer time with heart rate, 0 to 1.</summary>
    [JsonConverter(typeof(Rounded.To3))]
    public required double HeartRateCoverage { get; init; }

    /// <summary>Power covers between half and nine tenths of the ride.</summary>
    public required bool Partial { get; init; }

    /// <summary>Distance, km.</summary>
    [JsonConverter(typeof(Rounded.To1))]
    public double? DistanceKm { get; init; }

    /// <summary>Rating from the ride log, 0 to 10.</summary>
    [JsonConverter(typeof(Rounded.To1))]
    public double? Rating { get; init; }

    /// <summary>What the ride log notes of it, as written; null without a note.</summary>
    public string? Note { get; init; }

    /// <summary>Bouts: short efforts well above threshold power.</summary>
    public int BoutCount { get; init; }

    /// <summary>Seconds in bouts.</summary>
    [JsonConverter(typeof(Rounded.To0))]
    public double BoutSeconds { get; init; }

    /// <summary>Limits of the low and the middle band, % of what <see cref="MeasuredBy"/> names; null without bands.</summary>
    public ImmutableArray<double>? BandCutsPercent { get; init; }

    /// <summary>Best mean powers.</summary>
    public ImmutableArray<BestPowerEntry> BestPowers { get; init; } = [];

    /// <summary>Best mean power over every whole duration, W, 1 s first; null unless asked for, and without power.</summary>
    [JsonConverter(typeof(Rounded.To1))]
    public ImmutableArray<double>? PowerCurveW { get; init; }

    /// <summary>Sustained stretches at or above 84 and 91 % of threshold power.</summary>
    public ImmutableArray<StretchEntry> Stretches { get; init; } = [];

    /// <summary>Repeats: the stretches of the lower share, else of the higher, those without a recovery between them taken as one; empty where neither has two.</summary>
    public ImmutableArray<StretchEntry> Repeats { get; init; } = [];

    /// <summary>Plain sentences about the ride's data.</summary>
    public ImmutableArray<string> Remarks { get; init; } = [];

    /// <summary>Hard: a high or a threshold ride.</summary>
    [JsonIgnore]
    public bool IsHard => Kind is RideKind.High or RideKind.Threshold;
}
