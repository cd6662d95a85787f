using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Rules;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Tests.Rules;

public class LoadTests
{
    private static readonly LocalDate Monday = Sample.Monday;

    [Theory]
    [InlineData(5, Verdict.Kept)]
    [InlineData(5.04, Verdict.Kept)]
    [InlineData(5.06, Verdict.Watch)]
    [InlineData(8.04, Verdict.Watch)]
    [InlineData(8.06, Verdict.Broken)]
    [InlineData(-3, Verdict.Kept)]
    public void The_ramp_is_judged_in_points_a_week(double ramp, Verdict verdict)
    {
        var week = Sample.Week([Sample.Ride(Monday, RideKind.Endurance, 60)], firstRideOn: Monday.PlusDays(-100));
        week = week with { LoadBefore = new LoadState(40, 40), LoadAfter = new LoadState(40, 40 + ramp) };

        Assert.Equal(verdict, Sample.Judge("chronic-ramp", new WeekUnderReview(week, Past.None, Sample.Plan())).Verdict);
    }

    [Theory]
    [InlineData(-35, Verdict.NotJudged)]
    [InlineData(-36, Verdict.Kept)]
    public void The_ramp_is_not_judged_in_the_first_42_days(int firstRide, Verdict verdict)
    {
        var week = Sample.Week([Sample.Ride(Monday, RideKind.Endurance, 60)], firstRideOn: Monday.PlusDays(firstRide));

        Assert.Equal(verdict, Sample.Judge("chronic-ramp", new WeekUnderReview(week, Past.None, Sample.Plan())).Verdict);
    }

    [Theory]
    [InlineData(60, 540, Verdict.Kept)]
    [InlineData(62, 538, Verdict.Kept)]
    [InlineData(63, 537, Verdict.NotJudged)]
    public void A_stress_rule_bears_a_tenth_of_the_hours_without_a_known_stress(int unknownMinutes, int knownMinutes, Verdict verdict)
    {
        var rides = new[]
        {
            Sample.Ride(Monday, RideKind.Endurance, unknownMinutes) with { Stress = null, StressFrom = StressSource.Unknown },
            Sample.Ride(Monday.PlusDays(2), RideKind.Endurance, knownMinutes),
        };

        Assert.Equal(verdict, Sample.Judge("monotony", Sample.Review(rides, Sample.Plan())).Verdict);
    }

    [Fact]
    public void Rest_is_asked_for_after_the_heaviest_two_days_in_a_row()
    {
        var rides = Before().Concat([Stress(0, 60), Stress(1, 60), Stress(2, 60), Stress(3, 60)]);

        var finding = Sample.Judge("rest-after-load", Sample.Review(rides, Sample.Plan()));

        Assert.Equal(Verdict.Kept, finding.Verdict);
        Assert.Equal("Wednesday and Thursday were the heaviest two days in a row (120 points, 40 % of a usual week), and rest or recovery followed.", finding.Sentence.Plain());
    }

    [Theory]
    [InlineData(120, Verdict.Broken)]
    [InlineData(118.4, Verdict.Kept)]
    public void Two_days_are_heavy_from_40_percent_of_a_usual_week(double pair, Verdict verdict)
    {
        var rides = Before().Concat([Stress(1, pair / 2), Stress(2, pair / 2), Stress(3, 40), Stress(4, 40)]);

        Assert.Equal(verdict, Sample.Judge("rest-after-load", Sample.Review(rides, Sample.Plan())).Verdict);
    }

    [Theory]
    [InlineData(RideKind.Endurance, Verdict.Kept)]
    [InlineData(RideKind.Threshold, Verdict.Broken)]
    [InlineData(RideKind.High, Verdict.Broken)]
    public void The_day_after_the_heaviest_two_is_not_hard_though_the_one_after_it_is_free(RideKind kind, Verdict verdict)
    {
        var rides = Before().Concat([Stress(1, 90), Stress(2, 90), Sample.Ride(Monday.PlusDays(3), kind, 60) with { Stress = 40 }]);

        var finding = Sample.Judge("rest-after-load", Sample.Review(rides, Sample.Plan()));

        Assert.Equal(verdict, finding.Verdict);
        if (verdict == Verdict.Broken)
            Assert.Equal("Tuesday and Wednesday held 180 points, 60 % of a usual week, and Thursday was a hard day again.", finding.Sentence.Plain());
    }

