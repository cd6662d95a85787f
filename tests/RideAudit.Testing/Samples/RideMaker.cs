using System.Collections.Immutable;
using NodaTime;
using RideAudit.Document;
using RideAudit.Figures;
using RideAudit.Rides;
using RideAudit.Units;

namespace RideAudit.Testing.Samples;

/// <summary>Makes ride entries whose figures agree with one another: stress is hours × ratio² × 100, work is mean power × time.</summary>
public static class RideMaker
{
    private const double Threshold = 250;
    private const int Step = 5;
    private static readonly DateTimeZone Lisbon = DateTimeZoneProviders.Tzdb["Europe/Lisbon"];

    public static RideEntry Make(RideSpec spec, LocalDate weekStart)
    {
        var date = weekStart.PlusDays(spec.Day);
        var seconds = spec.Minutes * 60L;
        var normalised = Threshold * spec.Ratio;
        var mean = Math.Round(normalised * (spec.High > 0 ? 0.9 : 0.97), 1);
        var bands = spec.Power ? BandsOf(spec, seconds) : new BandEntry(0, 0, 0);
        return new RideEntry
        {
            File = spec.File ?? $"{date:yyyy-MM-dd}-{spec.Start:HHmm}.fit",
            Parts = [.. spec.Parts],
            StartsAt = Lisbon.AtLeniently(date.At(spec.Start)).ToOffsetDateTime(),
            DurationSeconds = seconds,
            ElapsedSeconds = seconds + 180,
            Sport = Formatting.Words.Find<RideSport>(spec.Sport) ?? RideSport.Cycling,
            Kind = Formatting.Words.Find<RideKind>(spec.Kind) ?? RideKind.None,
            MeasuredBy = spec.Power ? MeasureSource.Power : spec.HeartRate ? MeasureSource.HeartRate : MeasureSource.None,
            MeanPowerW = spec.Power ? mean : null,
            NormalisedPowerW = spec.Power ? Math.Round(normalised, 1) : null,
            IntensityRatio = spec.Power ? Math.Round(spec.Ratio, 3) : null,
            Stress = spec.Stressed ? Math.Round(seconds / 36.0 * spec.Ratio * spec.Ratio, 1) : null,
            StressFrom = !spec.Stressed ? StressSource.Unknown : spec.Power ? StressSource.Power : StressSource.HeartRate,
            WorkKj = spec.Power ? Math.Round(mean * seconds / 1000, 1) : null,
            ThresholdPowerW = spec.Power ? Threshold : null,
            ThresholdFrom = spec.Power ? ThresholdSource.RiderFile : null,
            BandSeconds = bands,
            ZoneSeconds = spec.Power ? Zones(bands) : [0, 0, 0, 0, 0, 0, 0],
            MeanHeartRateBpm = spec.HeartRate ? Math.Round(95 + (55 * spec.Ratio), 1) : null,
            HeartRateDriftPercent = spec is { Power: true, HeartRate: true, Minutes: >= 60, High: 0 } ? 3.4 : null,
            PowerCoverage = spec.Power ? spec.Coverage : 0,
            HeartRateCoverage = spec.HeartRate ? 0.99 : 0,
            Partial = spec.Coverage < 0.9,
            DistanceKm = Math.Round(spec.Minutes * 0.47, 1),
            Rating = spec.Rating,
            BestPowers = spec.Power ? Bests(spec, seconds) : [],
            Stretches = Stretches(spec),
            Repeats = Stretches(spec) is { Length: > 1 } repeats ? repeats : [],
            Remarks = [.. spec.Remarks],
        };
    }

    private static BandEntry BandsOf(RideSpec spec, long seconds)
    {
        long middle = (long)Math.Round(seconds * spec.Middle), high = (long)Math.Round(seconds * spec.High);
        return new BandEntry(seconds - middle - high, middle, high);
    }

    private static ImmutableArray<double> Zones(BandEntry bands) =>
        [bands.Low / 3, bands.Low - (bands.Low / 3), bands.Middle, bands.High / 2, bands.High - (bands.High / 2), 0, 0];

    private static ImmutableArray<BestPowerEntry> Bests(RideSpec spec, long seconds)
    {
        (int Seconds, double Share)[] curve = [(5, 2.4), (60, 1.5), (300, 1.2), (720, 1.1), (1200, 1.04), (3600, 0.98)];
        return [.. curve.Where(best => best.Seconds <= seconds).Select(best => new BestPowerEntry(best.Seconds, Math.Round(Threshold * spec.Ratio * best.Share, 1), best.Seconds switch { 5 or 60 => 700, 300 => 960, 3600 => 0, _ => (int)Math.Min(1560, seconds - best.Seconds) }))];
    }

    private static ImmutableArray<StretchEntry> Stretches(RideSpec spec)
    {
        var efforts = EffortsOf(spec);
        return [.. Enumerable.Range(0, efforts).Select(effort => new StretchEntry(91, 900 + (effort * 720), 1320 + (effort * 720), Math.Round(Threshold * 1.02, 1)))];
    }

    private static int EffortsOf(RideSpec spec) => spec is { Power: true, High: > 0 } ? Math.Max(1, Math.Min(3, (spec.Minutes - 22) / 12)) : 0;

    /// <summary>What the strips of a review may draw.</summary>
    public static ReviewTraces TracesOf(ReviewDocument review) => new(review.Rides.ToImmutableDictionary(ride => ride.File, TraceOf));

    /// <summary>A trace that such a ride may have.</summary>
    public static RideTrace TraceOf(RideEntry ride)
    {
        var minutes = (int)ride.DurationSeconds / 60;
        bool hasPower = ride.MeanPowerW is not null, hasHeart = ride.MeanHeartRateBpm is not null;
        var ratio = ride.IntensityRatio ?? (((ride.MeanHeartRateBpm ?? 95) - 95) / 55);
        var efforts = ride.Stretches.Length;
        var random = new Random((((int)ride.StartsAt.Date.DayOfWeek - 1) * 100) + minutes);
        var count = (int)ride.DurationSeconds / Step;
        var power = new float[count];
        var heart = new float[count];
        double drift = 0, pulse = 100;
        for (var i = 0; i < count; i++)
        {
            var second = i * Step;
            drift = (drift * 0.93) + (random.NextDouble() - 0.5) * 22;
            var hard = Enumerable.Range(0, efforts).Any(effort => second >= 900 + (effort * 720) && second < 1320 + (effort * 720));
            var target = Threshold * (hard ? 1.02 : efforts > 0 ? 0.6 : ratio * 0.98);
            power[i] = (float)Math.Max(0, target + drift);
            pulse += ((95 + (60 * target / Threshold)) - pulse) * 0.03;
            heart[i] = (float)(pulse + ((random.NextDouble() - 0.5) * 2));
        }

        return new RideTrace(Step, hasPower ? [.. power] : [], hasHeart ? [.. heart] : [], minutes > 90 ? [minutes * 30] : []);
    }
}
