using System.Collections.Immutable;
using NodaTime;
using RideAudit.Rides;
using RideAudit.Units;

namespace RideAudit.Figures;

/// <summary>Everything known about one ride, computed once from its samples and never changed.</summary>
public sealed record RideFigures
{
    /// <summary>The ride's name: path under the folder with <c>/</c>, unique in a review.</summary>
    public required string File { get; init; }

    /// <summary>The recordings it was joined from, in order; one for most rides.</summary>
    public ImmutableArray<string> Parts { get; init; } = [];

    /// <summary>Local start with its offset.</summary>
    public required OffsetDateTime StartsAt { get; init; }

    /// <summary>Timer time, s.</summary>
    public required double DurationSeconds { get; init; }

    /// <summary>First to last second on the clock, s; at least the timer time.</summary>
    public required double ElapsedSeconds { get; init; }

    /// <summary>What was ridden.</summary>
    public RideSport Sport { get; init; }

    /// <summary>What kind of ride it was.</summary>
    public required RideKind Kind { get; init; }

    /// <summary>What <see cref="Kind"/> was told by.</summary>
    public KindSource KindFrom { get; init; }

    /// <summary>As long as the plan's long ride, give or take what the limits allow, and enough of it low, whatever its kind.</summary>
    public bool LongEnough { get; init; }

    /// <summary>Which channel <see cref="Bands"/> came from.</summary>
    public MeasureSource MeasuredBy { get; init; }

    /// <summary>Mean of the seconds with power, W; null without power.</summary>
    public double? MeanPowerW { get; init; }

    /// <summary>Normalised power; null without a full 30 s window.</summary>
    public Watts? NormalisedPower { get; init; }

    /// <summary>Normalised power over threshold power; null without either.</summary>
    public double? IntensityRatio { get; init; }

    /// <summary>Training stress, points; null when nothing could say.</summary>
    public double? Stress { get; init; }

    /// <summary>Where <see cref="Stress"/> came from.</summary>
    public StressSource StressFrom { get; init; }

    /// <summary>Work, kJ; null without power.</summary>
    public double? WorkKj { get; init; }

    /// <summary>The threshold power in force; null when none is known.</summary>
    public ThresholdInForce? Threshold { get; init; }

    /// <summary>Threshold heart rate in force, bpm; null when unknown.</summary>
    public double? ThresholdHeartRateBpm { get; init; }

    /// <summary>Seconds in the intensity bands; all 0 when no channel could say.</summary>
    public BandSeconds Bands { get; init; }

    /// <summary>The cuts of <see cref="Bands"/>, % of threshold power or of threshold heart rate as <see cref="MeasuredBy"/> says; null without bands.</summary>
    public BandCuts? Cuts { get; init; }

    /// <summary>Seconds in the power zones; all 0 without power and threshold.</summary>
    public ZoneSeconds Zones
    {
        get => _zones ?? Power?.Zones ?? default;
        init => _zones = value;
    }

    /// <summary>Time at or above the threshold share, 84 % of threshold power by default; null without power and threshold.</summary>
    public SustainedTime? AtThresholdShare { get; init; }

    /// <summary>Time at or above the high share, 105 % of threshold power by default; null without power and threshold.</summary>
    public SustainedTime? AtHighShare { get; init; }

    /// <summary>Time at or above the share of long work close to threshold, 91 % of threshold power by default; null without power and threshold.</summary>
    public SustainedTime? NearThreshold { get; init; }

    /// <summary>Bouts: short efforts at or above 120 % of threshold power by default.</summary>
    public int BoutCount { get; init; }

    /// <summary>Seconds in bouts.</summary>
    public double BoutSeconds { get; init; }

    private readonly ImmutableArray<BestPower> _bests;
    private readonly ZoneSeconds? _zones;

    /// <summary>Best mean powers at 5 s, 1, 3, 5, 12, 20, 60 min, as far as the ride holds them.</summary>
    public ImmutableArray<BestPower> Bests
    {
        get => !_bests.IsDefault ? _bests : Power?.Bests ?? [];
        init => _bests = value;
    }

    /// <summary>The best mean over 1, 5 or 20 minutes, W; null where the ride does not hold it.</summary>
    /// <param name="seconds">60, 300 or 1200.</param>
    internal double? BestMeanW(int seconds)
    {
        if (_bests.IsDefault)
            return TrendBests.Of(seconds);
        foreach (var best in _bests)
            if (best.DurationSeconds == seconds)
                return best.MeanW;
        return null;
    }

    /// <summary>Bests without where they lie, worked out for every ride; none without power.</summary>
    internal TrendBests TrendBests { get; init; }

    /// <summary>Mean heart rate, bpm; null without heart rate.</summary>
    public double? MeanHeartRateBpm { get; init; }

    /// <summary>Heart-rate load, points; null without the heart rates it needs.</summary>
    public double? HeartRateLoad { get; init; }

    /// <summary>Session rating, 0 to 10, from the ride log or the recording; null without one.</summary>
    public double? Rating { get; init; }

    /// <summary>Load from the rating, points; null without a rating.</summary>
    public double? RatedLoad { get; init; }

    /// <summary>Heart-rate drift, %; null where the ride does not qualify.</summary>
    public double? HeartRateDriftPercent { get; init; }

    /// <summary>Seconds with power over timer seconds, 0 to 1.</summary>
    public double PowerCoverage { get; init; }

    /// <summary>Seconds with heart rate over timer seconds, 0 to 1.</summary>
    public double HeartRateCoverage { get; init; }

    /// <summary>Power covers between half and nine tenths of the ride: its power figures are partial.</summary>
    public bool Partial { get; init; }

    /// <summary>Distance, m; null without one.</summary>
    public double? DistanceM { get; init; }

    /// <summary>Plain sentences about this ride's data (spikes left out, recovered file, partial power).</summary>
    public ImmutableArray<string> Remarks { get; init; } = [];

    /// <summary>What the ride log notes about the ride, as written; null without a note.</summary>
    public string? Note { get; init; }

    /// <summary>The power that the figures were computed from; null where power is missing or not used.</summary>
    internal CleanPower? Power { get; init; }

    /// <summary>Local date of the start: the day the ride belongs to.</summary>
    public LocalDate Date => StartsAt.Date;

    /// <summary>Local end on the clock, at the start's offset.</summary>
    public OffsetDateTime EndsAt => StartsAt.PlusNanoseconds((long)(ElapsedSeconds * 1e9));

    /// <summary>A high or threshold ride.</summary>
    public bool IsHard => Kind is RideKind.High or RideKind.Threshold;
}