    [Fact]
    public void A_pair_that_ends_on_the_day_before_the_week_counts()
    {
        var rides = Before().Concat([Stress(-2, 90), Stress(-1, 90), Stress(0, 50), Stress(1, 50)]);

        var finding = Sample.Judge("rest-after-load", Sample.Review(rides, Sample.Plan()));

        Assert.Equal(Verdict.Broken, finding.Verdict);
        Assert.StartsWith("Saturday and Sunday before this week held 180 points", finding.Sentence.Plain(), StringComparison.Ordinal);
        Assert.Equal([-2, -1, 0, 1], finding.Occurrences[0].Dates.Select(d => Period.DaysBetween(Monday, d)));
    }

    [Fact]
    public void A_pair_that_ends_on_the_fifth_day_counts_and_one_that_ends_later_does_not()
    {
        var fifth = Before().Concat([Stress(3, 90), Stress(4, 90), Stress(5, 30), Stress(6, 30)]);
        var sixth = Before().Concat([Stress(4, 30), Stress(5, 90), Stress(6, 90)]);

        Assert.Equal([3, 4, 5, 6], Sample.Judge("rest-after-load", Sample.Review(fifth, Sample.Plan())).Occurrences[0].Dates.Select(d => Period.DaysBetween(Monday, d)));
        Assert.Equal(Verdict.Kept, Sample.Judge("rest-after-load", Sample.Review(sixth, Sample.Plan())).Verdict);
    }

    [Fact]
    public void A_heavy_pair_without_rest_needs_four_weeks_of_history()
    {
        var rides = new[] { Stress(-8, 60), Stress(1, 90), Stress(2, 90), Stress(3, 50), Stress(4, 50) };

        Assert.Equal("it needs four weeks before this one", Sample.Judge("rest-after-load", Sample.Review(rides, Sample.Plan())).Reason);
    }

    [Fact]
    public void While_an_event_goes_on_no_rest_is_asked_for_and_after_it_rest_is()
    {
        var tour = new PlanException(Monday.PlusDays(-4), Monday.PlusDays(-1), ExceptionKind.Event);
        var stages = Enumerable.Range(-4, 4).Select(d => Stress(d, 150));
        var during = Sample.Review(Before().Concat(stages), Sample.Plan(exceptions: tour), Monday.PlusDays(-7));
        var after = Sample.Review(Before().Concat(stages).Concat([Stress(0, 50), Stress(1, 50)]), Sample.Plan(exceptions: tour));

        Assert.Equal(Verdict.Kept, Sample.Judge("rest-after-load", during).Verdict);
        Assert.Equal(Verdict.Broken, Sample.Judge("rest-after-load", after).Verdict);
    }

    [Theory]
    [InlineData(new double[] { 0, 0, 100, 100, 100, 100, 100 }, Verdict.Watch)]
    [InlineData(new double[] { 0, 0, 0, 100, 100, 100, 100 }, Verdict.Kept)]
    [InlineData(new double[] { 0, 100, 100, 100, 100, 100, 100 }, Verdict.Broken)]
    [InlineData(new double[] { 0, 0, 0, 0, 0, 100, 99 }, Verdict.NotJudged)]
    [InlineData(new double[] { 50, 50, 50, 50, 50, 50, 50 }, Verdict.NotJudged)]
    [InlineData(new double[] { 0, 0, 95, 100, 100, 105, 110 }, Verdict.Watch)]
    [InlineData(new double[] { 100, 200, 300, 400, 500, 600, 700 }, Verdict.Watch)]
    public void Monotony_is_judged_at_one_and_a_half_and_at_two(double[] stresses, Verdict verdict)
    {
        var rides = stresses.Select((s, i) => Stress(i, s)).Where(r => r.Stress > 0);

        Assert.Equal(verdict, Sample.Judge("monotony", Sample.Review(rides, Sample.Plan())).Verdict);
    }

    /// <summary>Four weeks of 300 points, on days that make no heavy pair and none beside the judged week.</summary>
    private static IEnumerable<RideFigures> Before() =>
        from week in Enumerable.Range(1, 5)
        from day in new[] { 0, 2, 4 }
        select Stress(-7 * week + day, 100);

    private static RideFigures Stress(int day, double stress) => Sample.Ride(Monday.PlusDays(day), RideKind.Endurance, 90, day is -3 or -1 ? 8 : 18) with { Stress = stress };
}
