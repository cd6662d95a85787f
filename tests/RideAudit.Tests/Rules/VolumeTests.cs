using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Rules;
using RideAudit.Units;

namespace RideAudit.Tests.Rules;

public class VolumeTests
{
    private static readonly LocalDate Monday = Sample.Monday;

    [Theory]
    [InlineData(142, Verdict.Watch)]
    [InlineData(119.6, Verdict.Watch)]
    [InlineData(119.4, Verdict.Broken)]
    public void A_long_ride_is_near_its_length_within_20_percent(double minutes, Verdict verdict) =>
        Assert.Equal(verdict, Judge("long-ride", Sample.Ride(Monday, RideKind.Endurance, minutes)).Verdict);

    [Fact]
    public void A_threshold_ride_that_is_long_enough_is_the_long_ride_as_well() =>
        Assert.Equal(Verdict.Kept, Judge("long-ride", Sample.Ride(Monday.PlusDays(5), RideKind.Threshold, 180, 9, lowShare: 0.66) with { LongEnough = true }).Verdict);

    [Theory]
    [InlineData(80, 63, 0.9, 0.6, Verdict.Kept)]
    [InlineData(80, 62, 0.9, 0.6, Verdict.Broken)]
    [InlineData(80, 63, 0.9, 0.59, Verdict.Broken)]
    public void Two_rides_of_one_day_that_are_together_long_enough_are_the_long_ride(double first, double second, double firstLow, double secondLow, Verdict verdict)
    {
        var rides = new[] { Sample.Ride(Monday, RideKind.Endurance, first, 7, lowShare: firstLow), Sample.Ride(Monday, RideKind.Threshold, second, 17, lowShare: secondLow) };
        var finding = Sample.Judge("long-ride", Sample.Review(rides, Sample.Plan(6)));

        Assert.Equal(verdict, finding.Verdict);
        if (verdict == Verdict.Kept)
            Assert.Equal("Monday’s rides made 2 h 23 min together and count as the long ride; near enough to the 2 h 30 min that the plan asks for.", finding.Sentence.Plain());
    }

    [Fact]
    public void Two_rides_of_two_days_are_no_long_ride()
    {
        var rides = new[] { Sample.Ride(Monday, RideKind.Endurance, 90), Sample.Ride(Monday.PlusDays(1), RideKind.Endurance, 90) };

        Assert.Equal(Verdict.Broken, Sample.Judge("long-ride", Sample.Review(rides, Sample.Plan(6))).Verdict);
    }

    [Fact]
    public void What_would_have_kept_the_long_ride_does_keep_it()
    {
        var brief = Sample.Ride(Monday.PlusDays(6), RideKind.Endurance, 110, 9);
        var hard = Sample.Ride(Monday.PlusDays(1), RideKind.High, 115);

        Assert.Equal("40 min more on Sunday, all of it easy.", Sample.Judge("long-ride", Sample.Review([hard, brief], Sample.Plan(6))).WouldHaveKept!.Plain());
        Assert.Equal("One easy ride of 2 h 30 min.", Sample.Judge("long-ride", Sample.Review([hard], Sample.Plan(6))).WouldHaveKept!.Plain());
    }

    [Fact]
    public void No_lengthening_is_advised_on_the_day_before_a_day_out()
    {
        var away = new PlanException(Monday.PlusDays(4), Monday.PlusDays(5), ExceptionKind.Away);
        var rides = new[] { Sample.Ride(Monday.PlusDays(3), RideKind.Endurance, 115), Sample.Ride(Monday.PlusDays(6), RideKind.Endurance, 110, 9) };

        Assert.Equal("40 min more on Sunday, all of it easy.", Sample.Judge("long-ride", Sample.Review(rides, Sample.Plan(6, exceptions: away))).WouldHaveKept!.Plain());
    }

