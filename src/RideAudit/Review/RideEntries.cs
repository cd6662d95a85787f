using System.Collections.Immutable;
using RideAudit.Document;
using RideAudit.Figures;
using RideAudit.Formatting;
using RideAudit.Rides;

namespace RideAudit.Review;

/// <summary>Turns ride figures into document entries.</summary>
internal static class RideEntries
{
    public static RideEntry Of(RideFigures ride, Ride? source = null) => new()
    {
        File = ride.File,
        Parts = ride.Parts,
        StartsAt = ride.StartsAt,
        DurationSeconds = ride.DurationSeconds.Whole(),
        ElapsedSeconds = ride.ElapsedSeconds.Whole(),
        Sport = Words.Of(ride.Sport),
        Kind = Words.Of(ride.Kind),
        MeasuredBy = Words.Of(ride.MeasuredBy),
        MeanPowerW = ride.MeanPowerW.To(1),
        NormalisedPowerW = ride.NormalisedPower?.Value.To(1),
        IntensityRatio = ride.IntensityRatio.To(3),
        Stress = ride.Stress.To(1),
        StressFrom = Words.Of(ride.StressFrom),
        WorkKj = ride.WorkKj.To(1),
        ThresholdPowerW = ride.Threshold?.Power.Value.To(1),
        ThresholdFrom = ride.Threshold is { } threshold ? Words.Of(threshold.From) : null,
        BandSeconds = ride.Bands.Entry(),
        ZoneSeconds = ride.Zones.Entry(),
        MeanHeartRateBpm = ride.MeanHeartRateBpm.To(1),
        HeartRateDriftPercent = ride.HeartRateDriftPercent.To(1),
        PowerCoverage = ride.PowerCoverage.To(3),
        HeartRateCoverage = ride.HeartRateCoverage.To(3),
        Partial = ride.Partial,
        DistanceKm = (ride.DistanceM / 1000).To(1),
        Rating = ride.Rating.To(1),
        BestPowers = [.. ride.Bests.Select(b => new BestPowerEntry(b.DurationSeconds, b.MeanW.To(1), b.StartSecond))],
        Stretches = source is null ? [] : Stretches(ride),
        Remarks = ride.Remarks,
        Trace = source is null ? null : RideTracer.Trace(source, ride),
    };

    private static ImmutableArray<StretchEntry> Stretches(RideFigures ride)
    {
        if (ride.Power is not { } power)
            return [];
        return [.. new[] { ride.AtThresholdShare, ride.AtHighShare }
            .OfType<SustainedTime>()
            .SelectMany(s => s.Runs.Select(run => new StretchEntry(s.SharePercent, run.Start, run.End, Channel.Mean(power.Samples.AsSpan()[run.Start..run.End]).To(1))))];
    }
}
