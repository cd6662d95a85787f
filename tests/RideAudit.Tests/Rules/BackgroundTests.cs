using System.Collections.Immutable;
using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Rules;
using RideAudit.Units;

namespace RideAudit.Tests.Rules;

/// <summary>What stays the same when rides are moved within a week, looked up directly: trust, cover, comebacks, and the week read at its easiest and its hardest.</summary>
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

    /// <summary>A fifth without known stress is as much as may be, in the week and together with the days before.</summary>
    [Theory]
    [InlineData(20, 80, 0, 0, false)]
    [InlineData(22, 78, 0, 0, true)]
    [InlineData(20, 80, 20, 80, false)]
    [InlineData(10, 90, 34, 66, true)]
    [InlineData(0, 0, 34, 66, true)]
    [InlineData(0, 0, 0, 0, false)]
    public void Stress_is_patchy_beyond_its_share(int unknown, int known, int unknownBefore, int knownBefore, bool patchy)
    {
        RideFigures[] rides = [On(0, unknown, 6) with { Stress = null }, On(0, known), On(-1, unknownBefore, 6) with { Stress = null }, On(-1, knownBefore)];
        var plan = Sample.Plan(plan: new TrainingPlan { LimitOverrides = ImmutableDictionary.CreateRange([KeyValuePair.Create("stress_unknown_share_at_most", 0.2)]) });

        Assert.Equal(patchy, new JudgedWeek(Sample.Review(rides.Where(r => r.DurationSeconds > 0), plan)).StressIsPatchy(7));
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

    [Fact]
    public void A_ride_that_nothing_could_rate_is_read_as_easy_and_as_hard_as_it_may_have_been()
    {
        RideFigures Unrated(int day, int minutes) => Sample.Ride(Monday.PlusDays(day), RideKind.Unrated, minutes);
        var rated = On(6, 60);
        var week = new JudgedWeek(Sample.Review([Unrated(-1, 60), Unrated(0, 75), Unrated(1, 76), Unrated(2, 142), Unrated(3, 143), rated], Sample.Plan()));

        Assert.Equal([RideKind.Recovery, RideKind.Endurance, RideKind.Endurance, RideKind.Long, rated.Kind], week.Easiest.Week.Rides.Select(r => r.Kind));
        Assert.Equal([RideKind.High, RideKind.High, RideKind.High, RideKind.High, rated.Kind], week.Hardest.Week.Rides.Select(r => r.Kind));
        Assert.Equal((RideKind.Recovery, RideKind.High), (week.Easiest.DayBefore!.Rides[0].Kind, week.Hardest.DayBefore!.Rides[0].Kind));
        Assert.Equal(rated.Bands, week.Easiest.Week.Rides.Last().Bands);
        Assert.Same(week.Easiest, week.Easiest);
        Assert.Same(week.Hardest, week.Hardest);
    }

    [Fact]
    public void A_ride_that_nothing_could_rate_is_found_in_the_week_and_where_asked_on_the_day_before()
    {
        JudgedWeek Week(params RideFigures[] rides) => new(Sample.Review([.. rides, On(3)], Sample.Plan()));
        var unrated = Sample.Ride(Monday, RideKind.Unrated, 60);

        Assert.Equal((true, true), (Week(unrated).HasUnrated(false), Week(unrated).HasUnrated(true)));
        Assert.Equal((false, true), (Week(unrated with { StartsAt = unrated.StartsAt.PlusHours(-24) }).HasUnrated(false), Week(unrated with { StartsAt = unrated.StartsAt.PlusHours(-24) }).HasUnrated(true)));
        Assert.Equal((false, false), (Week().HasUnrated(false), Week(On(-1)).HasUnrated(true)));
    }

    private static Background Of(params RideFigures[] rides) => new(Sample.Review([.. rides, On(6)], Sample.Plan()));

    private static RideFigures On(int day, int minutes = 60, int hour = 18) => Sample.Ride(Monday.PlusDays(day), RideKind.Endurance, minutes, hour);
}
