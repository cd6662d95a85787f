using System.Collections.Immutable;
using RideAudit.Plan;
using RideAudit.Rides;
using RideAudit.Units;

namespace RideAudit.Figures;

/// <summary>Computes the figures of rides.</summary>
internal static class FigureBuilder
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
        return AllCores.Select(rides, r => Build(r, thresholds.PowerFor(r), thresholds.HeartRateFor(r.Date), rider, limits));
    }

    /// <summary>Computes the figures of one ride.</summary>
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
            Kind = KindOfRide.OfNothing(ride.TimerSeconds, limits),
            Threshold = threshold,
            ThresholdHeartRateBpm = thresholdBpm,
            DistanceM = ride.Grid.DistanceM,
            Rating = ride.Rating,
            RatedLoad = ride.Rating is { } rating ? RatedLoad.Of(rating, ride.TimerSeconds / 60) : null,
            Remarks = ride.Remarks,
            Note = ride.Note,
        };
        figures = WithHeartRate(figures, ride, rider, limits);
        figures = WithPower(figures, ride, rider, limits);
        return WithStress(LastWord.On(WithLog(figures, ride.Logged), ride, limits));
    }

    private static RideFigures WithHeartRate(RideFigures figures, Ride ride, Rider rider, Limits limits)
    {
        if (ride.Grid.HeartRateBpm is not { Values: > 0 } channel)
            return figures;
        using var phase = Phase.Begin("heart rate");
        figures = figures with
        {
            MeanHeartRateBpm = channel.Mean(),
            HeartRateCoverage = Math.Min(1, channel.Values / ride.TimerSeconds),
        };
        if (figures.ThresholdHeartRateBpm is not { } threshold || figures.HeartRateCoverage < UsableCoverage)
            return figures;
        using var lent = channel.Lend();
        ReadOnlySpan<float> heart = lent.Span;
        var cuts = new BandCuts(limits.HeartRateLowerCutPercent, limits.HeartRateUpperCutPercent);
        var measured = figures with
        {
            HeartRateLoad = HeartRateLoad.Of(heart, ride.TimerSeconds, rider, threshold),
            Bands = IntensityBands.OfHeartRate(heart, threshold, cuts),
            Cuts = cuts,
            MeasuredBy = MeasureSource.HeartRate,
        };
        var around = IntensityBands.SecondsAtLeast(heart, threshold, limits.HeartRateThresholdPercent);
        return Told(measured, KindOfRide.FromHeartRate(measured, around, limits), KindSource.HeartRate);
    }

    private static RideFigures WithPower(RideFigures figures, Ride ride, Rider rider, Limits limits)
    {
        if (CleanPower.Of(ride.Grid, figures.Threshold?.Power) is not { } power)
            return figures;
        var coverage = Math.Min(1, power.Count / ride.TimerSeconds);
        figures = figures with { PowerCoverage = coverage, Remarks = [.. figures.Remarks, .. PowerRemarks(coverage, power.Spikes)] };
        if (coverage < UsableCoverage)
            return figures;
        using var samples = power.Samples.Lend();
        using var totals = Totals(samples.Span);
        using var trailing = TrailingPower.Of(totals, ride.Grid.Segments);
        var mean = totals.Totals[^1] / power.Count;
        figures = figures with
        {
            Power = power,
            Partial = coverage < PartialCoverage,
            MeanPowerW = mean,
            WorkKj = mean * power.Count / 1000,
            NormalisedPower = NormalisedPower.Of(trailing),
            TrendBests = TrendBests.Of(totals),
        };
        return figures.Threshold is null ? figures : WithShares(figures, totals, trailing, ride, rider, limits);
    }

    private static RunningTotals Totals(ReadOnlySpan<float> samples)
    {
        using var phase = Phase.Begin("running totals");
        return new RunningTotals(samples);
    }

    private static RideFigures WithShares(RideFigures figures, in RunningTotals totals, TrailingPower trailing, Ride ride, Rider rider, Limits limits)
    {
        var threshold = figures.Threshold!.Power;
        var cuts = new BandCuts(rider.Plan.LowerBandCutPercent, rider.Plan.UpperBandCutPercent);
        using var forMiddle = TrailingPower.Of(totals, ride.Grid.Segments, IntensityBands.MiddleWindowSeconds);
        using var forBouts = TrailingPower.Of(totals, ride.Grid.Segments, Bouts.WindowSeconds);
        var bands = IntensityBands.OfPower(trailing, forMiddle, threshold, cuts);
        var (bouts, boutSeconds) = Bouts.Of(forBouts, threshold, limits.BoutSharePercent, limits.BoutLeastSeconds);
        var measured = figures with
        {
            MeasuredBy = MeasureSource.Power,
            IntensityRatio = figures.NormalisedPower?.ShareOf(threshold),
            Bands = bands,
            Cuts = cuts,
            AtThresholdShare = SustainedPower.Of(trailing, threshold, limits.ThresholdSharePercent),
            AtHighShare = SustainedPower.Of(trailing, threshold, limits.HighSharePercent),
            NearThreshold = SustainedPower.Of(trailing, threshold, limits.NearThresholdSharePercent),
            BoutCount = bouts,
            BoutSeconds = boutSeconds,
            HeartRateDriftPercent = ride.Grid.HeartRateBpm is { } heart ? HeartRateDrift.Of(figures.Power!.Samples, heart, ride.TimerSeconds, bands) : null,
        };
        return Told(measured, KindOfRide.FromPower(measured, limits), KindSource.Power);
    }

    private static RideFigures Told(RideFigures figures, RideKind kind, KindSource from) =>
        figures with { Kind = kind, KindFrom = kind == RideKind.None ? KindSource.None : from };

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
}
