using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Rules;
using RideAudit.Units;

namespace RideAudit.Tests.Rules;

public class EasyAndFreshTests
{
    private static readonly LocalDate Monday = Sample.Monday;

    [Theory]
    [InlineData(RideKind.Endurance, 60, 0.764, 0, Verdict.Kept)]
    [InlineData(RideKind.Endurance, 60, 0.765, 0, Verdict.Watch)]
    [InlineData(RideKind.Endurance, 60, 0.804, 0, Verdict.Watch)]
    [InlineData(RideKind.Endurance, 60, 0.805, 0, Verdict.Broken)]
    [InlineData(RideKind.Endurance, 100, 0.70, 389, Verdict.Kept)]
    [InlineData(RideKind.Endurance, 100, 0.70, 390, Verdict.Watch)]
    [InlineData(RideKind.Endurance, 100, 0.70, 629, Verdict.Watch)]
    [InlineData(RideKind.Endurance, 100, 0.70, 630, Verdict.Broken)]
    [InlineData(RideKind.Long, 180, 0.70, 600, Verdict.Kept)]
    [InlineData(RideKind.Long, 180, 0.70, 1100, Verdict.Kept)]
    [InlineData(RideKind.Long, 180, 0.70, 1110, Verdict.Broken)]
    [InlineData(RideKind.Recovery, 30, 0.81, 0, Verdict.Broken)]
    [InlineData(RideKind.Recovery, 29.4, 0.81, 0, Verdict.Kept)]
    [InlineData(RideKind.Long, 180, 0.77, 0, Verdict.Watch)]
    [InlineData(RideKind.Threshold, 60, 0.90, 1800, Verdict.Kept)]
    public void An_easy_ride_is_judged_by_its_intensity_ratio_and_its_time_around_threshold(
        RideKind kind, double minutes, double ratio, double seconds, Verdict verdict) =>
        Assert.Equal(verdict, Sample.Judge("easy-rides-easy", Sample.Review([Easy(0, kind, minutes, ratio, seconds)], Sample.Plan())).Verdict);

    [Fact]
    public void Time_above_low_alone_says_nothing_of_an_easy_ride() =>
        Assert.Equal(Verdict.Kept, Sample.Judge("easy-rides-easy", Sample.Review([Sample.Ride(Monday, RideKind.Endurance, 75, lowShare: 0.71)], Sample.Plan())).Verdict);

    [Fact]
    public void Every_easy_ride_that_was_not_easy_is_an_occurrence_and_the_worst_is_the_verdict()
    {
        var rides = new[]
        {
            Easy(0, RideKind.Endurance, 60, 0.78, 0),
            Easy(2, RideKind.Endurance, 90, 0.82, 660),
            Easy(4, RideKind.Endurance, 60, 0.65, 0),
        };

        var finding = Sample.Judge("easy-rides-easy", Sample.Review(rides, Sample.Plan()));

        Assert.Equal(Verdict.Broken, finding.Verdict);
        Assert.Equal([Verdict.Watch, Verdict.Broken], finding.Occurrences.Select(o => o.Verdict));
        Assert.Equal(
            "Wednesday’s easy ride held 11 min of sustained work around threshold and was ridden at an intensity ratio of 0.82, which is not easy. "
            + "One other easy ride went too hard as well.",
            finding.Sentence.Plain());
    }

    [Theory]
    [InlineData(277.3, Verdict.Kept)]
    [InlineData(277.4, Verdict.Watch)]
    public void A_best_20_minutes_far_above_the_threshold_is_worth_a_look(double best, Verdict verdict) =>
        Assert.Equal(verdict, Fresh(Sample.Plan(), WithBest(0, best)).Verdict);

    [Fact]
    public void A_threshold_raised_after_the_effort_is_fresh()
    {
        var plan = Sample.Plan();
        var raised = plan with { Rider = plan.Rider with { Thresholds = [.. plan.Rider.Thresholds, new ThresholdEntry(Monday.PlusDays(2), new Watts(280), null)] } };

        Assert.Equal(Verdict.Kept, Fresh(raised, WithBest(1, 290)).Verdict);
    }

