using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Rules;
using RideAudit.Units;

namespace RideAudit.Tests.Rules;

/// <summary>What stays the same when rides are moved within a week, looked up directly, and twice where the first answer is kept.</summary>
public sealed class BackgroundTests
{
    private static readonly LocalDate Monday = Sample.Monday;
    private static readonly ThresholdInForce Estimate = new(new Watts(250), ThresholdSource.Estimate, 20, 80);
    private static readonly ThresholdInForce Thin = new(new Watts(250), ThresholdSource.Estimate, 4, 10);

    [Fact]
    public void Trust_is_that_of_the_least_sure_threshold_of_the_days_looked_at()
    {
        var background = Of(On(-9) with { Threshold = Thin }, On(-8), On(-2) with { Threshold = Estimate }, On(-1), On(1) with { Threshold = Thin });

        for (var asked = 0; asked < 2; asked++)
        {
            Assert.Equal(
                [Trust.Sound, Trust.Sound, Trust.Estimate, Trust.Estimate, Trust.Thin, Trust.Sound],
                new[] { (Basis.Kinds, 0), (Basis.Kinds, 1), (Basis.Kinds, 2), (Basis.Kinds, 8), (Basis.Kinds, 9), (Basis.Time, 9) }.Select(x => background.TrustIn(x.Item1, x.Item2)));
        }
    }

    /// <summary>An estimate counts where something rests on it: kinds on power, or stress from power.</summary>
    [Theory]
    [InlineData(nameof(Basis.Kinds), MeasureSource.Power, StressSource.HeartRate, true)]
    [InlineData(nameof(Basis.Kinds), MeasureSource.HeartRate, StressSource.Power, false)]
    [InlineData(nameof(Basis.Stress), MeasureSource.Power, StressSource.HeartRate, false)]
    [InlineData(nameof(Basis.Stress), MeasureSource.HeartRate, StressSource.Power, true)]
    public void An_estimate_counts_where_something_rests_on_it(string basis, MeasureSource measuredBy, StressSource stressFrom, bool counts)
    {
        var day = Sample.Week([On(0) with { Threshold = Estimate, MeasuredBy = measuredBy, StressFrom = stressFrom }]).Days[0];

        Assert.Equal(counts ? Trust.Estimate : Trust.Sound, Background.TrustIn(day, Enum.Parse<Basis>(basis)));
    }

    [Fact]
    public void Trust_in_ordinary_weeks_is_that_of_all_their_days_and_sound_without_any()
    {
        RideFigures[] rides = [.. Enumerable.Range(1, 4).Select(w => On(-7 * w))];

        Assert.Equal(Trust.Sound, Of(rides).TrustInOrdinaryWeeks(Basis.Kinds));
        Assert.Equal(Trust.Estimate, Of([.. rides[..3], rides[3] with { Threshold = Estimate }]).TrustInOrdinaryWeeks(Basis.Kinds));
        Assert.Equal(Trust.Sound, Of(rides[0] with { Threshold = Estimate }).TrustInOrdinaryWeeks(Basis.Kinds));
    }

    [Fact]
    public void Stress_cover_is_what_has_none_and_all_of_it_over_the_days()
    {
        var background = Of(On(-9, 40) with { Stress = null }, On(-3, 50), On(-2, 30) with { Stress = null }, On(-1, 20) with { Stress = null });

        for (var asked = 0; asked < 2; asked++)
        {
            Assert.Equal((1200.0, 1200.0), background.StressCover(1));
            Assert.Equal((3000.0, 6000.0), background.StressCover(3));
            Assert.Equal((5400.0, 8400.0), background.StressCover(9));
        }
    }

    [Fact]
    public void The_ordinary_mean_is_of_hours_and_of_those_above_low_and_of_those_without_a_band()
    {
        var rides = Enumerable.Range(1, 4).Select(w => Sample.Ride(Monday.PlusDays(-7 * w), RideKind.Endurance, 60 * (5 - w)) with { Bands = new BandSeconds(3000 * (5 - w) - 900, 300 * (5 - w), 0) });

        var (hours, aboveLow, unbanded) = Of([.. rides]).OrdinaryMean!.Value;

        Assert.Equal((9000.0, 750.0, 1650.0), (3600 * hours, Math.Round(3600 * aboveLow, 6), Math.Round(3600 * unbanded, 6)));
    }

    /// <summary>Four of its days in the first seven back from seven days away, or from three of illness, make a week one of coming back.</summary>
    [Theory]
    [InlineData(ExceptionKind.Away, -7, -1, true)]
    [InlineData(ExceptionKind.Away, -6, -1, false)]
    [InlineData(ExceptionKind.Away, -10, -4, true)]
    [InlineData(ExceptionKind.Away, -11, -5, false)]
    [InlineData(ExceptionKind.Away, -4, 2, true)]
    [InlineData(ExceptionKind.Away, -3, 3, false)]
    [InlineData(ExceptionKind.Ill, -3, -1, true)]
    [InlineData(ExceptionKind.Ill, -2, -1, false)]
    [InlineData(ExceptionKind.Ill, -6, -4, true)]
    [InlineData(ExceptionKind.Ill, -7, -5, false)]
    public void A_week_is_one_of_coming_back_by_its_days(ExceptionKind kind, int from, int to, bool justBack)
    {
        var plan = Sample.Plan(6.5, Experience.Regular, null, new PlanException(Monday.PlusDays(from), Monday.PlusDays(to), kind));

        Assert.Equal(justBack, new Background(Sample.Review([On(-20), On(5)], plan)).JustBack);
    }

    [Theory]
    [InlineData(-8, 2.5)]
    [InlineData(-7, 3.5)]
    [InlineData(-1, 3.5)]
    [InlineData(0, 4.5)]
    [InlineData(5, 4.5)]
    public void The_usual_hours_before_a_day_are_those_of_weeks_that_were_over(int day, double hours)
    {
        // Weeks of 1, 2 … 6 h: the mean of the last four that were over.
        var rides = Enumerable.Range(1, 6).Select(w => Sample.Ride(Monday.PlusDays(-7 * (7 - w)), RideKind.Endurance, 60 * w));

        Assert.Equal(hours, Of([.. rides]).UsualHoursBefore(Monday.PlusDays(day))!.Value, 9);
    }

    private static Background Of(params RideFigures[] rides) => new(Sample.Review([.. rides, On(6)], Sample.Plan()));

    private static RideFigures On(int day, int minutes = 60, int hour = 18) => Sample.Ride(Monday.PlusDays(day), RideKind.Endurance, minutes, hour);
}
