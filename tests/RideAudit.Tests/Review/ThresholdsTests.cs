using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Rides;
using RideAudit.Tests.Support;
using RideAudit.Units;
using static RideAudit.Tests.Support.Made;

namespace RideAudit.Tests.Review;

public sealed class ThresholdsTests
{
    private static readonly LocalDate AsOf = new(2026, 5, 11);

    [Fact]
    public void The_three_values_stand_beside_each_other()
    {
        // Efforts on the line of 250 W and 20 kJ (derived); 95 % of 266.667 W is 253.3 W.
        var review = Folders.Review([Effort(4, 180), Effort(6, 720), Effort(8, 1200)], Made.Rider(threshold: 245), AsOf);
        var thresholds = review.Thresholds!;
        Assert.Equal((245.0, ThresholdSource.RiderFile), (thresholds.ThresholdPowerW!.Value, thresholds.ThresholdFrom));
        Assert.Equal(253.3, thresholds.ThresholdEstimateW!.Value, 1);
        Assert.Equal((250.0, 20.0), (Math.Round(thresholds.CriticalPowerW!.Value, 1), Math.Round(thresholds.WorkAboveCriticalPowerKj!.Value, 1)));
        Assert.Equal([180, 720, 1200], thresholds.CriticalPowerEfforts.Select(e => e.Seconds));
        Assert.Contains("245 W (rider file)", thresholds.Sentence.Plain(), StringComparison.Ordinal);
        Assert.Contains("253 W", thresholds.Sentence.Plain(), StringComparison.Ordinal);
        Assert.Contains("critical power at 250 W", thresholds.Sentence.Plain(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_threshold_in_force_is_told_by_date_with_where_it_came_from()
    {
        var rider = new Rider
        {
            Thresholds = [new(new LocalDate(2026, 4, 20), new Watts(240), null), new(new LocalDate(2026, 5, 6), new Watts(250), null)],
        };
        var steps = Folders.Review([Easy(30), Easy(20), Easy(10), Easy(3)], rider, AsOf).Thresholds!.InForce;
        Assert.Equal(
            [(AsOf.PlusDays(-30), 240.0, ThresholdSource.RiderFileFirstEntry), (AsOf.PlusDays(-20), 240.0, ThresholdSource.RiderFile), (AsOf.PlusDays(-3), 250.0, ThresholdSource.RiderFile)],
            steps.Select(s => (s.From, s.PowerW, s.Source)));
    }

    [Fact]
    public void Without_power_and_threshold_there_is_no_entry() =>
        Assert.Null(Folders.Review([Recording("a", Noon, null, Flat(3600, 140))], new Rider(), AsOf).Thresholds);

    [Fact]
    public void Hours_that_no_stress_covers_are_named()
    {
        var review = Folders.Review([Easy(3), Recording("bare.fit", Noon + Duration.FromDays(1), seconds: 5400)], Made.Rider(), AsOf);
        Assert.Equal(1.5, review.Week.StressUnknownHours);
        var notice = Assert.Single(review.Notices, n => n.Problem == "no stress");
        Assert.Contains("No training stress covers 1 h 30", notice.Sentence.Plain(), StringComparison.Ordinal);
        Assert.Contains("bare.fit", notice.Sentence.Plain(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_week_whose_rides_all_have_stress_has_no_such_notice() =>
        Assert.DoesNotContain(Folders.Review([Easy(3)], Made.Rider(), AsOf).Notices, n => n.Problem == "no stress");

    private static Recording Easy(int daysAgo) => Recording($"{daysAgo}.fit", Start(daysAgo), Flat(3600, 150));

    private static Recording Effort(int daysAgo, int seconds) =>
        Recording($"{daysAgo}.fit", Start(daysAgo), Blocks((600, 100), (seconds, 250 + 20_000.0 / seconds), (600, 100)));

    private static Instant Start(int daysAgo) => AsOf.PlusDays(-daysAgo).At(new LocalTime(12, 0)).InUtc().ToInstant();
}