    [Theory]
    [InlineData(-35, Verdict.Watch)]
    [InlineData(-36, Verdict.NotJudged)]
    public void An_effort_counts_for_42_days(int day, Verdict verdict) =>
        Assert.Equal(verdict, Fresh(Sample.Plan(), WithBest(day, 290), Sample.Ride(Monday, RideKind.Endurance, 60)).Verdict);

    [Fact]
    public void An_estimated_threshold_is_not_held_against_the_efforts_it_comes_from()
    {
        var plan = Sample.Plan();
        var unlisted = plan with { Rider = plan.Rider with { Thresholds = [] } };
        var estimate = Sample.Threshold with { From = ThresholdSource.Estimate, PoweredRidesBefore = 20, DaysOfHistory = 80 };

        Assert.Equal(Verdict.NotJudged, Fresh(unlisted, WithBest(1, 290) with { Threshold = estimate }).Verdict);
        Assert.Equal(Verdict.Watch, Fresh(unlisted, WithBest(1, 290) with { Threshold = Sample.Threshold with { From = ThresholdSource.Recording } }).Verdict);
    }

    [Fact]
    public void Other_activity_of_half_an_hour_makes_a_free_day_recovery_and_not_rest()
    {
        Assert.Equal(RideAudit.Weeks.DayKind.Recovery, RideAudit.Weeks.DayFacts.Build(Monday, [], 1800).Kind);
        Assert.Equal(RideAudit.Weeks.DayKind.Rest, RideAudit.Weeks.DayFacts.Build(Monday, [], 29 * 60).Kind);
    }

    [Fact]
    public void A_short_easy_day_is_recovery_even_where_few_planned_hours_make_its_ride_the_long_one()
    {
        var ride = Sample.Ride(Monday, RideKind.Long, 50, lowShare: 1);

        Assert.Equal(RideAudit.Weeks.DayKind.Recovery, RideAudit.Weeks.DayFacts.Build(Monday, [ride]).Kind);
        Assert.Equal(RideAudit.Weeks.DayKind.Long, RideAudit.Weeks.DayFacts.Build(Monday, [Sample.Ride(Monday, RideKind.Long, 61, lowShare: 1)]).Kind);
    }

    [Theory]
    [InlineData(60, 0.85, true)]
    [InlineData(61, 0.85, false)]
    [InlineData(60, 0.84, false)]
    public void A_short_easy_day_is_recovery(double minutes, double low, bool recovery) =>
        Assert.Equal(recovery, RideAudit.Weeks.DayFacts.Build(Monday, [Sample.Ride(Monday, RideKind.Endurance, minutes, lowShare: low)]).IsRestOrRecovery);

    [Theory]
    [InlineData(5, Verdict.Kept)]
    [InlineData(6, Verdict.Broken)]
    public void Middle_volume_asks_for_two_days_of_rest_or_recovery(int rides, Verdict verdict)
    {
        var week = Enumerable.Range(0, rides).Select(i => Sample.Ride(Monday.PlusDays(i), RideKind.Endurance, 70));

        Assert.Equal(verdict, Sample.Judge("rest-days", Sample.Review(week, Sample.Plan())).Verdict);
    }

    private static Finding Fresh(PlanInForce plan, params RideFigures[] rides) => Sample.Judge("threshold-fresh", Sample.Review(rides, plan));

    private static RideFigures Easy(int day, RideKind kind, double minutes, double ratio, double aroundThresholdSeconds) =>
        Sample.Ride(Monday.PlusDays(day), kind, minutes) with
        {
            IntensityRatio = ratio,
            AtThresholdShare = new SustainedTime(84, aroundThresholdSeconds, []),
        };

    private static RideFigures WithBest(int day, double watts) =>
        Sample.Ride(Monday.PlusDays(day), RideKind.High, 60) with { Bests = [new BestPower(1200, watts, 600), new BestPower(300, watts * 1.2, 0)] };
}
