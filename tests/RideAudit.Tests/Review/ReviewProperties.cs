using FsCheck;
using FsCheck.Fluent;
using MathNet.Numerics.Statistics;
using NodaTime;
using RideAudit.Document;
using RideAudit.Document.Json;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Review;
using RideAudit.Rides;
using RideAudit.Tests.Support;
using RideAudit.Units;

namespace RideAudit.Tests.Review;

/// <summary>What must hold of every review, from recordings to the finished document.</summary>
public sealed class ReviewProperties
{
    private static readonly LocalDate AsOf = FolderCase.Monday.PlusDays(21);

    internal static readonly Arbitrary<FolderCase[]> AnyFolder = Arb.From(
        from count in Gen.Choose(1, 14)
        from rides in Gen.ArrayOf(AnyRide(), count)
        select rides.DistinctBy(r => (r.Day, r.Hour)).ToArray());

    [Fact]
    public void Scaling_power_and_threshold_together_changes_no_ratio() => Check(AnyFolder, folder =>
    {
        var once = Review(folder.Select(r => r.ToRecording()), RiderAt(240));
        var twice = Review(folder.Select(r => r.ToRecording(scale: 2)), RiderAt(480));
        Assert.Equal(Json(once.Week with { WorkKj = null }, once.Findings), Json(twice.Week with { WorkKj = null }, twice.Findings));
        foreach (var (a, b) in once.Rides.Zip(twice.Rides))
        {
            Assert.Equal((a.Kind, a.IntensityRatio, a.Stress), (b.Kind, b.IntensityRatio, b.Stress));
            Assert.Equal(a.ZoneSeconds.ToArray(), b.ZoneSeconds.ToArray());
            Assert.Equal(a.BandSeconds, b.BandSeconds);
            Assert.Equal(a.HeartRateDriftPercent, b.HeartRateDriftPercent);
        }
    });

    [Fact]
    public void Cutting_recordings_in_two_contiguous_files_changes_no_week() => Check(AnyFolder, folder =>
    {
        var whole = Review(folder.Select(r => r.ToRecording()), RiderAt(240));
        var cut = Review(folder.SelectMany(r => CutInTwo(r.ToRecording())), RiderAt(240));
        Assert.Equal(Json(whole.Week), Json(cut.Week));
        Assert.Equal(Verdicts(whole), Verdicts(cut));
    });

    [Fact]
    public void Shuffling_files_changes_nothing() => Check(AnyFolder, folder =>
    {
        var recordings = folder.Select(r => r.ToRecording()).ToArray();
        var order = new Random(recordings.Length);
        var given = ReviewJson.Write(Review(recordings, RiderAt(240)));
        order.Shuffle(recordings);
        Assert.Equal(given, ReviewJson.Write(Review(recordings, RiderAt(240))));
    });

    [Fact]
    public void Shifting_every_ride_by_whole_weeks_shifts_the_review() => Check(AnyFolder, folder =>
    {
        var here = Review(folder.Select(r => r.ToRecording()), RiderAt(240));
        foreach (var weeks in new[] { 1, 11, 30 })
        {
            var days = 7 * weeks;
            var there = ReviewBuilder.Review(
                Folders.Of(folder.Select(r => r.ToRecording(days))), RiderAt(240), new ReviewRequest { Today = AsOf.PlusDays(days), AsOf = AsOf.PlusDays(days) })!;
            Assert.Equal(here.Week.StartsOn.PlusDays(days), there.Week.StartsOn);
            Assert.Equal(Undated(here), Undated(there));
        }
    });

    [Fact]
    public void Zones_and_bands_sum_to_powered_time() => Check(AnyFolder, folder =>
    {
        var review = Review(folder.Select(r => r.ToRecording()), RiderAt(240));
        foreach (var ride in review.Rides)
        {
            var bands = ride.BandSeconds.Low + ride.BandSeconds.Middle + ride.BandSeconds.High;
            if (ride.MeasuredBy == MeasureSource.Power)
            {
                Assert.Equal(Math.Round(ride.PowerCoverage * ride.DurationSeconds), bands, 0.001 * ride.DurationSeconds + 1);
                Assert.Equal(bands, ride.ZoneSeconds.Sum());
            }
            else
                Assert.Equal(0, ride.ZoneSeconds.Sum());
        }
        Assert.Equal(review.Rides.Sum(r => r.BandSeconds.Low), review.Week.BandSeconds.Low);
        Assert.Equal(review.Rides.Sum(r => r.ZoneSeconds[3]), review.Week.ZoneSeconds[3]);
    });

