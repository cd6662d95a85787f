using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Rules;
using RideAudit.Tests.Support;
using RideAudit.Units;

namespace RideAudit.Tests.Rules;

public class VolumeTests
{
    private static readonly LocalDate Monday = Sample.Monday;

    [Theory]
    [InlineData(150, Verdict.Kept)]
    [InlineData(149, Verdict.Watch)]
    [InlineData(127.5, Verdict.Watch)]
    [InlineData(127, Verdict.Broken)]
    public void A_long_ride_is_near_its_length_within_15_percent(double minutes, Verdict verdict)
    {
        var kind = minutes >= 150 ? RideKind.Long : RideKind.Endurance;

        Assert.Equal(verdict, Judge("long-ride", Sample.Ride(Monday, kind, minutes)).Verdict);
    }

    [Fact]
    public void A_long_hard_ride_is_worth_a_look_and_says_why()
    {
        var finding = Judge("long-ride", Sample.Ride(Monday.PlusDays(5), RideKind.Threshold, 180, 9));

        Assert.Equal(Verdict.Watch, finding.Verdict);
        Assert.Equal("Saturday’s ride of 3 h was long enough, but it was a threshold ride with 55 % of it easy.", finding.Sentence.Plain());
    }

    [Theory]
    [InlineData(3.825, Verdict.Kept)]
    [InlineData(3.82, Verdict.Broken)]
    public void Endurance_volume_may_fall_15_percent_short(double lowHours, Verdict verdict) =>
        Assert.Equal(verdict, Judge("endurance-volume", 6, Banded(lowHours, 1)).Verdict);

    [Fact]
    public void Endurance_volume_of_a_lighter_week_asks_for_six_tenths()
    {
        var lighter = new PlanException(Monday, Monday.PlusDays(6), ExceptionKind.Lighter);
        var plan = Sample.Plan(6, exceptions: lighter);

        Assert.Equal(Verdict.Kept, Sample.Judge("endurance-volume", Sample.Review([Banded(2.3, 0)], plan)).Verdict);
        Assert.Equal(Verdict.Broken, Sample.Judge("endurance-volume", Sample.Review([Banded(2.29, 0)], plan)).Verdict);
    }

    [Theory]
    [InlineData(0.68, Verdict.Kept)]
    [InlineData(0.6799, Verdict.Watch)]
    [InlineData(0.61, Verdict.Watch)]
    [InlineData(0.6099, Verdict.Broken)]
    [InlineData(0.89, Verdict.Kept)]
    [InlineData(0.8901, Verdict.Watch)]
    [InlineData(1, Verdict.Watch)]
    public void The_split_by_time_is_judged_at_its_tolerance_and_at_twice_of_it(double low, Verdict verdict) =>
        Assert.Equal(verdict, Judge("intensity-split", 6, Banded(10 * low, 10 * (1 - low))).Verdict);

    [Fact]
    public void Riding_easier_than_intended_is_kept_where_no_hard_day_is_planned()
    {
        var plan = Sample.Plan(6, plan: new TrainingPlan { LimitOverrides = new TrainingPlan().LimitOverrides.Add("high_days_at_most", 0) });

        Assert.Equal(Verdict.Kept, Sample.Judge("intensity-split", Sample.Review([Banded(6, 0)], plan)).Verdict);
    }

    [Theory]
    [InlineData(10, 3, 1, Verdict.NotJudged)]
    [InlineData(10, 4, 1, Verdict.Kept)]
    [InlineData(10, 3, 2, Verdict.Broken)]
    [InlineData(10, 7, 3, Verdict.Kept)]
    [InlineData(10, 9, 5, Verdict.Broken)]
    [InlineData(10, 7, 4, Verdict.Broken)]
    [InlineData(10, 9, 4, Verdict.Watch)]
    [InlineData(6, 4, 1, Verdict.NotJudged)]
    public void The_split_by_session_counts_what_rides_were_for(double hours, int easy, int hard, Verdict verdict)
    {
        var plan = Sample.Plan(hours, plan: new TrainingPlan { SplitBy = SplitBy.Session });
        var rides = Enumerable.Range(0, easy + hard).Select(i => Sample.Ride(Monday.PlusDays(i % 7), i < easy ? RideKind.Endurance : RideKind.High, 60, 6 + 2 * (i / 7)));

        Assert.Equal(verdict, Sample.Judge("intensity-split", Sample.Review(rides, plan)).Verdict);
    }

