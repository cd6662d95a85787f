using System.Collections.Immutable;
using RideAudit.Plan;
using RideAudit.Rides;
using RideAudit.Units;

namespace RideAudit.Figures;

/// <summary>Computes the figures of rides.</summary>
public static class FigureBuilder
{
    /// <summary>Below this share of timer time with power, power figures are marked partial.</summary>
    public const double PartialCoverage = 0.90;

    /// <summary>Below this share a channel is not used.</summary>
    public const double UsableCoverage = 0.50;

    /// <summary>Computes the figures of every ride.</summary>
    /// <param name="rides">The rides in order of start.</param>
    /// <param name="rider">Thresholds, heart rates, band cuts.</param>
    /// <param name="limits">The limits that kinds are read by.</param>
    public static ImmutableArray<RideFigures> Build(ImmutableArray<Ride> rides, Rider rider, Limits limits)
    {
        var thresholds = new ThresholdBook(rider, rides);
        return [.. rides.Select(r => Build(r, thresholds.PowerFor(r), thresholds.HeartRateFor(r.Date), rider, limits))];
    }

    /// <summary>Computes the figures of one ride.</summary>
    /// <param name="ride">The ride.</param>
    /// <param name="threshold">Threshold power in force; null when none is known.</param>
    /// <param name="thresholdBpm">Threshold heart rate in force, bpm; null when none is known.</param>
    /// <param name="rider">Heart rates, sex, band cuts.</param>
    /// <param name="limits">The limits that kinds are read by.</param>
    public static RideFigures Build(Ride ride, ThresholdInForce? threshold, double? thresholdBpm, Rider rider, Limits limits)
    {
        var figures = new RideFigures
        {
            File = ride.File,
            Parts = ride.Parts.Length > 1 ? ride.Parts : [],
            StartsAt = ride.StartsAt,
            DurationSeconds = ride.TimerSeconds,
            ElapsedSeconds = ride.ElapsedSeconds,
            Sport = ride.Sport,
            Kind = ride.TimerSeconds < limits.KindLeastMinutes * 60 ? RideKind.None : RideKind.Unrated,
            Threshold = threshold,
            ThresholdHeartRateBpm = thresholdBpm,
            DistanceM = LastValue(ride.Grid.DistanceM),
            Rating = ride.Rating,
            RatedLoad = ride.Rating is { } rating ? RatedLoad.Of(rating, ride.TimerSeconds / 60) : null,
            Remarks = ride.Remarks,
        };
        figures = WithHeartRate(figures, ride, rider, limits);
        figures = WithPower(figures, ride, rider, limits);
        return WithStress(WithLog(figures, ride.Logged));
    }

    private static RideFigures WithHeartRate(RideFigures figures, Ride ride, Rider rider, Limits limits)
    {
        if (ride.Grid.HeartRateBpm is not { } heart || SampleGrid.CountValues(heart) is not (> 0 and var count))
            return figures;
        var mean = Mean(heart, count);
        figures = figures with
        {
            MeanHeartRateBpm = mean,
            HeartRateCoverage = Math.Min(1, count / ride.TimerSeconds),
        };
        if (figures.ThresholdHeartRateBpm is not { } threshold || figures.HeartRateCoverage < UsableCoverage)
            return figures;
        var bands = IntensityBands.OfHeartRate(heart, threshold, limits.HeartRateLowerCutPercent, limits.HeartRateUpperCutPercent);
        return figures with
        {
            HeartRateLoad = HeartRateLoad.Of(heart, ride.TimerSeconds, rider, threshold),
            Bands = bands,
            Kind = KindOfRide.FromHeartRate(ride.TimerSeconds, bands, mean, threshold, limits),
            MeasuredBy = MeasureSource.HeartRate,
        };
    }

