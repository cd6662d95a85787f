using System.Collections.Immutable;
using RideAudit.Document;
using RideAudit.Figures;

namespace RideAudit.Review;

/// <summary>Turns ride figures into document entries.</summary>
internal static class RideEntries
{
    public static RideEntry Of(RideFigures ride, bool withStretches = false) => new()
    {
        File = ride.File,
        Parts = ride.Parts,
        StartsAt = ride.StartsAt,
        DurationSeconds = ride.DurationSeconds,
        ElapsedSeconds = ride.ElapsedSeconds,
        Sport = ride.Sport,
        Kind = ride.Kind,
        KindFrom = ride.KindFrom,
        LongEnough = ride.LongEnough,
        MeasuredBy = ride.MeasuredBy,
        MeanPowerW = ride.MeanPowerW,
        NormalisedPowerW = ride.NormalisedPower?.Value,
        IntensityRatio = ride.IntensityRatio,
        Stress = ride.Stress,
        StressFrom = ride.StressFrom,
        WorkKj = ride.WorkKj,
        ThresholdPowerW = ride.Threshold?.Power.Value,
        ThresholdFrom = ride.Threshold?.From,
        BandSeconds = ride.Bands.Entry(),
        ZoneSeconds = ride.Zones.Entry(),
        MeanHeartRateBpm = ride.MeanHeartRateBpm,
        HeartRateDriftPercent = ride.HeartRateDriftPercent,
        PowerCoverage = ride.PowerCoverage,
        HeartRateCoverage = ride.HeartRateCoverage,
        Partial = ride.Partial,
        DistanceKm = ride.DistanceM / 1000,
        Rating = ride.Rating,
        Note = ride.Note,
        BoutCount = ride.BoutCount,
        BoutSeconds = ride.BoutSeconds,
        BandCutsPercent = ride.Cuts is { } cuts ? [cuts.LowerPercent, cuts.UpperPercent] : null,
        BestPowers = [.. ride.Bests.Select(b => new BestPowerEntry(b.DurationSeconds, b.MeanW, b.StartSecond))],
        Stretches = withStretches ? Stretches(ride) : [],
        Repeats = withStretches ? RideRepeats.Of(ride) : [],
        Remarks = ride.Remarks,
    };

    private static ImmutableArray<StretchEntry> Stretches(RideFigures ride)
    {
        if (ride.Power is not { } power)
            return [];
        using var samples = power.Samples.Lend();
        var entries = ImmutableArray.CreateBuilder<StretchEntry>();
        foreach (var sustained in new[] { ride.AtThresholdShare, ride.AtHighShare }.OfType<SustainedTime>())
            foreach (var (start, end) in sustained.Runs)
                entries.Add(new StretchEntry(sustained.SharePercent, start, end, Channel.Mean(samples.Span[start..end])));
        return entries.ToImmutable();
    }
}