    [Theory]
    [InlineData(8.5, Verdict.Kept)]
    [InlineData(8.49, Verdict.Watch)]
    [InlineData(7, Verdict.Watch)]
    [InlineData(6.99, Verdict.Broken)]
    [InlineData(11.5, Verdict.Kept)]
    [InlineData(11.51, Verdict.Watch)]
    [InlineData(13, Verdict.Watch)]
    [InlineData(13.01, Verdict.Broken)]
    public void Hours_are_judged_against_the_plan(double hours, Verdict verdict) =>
        Assert.Equal(verdict, Judge("weekly-hours", 10, Banded(hours, 0)).Verdict);

    [Fact]
    public void Hours_above_plan_are_judged_in_an_unfinished_week_and_hours_below_are_not()
    {
        var above = Sample.Review([Banded(9, 0)], Sample.Plan(6), daysThatCount: 4);
        var below = Sample.Review([Banded(2, 0)], Sample.Plan(6), daysThatCount: 4);

        Assert.Equal(Verdict.Broken, Sample.Judge("weekly-hours", above).Verdict);
        Assert.Equal(Verdict.NotJudged, Sample.Judge("weekly-hours", below).Verdict);
    }

    [Fact]
    public void Hours_below_plan_are_judged_in_an_event_week_and_hours_above_are_not()
    {
        var race = new PlanException(Monday.PlusDays(5), Monday.PlusDays(5), ExceptionKind.Event);
        var plan = Sample.Plan(6, exceptions: race);

        Assert.Equal(Verdict.NotJudged, Sample.Judge("weekly-hours", Sample.Review([Banded(9, 0)], plan)).Verdict);
        Assert.Equal(Verdict.Broken, Sample.Judge("weekly-hours", Sample.Review([Banded(4, 0)], plan)).Verdict);
    }

    [Fact]
    public void A_lighter_week_that_holds_a_race_is_both()
    {
        var plan = Sample.Plan(
            10,
            exceptions: [new PlanException(Monday, Monday.PlusDays(4), ExceptionKind.Lighter), new PlanException(Monday.PlusDays(5), Monday.PlusDays(5), ExceptionKind.Event)]);
        var week = Sample.Review([Banded(6, 0)], plan);

        Assert.Equal(Verdict.Kept, Sample.Judge("weekly-hours", week).Verdict);
        Assert.Equal(("the week holds an event", "the week was planned lighter"), (Sample.Judge("hard-day-spacing", week).Reason, Sample.Judge("long-ride", week).Reason));
    }

    [Fact]
    public void Hours_taken_from_the_weeks_before_say_so()
    {
        var plan = PlanInForce.For(new Rider(), [new WeekHours(Monday.PlusDays(-14), 6), new WeekHours(Monday.PlusDays(-7), 8)]);

        Assert.Equal("7.0 h ridden, 100 % of 7.0 h, the mean of two weeks before.", Sample.Judge("weekly-hours", Sample.Review([Banded(7, 0)], plan)).Sentence.Plain());
    }

    [Fact]
    public void Without_planned_hours_what_needs_them_is_not_judged()
    {
        string[] needTier = ["hard-day-count", "rest-days", "long-ride", "endurance-volume", "intensity-split", "weekly-hours", "lighter-week", "long-ride-first"];
        var findings = RuleBook.Standard.Judge(Sample.Review([Banded(7, 0)], Sample.Plan(null)));

        Assert.All(findings.Where(f => needTier.Contains(f.Rule)), f => Assert.Equal(Verdict.NotJudged, f.Verdict));
        Assert.Equal(Verdict.Kept, findings.Single(f => f.Rule == "hard-day-spacing").Verdict);
    }

    private static Finding Judge(string rule, RideFigures ride) => Judge(rule, 6, ride);

    private static Finding Judge(string rule, double hours, RideFigures ride) => Sample.Judge(rule, Sample.Review([ride], Sample.Plan(hours)));

    private static RideFigures Banded(double lowHours, double highHours) =>
        Sample.Ride(Monday, RideKind.Endurance, (lowHours + highHours) * 60) with { Bands = new BandSeconds(lowHours * 3600, 0, highHours * 3600) };
}