    [Fact]
    public void A_long_hard_ride_is_worth_a_look_and_says_why()
    {
        var finding = Judge("long-ride", Sample.Ride(Monday.PlusDays(5), RideKind.Threshold, 180, 9));

        Assert.Equal(Verdict.Watch, finding.Verdict);
        Assert.Equal("Saturday’s ride of 3 h was long enough, but only 55 % of it was easy.", finding.Sentence.Plain());
    }

    [Theory]
    [InlineData(3.825, Verdict.Kept)]
    [InlineData(3.824, Verdict.Broken)]
    public void Endurance_volume_may_fall_15_percent_short(double lowHours, Verdict verdict) =>
        Assert.Equal(verdict, Judge("endurance-volume", 6, Banded(lowHours, 1)).Verdict);

    [Fact]
    public void Endurance_volume_of_a_lighter_week_asks_for_six_tenths()
    {
        var lighter = new PlanException(Monday, Monday.PlusDays(6), ExceptionKind.Lighter);
        var plan = Sample.Plan(6, exceptions: lighter);

        Assert.Equal(Verdict.Kept, Sample.Judge("endurance-volume", Sample.Review([Banded(2.3, 0)], plan)).Verdict);
        Assert.Equal(Verdict.Broken, Sample.Judge("endurance-volume", Sample.Review([Banded(2.27, 0)], plan)).Verdict);
    }

    [Theory]
    [InlineData(0.675, Verdict.Kept)]
    [InlineData(0.6749, Verdict.Watch)]
    [InlineData(0.605, Verdict.Watch)]
    [InlineData(0.6049, Verdict.Broken)]
    [InlineData(0.8901, Verdict.Kept)]
    [InlineData(1, Verdict.Kept)]
    public void The_split_by_time_is_judged_below_its_tolerance_and_below_twice_of_it_and_never_above(double low, Verdict verdict) =>
        Assert.Equal(verdict, Judge("intensity-split", 6, Banded(10 * low, 10 * (1 - low))).Verdict);

    [Fact]
    public void Riding_easier_than_intended_is_said_to_be_fine() =>
        Assert.Equal("100 % of the time was easy; the plan intends 75 %, and easier than that is fine.", Judge("intensity-split", 6, Banded(6, 0)).Sentence.Plain());

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
    [InlineData(8.45, Verdict.Kept)]
    [InlineData(8.44, Verdict.Watch)]
    [InlineData(6.95, Verdict.Watch)]
    [InlineData(6.94, Verdict.Broken)]
    [InlineData(11.54, Verdict.Kept)]
    [InlineData(11.55, Verdict.Watch)]
    [InlineData(13.04, Verdict.Watch)]
    [InlineData(13.05, Verdict.Broken)]
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
    public void Hours_are_not_judged_in_an_event_week()
    {
        var race = new PlanException(Monday.PlusDays(5), Monday.PlusDays(5), ExceptionKind.Event);
        var plan = Sample.Plan(6, exceptions: race);

        Assert.Equal(Verdict.NotJudged, Sample.Judge("weekly-hours", Sample.Review([Banded(9, 0)], plan)).Verdict);
        Assert.Equal(Verdict.NotJudged, Sample.Judge("weekly-hours", Sample.Review([Banded(4, 0)], plan)).Verdict);
    }

    [Fact]
    public void A_lighter_week_that_holds_a_race_is_both()
    {
        var plan = Sample.Plan(
            10,
            exceptions: [new PlanException(Monday, Monday.PlusDays(4), ExceptionKind.Lighter), new PlanException(Monday.PlusDays(5), Monday.PlusDays(5), ExceptionKind.Event)]);
        var week = Sample.Review([Banded(6, 0)], plan);

        Assert.Equal((7 - 5 * 0.4) / 7 * 10, new JudgedWeek(week).PlannedHours!.Value, 9);
        Assert.All(["hard-day-spacing", "weekly-hours", "long-ride"], rule => Assert.Equal("the week holds an event", Sample.Judge(rule, week).Reason));
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