    [Fact]
    public void Monotony_and_strain_agree_with_another_library() => Check(AnyFolder, folder =>
    {
        var review = Review(folder.Select(r => r.ToRecording()), RiderAt(240));
        var stresses = review.Week.Days.Select(d => d.Stress ?? 0).ToArray();
        var deviation = stresses.PopulationStandardDeviation();
        if (review.Week.Monotony is not { } monotony)
        {
            Assert.Equal(0, deviation, 0.06);
            return;
        }
        // The document's stresses are rounded to a tenth: good for 1 % where they differ by tens of points.
        Assert.Equal(stresses.Mean() / deviation, monotony, 0.01 + 0.02 * monotony / Math.Max(1, deviation));
        Assert.Equal(review.Week.Stress * monotony, review.Week.Strain!.Value, 0.01 * review.Week.Stress + 0.1);
    });

    [Fact]
    public void Loads_agree_with_the_closed_form() => Check(AnyFolder, folder =>
    {
        var recordings = folder.Select(r => r.ToRecording()).ToArray();
        var review = Review(recordings, RiderAt(240));
        var rides = ReviewBuilder.Rides(Folders.Of(recordings), RiderAt(240), new ReviewRequest { Today = AsOf, AsOf = AsOf }).Rides;
        double Closed(double days) => rides.Sum(r =>
            (1 - Math.Exp(-1 / days)) * Math.Exp(-(Period.DaysBetween(r.StartsAt.Date, AsOf) - 1) / days) * (r.Stress ?? 0));
        Assert.Equal(Closed(7), review.Week.AcuteLoad, 0.2);
        Assert.Equal(Closed(42), review.Week.ChronicLoad, 0.1);
    });

    private static Gen<FolderCase> AnyRide() =>
        from day in Gen.Choose(0, 20)
        from hour in Gen.Elements(6, 12, 18)
        from blocks in Gen.ArrayOf(
            from seconds in Gen.Choose(20, 900)
            from watts in Gen.Choose(0, 420)
            from bpm in Gen.Choose(60, 185)
            select (seconds, watts, bpm), 6)
        from dropout in Gen.Choose(0, 20)
        from channels in Gen.Choose(1, 7)
        select new FolderCase(day, hour, blocks, dropout, (channels & 1) == 1 || channels > 5, (channels & 2) == 2);

    internal static ReviewDocument Review(IEnumerable<Recording> recordings, Rider rider) => Folders.Review(recordings, rider, AsOf);

    internal static Rider RiderAt(double watts) => new()
    {
        RestHeartRateBpm = 48,
        MaxHeartRateBpm = 188,
        Thresholds = [new ThresholdEntry(new LocalDate(2026, 1, 1), new Watts(watts), 165)],
        Plan = new TrainingPlan { WeeklyHours = 6 },
    };

    private static IEnumerable<Recording> CutInTwo(Recording whole)
    {
        var at = whole.Grid.Length / 2;
        yield return Part(whole, 0, at, whole.File);
        yield return Part(whole, at, whole.Grid.Length - at, "z-" + whole.File);
    }

    private static Recording Part(Recording whole, int start, int length, string file)
    {
        PackedSamples? Cut(PackedSamples? channel) => channel is null ? null : [.. channel.Skip(start).Take(length)];
        return whole with
        {
            File = file,
            Start = whole.Start + Duration.FromSeconds(start),
            Grid = new SampleGrid
            {
                Length = length,
                Segments = [new GridSegment(0, length, 0)],
                PowerW = Cut(whole.Grid.PowerW),
                HeartRateBpm = Cut(whole.Grid.HeartRateBpm),
            },
            TimerSeconds = length,
            ElapsedSeconds = length,
        };
    }

    private static string Json(WeekEntry week, params object[] more) =>
        ReviewJson.Write(new WeeksDocument("", [week])) + string.Join('\n', more.OfType<IEnumerable<RideAudit.Rules.Finding>>().SelectMany(f => f).Select(f => $"{f.Rule} {f.Verdict}"));

    private static IEnumerable<string> Verdicts(ReviewDocument review) => review.Findings.Select(f => $"{f.Rule} {f.Verdict}");

    private static string Undated(ReviewDocument review)
    {
        var week = review.Week with
        {
            StartsOn = FolderCase.Monday,
            IsoWeek = null,
            Days = [.. review.Week.Days.Select(d => d with { Date = FolderCase.Monday })],
            Spans = [],
        };
        return Json(week) + string.Join('\n', Verdicts(review).Concat(review.Week.Spans.Select(s => $"{s.FromRide} {s.ToRide} {s.Hours} {s.Verdict}")));
    }

    private static void Check(Arbitrary<FolderCase[]> folders, Action<FolderCase[]> holds) =>
        FsCheck.Check.One(Config.QuickThrowOnFailure.WithMaxTest(40), Prop.ForAll(folders, holds));
}
