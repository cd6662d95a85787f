using NodaTime;
using RideAudit.Figures;
using RideAudit.Rules;
using RideAudit.Units;

namespace RideAudit.Tests.Rules;

/// <summary>What cannot be known changes no verdict that it cannot change, and every one that it can.</summary>
public class UnknownTests
{
    private static readonly LocalDate Monday = Sample.Monday;

    [Fact]
    public void An_unrated_ride_beside_a_high_day_could_break_spacing() =>
        Assert.Equal(Verdict.NotJudged, Judge("hard-day-spacing", On(1, RideKind.High), On(2, RideKind.Unrated)).Verdict);

    [Fact]
    public void An_unrated_ride_that_stands_alone_cannot_break_spacing() =>
        Assert.Equal(Verdict.Kept, Judge("hard-day-spacing", On(1, RideKind.High), On(3, RideKind.Endurance), On(5, RideKind.Unrated)).Verdict);

    [Fact]
    public void Spacing_that_is_broken_stays_broken_whatever_an_unrated_ride_was() =>
        Assert.Equal(Verdict.Broken, Judge("hard-day-spacing", On(1, RideKind.High), On(2, RideKind.High), On(4, RideKind.Unrated)).Verdict);

    [Fact]
    public void An_unrated_ride_on_the_day_before_the_week_counts() =>
        Assert.Equal(Verdict.NotJudged, Judge("hard-day-spacing", On(-1, RideKind.Unrated), On(0, RideKind.High)).Verdict);

    [Theory]
    [InlineData(150, Verdict.NotJudged)]
    [InlineData(143, Verdict.NotJudged)]
    [InlineData(140, Verdict.Watch)]
    [InlineData(60, Verdict.Broken)]
    public void An_unrated_ride_may_have_been_the_long_ride_when_it_is_long_enough(double minutes, Verdict verdict) =>
        Assert.Equal(verdict, Judge("long-ride", Sample.Ride(Monday, RideKind.Unrated, minutes)).Verdict);

    [Theory]
    [InlineData(60, Verdict.NotJudged)]
    [InlineData(90, Verdict.Broken)]
    public void An_unrated_ride_is_a_recovery_day_only_when_it_is_short_enough(double minutes, Verdict verdict)
    {
        var rides = Enumerable.Range(0, 6).Select(i => On(i, RideKind.Endurance, i == 5 ? 0 : 90)).Where(r => r.DurationSeconds > 0)
            .Append(Sample.Ride(Monday.PlusDays(5), RideKind.Unrated, minutes));

        Assert.Equal(verdict, Judge("rest-days", [.. rides]).Verdict);
    }

    [Fact]
    public void An_unrated_ride_could_be_an_easy_ride_that_was_not_easy()
    {
        Assert.Equal(Verdict.NotJudged, Judge("easy-rides-easy", On(1, RideKind.Unrated)).Verdict);
        Assert.Equal(Verdict.Kept, Judge("easy-rides-easy", On(1, RideKind.Unrated, 25)).Verdict);
    }

    [Fact]
    public void Power_that_covers_half_a_ride_leaves_the_split_open_where_the_rest_could_change_it()
    {
        var half = Sample.Ride(Monday, RideKind.Endurance, 120) with { Bands = new BandSeconds(2700, 900, 0), Partial = true, PowerCoverage = 0.5 };

        Assert.Equal(Verdict.NotJudged, Judge("intensity-split", half).Verdict);
        Assert.Equal(Verdict.NotJudged, Judge("endurance-volume", half, On(2, RideKind.Long, 210)).Verdict);
        Assert.Equal(Verdict.Kept, Judge("endurance-volume", half, On(2, RideKind.Long, 300)).Verdict);
    }

    [Fact]
    public void A_split_that_is_easy_enough_at_its_least_is_kept_whatever_the_rest_was()
    {
        var rides = new[] { Banded(0, 5, 0.5), Sample.Ride(Monday.PlusDays(2), RideKind.Unrated, 45) };

        Assert.Equal(Verdict.Kept, Judge("intensity-split", rides).Verdict);
    }

    [Theory]
    [InlineData(6, 14, Verdict.Watch)]
    [InlineData(5, 14, Verdict.NotJudged)]
    [InlineData(6, 13, Verdict.NotJudged)]
    public void An_estimate_caps_the_verdict_and_a_thin_one_withholds_it(int rides, int days, Verdict verdict)
    {
        var estimate = new ThresholdInForce(new Watts(250), ThresholdSource.Estimate, rides, days);

        var finding = Judge("hard-day-spacing", On(1, RideKind.High) with { Threshold = estimate }, On(2, RideKind.High));

        Assert.Equal(verdict, finding.Verdict);
        if (verdict == Verdict.Watch)
        {
            Assert.EndsWith("The threshold power is an estimate, so this is no more than worth a look.", finding.Sentence, StringComparison.Ordinal);
            Assert.Equal(Verdict.Watch, Assert.Single(finding.Occurrences).Verdict);
        }
    }

    [Fact]
    public void An_estimate_says_nothing_of_hours()
    {
        var thin = new ThresholdInForce(new Watts(250), ThresholdSource.Estimate, 1, 1);

        Assert.Equal(Verdict.Broken, Judge("weekly-hours", On(1, RideKind.High, 120) with { Threshold = thin }).Verdict);
    }

    [Fact]
    public void A_ride_measured_by_heart_rate_rests_on_no_threshold_power()
    {
        var thin = new ThresholdInForce(new Watts(250), ThresholdSource.Estimate, 1, 1);
        var ride = On(1, RideKind.High) with { Threshold = thin, MeasuredBy = MeasureSource.HeartRate, StressFrom = StressSource.HeartRate };

        Assert.Equal(Verdict.Broken, Judge("hard-day-spacing", ride, On(2, RideKind.High)).Verdict);
    }

    private static Finding Judge(string rule, params RideFigures[] rides) => Sample.Judge(rule, Sample.Review(rides, Sample.Plan()));

    private static RideFigures On(int day, RideKind kind, double minutes = 60) => Sample.Ride(Monday.PlusDays(day), kind, minutes);

    private static RideFigures Banded(int day, double lowHours, double highHours) =>
        Sample.Ride(Monday.PlusDays(day), RideKind.Endurance, (lowHours + highHours) * 60) with { Bands = new BandSeconds(lowHours * 3600, 0, highHours * 3600) };
}