    private static RideFigures WithPower(RideFigures figures, Ride ride, Rider rider, Limits limits)
    {
        if (SpikeFilter.Clean(ride.Grid, figures.Threshold?.Power) is not var (power, spikes)
            || SampleGrid.CountValues(power) is not (> 0 and var count))
            return figures;
        var coverage = Math.Min(1, count / ride.TimerSeconds);
        figures = figures with { PowerCoverage = coverage, Remarks = [.. figures.Remarks, .. PowerRemarks(coverage, spikes)] };
        if (coverage < UsableCoverage)
            return figures;
        var trailing = TrailingPower.Of(power, ride.Grid.Segments);
        var mean = Mean(power, count);
        figures = figures with
        {
            Partial = coverage < PartialCoverage,
            MeanPowerW = mean,
            WorkKj = mean * count / 1000,
            NormalisedPower = NormalisedPower.Of(trailing),
            Bests = BestPowers.Of(power, BestPowers.Durations),
        };
        return figures.Threshold is null ? figures : WithShares(figures, trailing, power, ride, rider, limits);
    }

    private static RideFigures WithShares(
        RideFigures figures, TrailingPower trailing, float[] power, Ride ride, Rider rider, Limits limits)
    {
        var threshold = figures.Threshold!.Power;
        var bands = IntensityBands.OfPower(trailing, threshold, rider.Plan.LowerBandCutPercent, rider.Plan.UpperBandCutPercent);
        var atThreshold = SustainedPower.Of(trailing, threshold, limits.ThresholdSharePercent);
        var atHigh = SustainedPower.Of(trailing, threshold, limits.HighSharePercent);
        var above = SustainedPower.Of(trailing, threshold, limits.AboveThresholdSharePercent);
        var ratio = figures.NormalisedPower?.ShareOf(threshold);
        return figures with
        {
            MeasuredBy = MeasureSource.Power,
            IntensityRatio = ratio,
            Bands = bands,
            Zones = PowerZones.Of(power, threshold),
            AtThresholdShare = atThreshold,
            AtHighShare = atHigh,
            AboveThreshold = above,
            Kind = KindOfRide.FromPower(ride.TimerSeconds, bands, atThreshold, atHigh, above, ratio, limits),
            HeartRateDriftPercent = ride.Grid.HeartRateBpm is { } heart ? HeartRateDrift.Of(power, heart, ride.TimerSeconds, bands) : null,
        };
    }

    /// <summary>A logged ride without recording: averages only, so it has stress where normalised power is given, and no bands.</summary>
    private static RideFigures WithLog(RideFigures figures, LoggedFigures? logged) => logged is null
        ? figures
        : figures with
        {
            MeanPowerW = logged.MeanPowerW,
            NormalisedPower = logged.NormalisedPowerW is { } normalised ? new Units.Watts(normalised) : null,
            IntensityRatio = logged.NormalisedPowerW / figures.Threshold?.Power.Value,
            WorkKj = logged.MeanPowerW * figures.DurationSeconds / 1000,
            MeanHeartRateBpm = logged.MeanHeartRateBpm,
        };

    private static RideFigures WithStress(RideFigures figures) => figures switch
    {
        { IntensityRatio: { } ratio } => figures with
        {
            Stress = TrainingStress.Of(figures.DurationSeconds, ratio),
            StressFrom = StressSource.Power,
        },
        { HeartRateLoad: { } load } => figures with { Stress = load, StressFrom = StressSource.HeartRate },
        { RatedLoad: { } load } => figures with { Stress = load, StressFrom = StressSource.Rating },
        _ => figures,
    };

    private static IEnumerable<string> PowerRemarks(double coverage, int spikes)
    {
        if (spikes > 0)
            yield return $"{spikes} {(spikes == 1 ? "second" : "seconds")} of impossible power left out.";
        if (coverage < UsableCoverage)
            yield return "Power covers less than half of the ride and is not used.";
        else if (coverage < PartialCoverage)
            yield return $"Power covers {Math.Floor(coverage * 100)} % of the ride: its power figures are partial.";
    }

    private static double Mean(float[] values, int count)
    {
        double sum = 0;
        foreach (var value in values)
            if (!float.IsNaN(value))
                sum += value;
        return sum / count;
    }

    private static double? LastValue(float[]? values)
    {
        for (var i = (values?.Length ?? 0) - 1; i >= 0; i--)
            if (!float.IsNaN(values![i]))
                return values[i];
        return null;
    }
}
