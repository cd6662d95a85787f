using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Rules;
using RideAudit.Units;

namespace RideAudit.Tests.Rules;

/// <summary>Coming back after illness or a long absence. Common practice, no source.</summary>
public sealed class ReturnTests
{
    private static readonly LocalDate Monday = Sample.Monday;

    [Theory]
    [InlineData(ExceptionKind.Ill, 3, 0, Verdict.Broken)]
    [InlineData(ExceptionKind.Ill, 3, 2, Verdict.Broken)]
    [InlineData(ExceptionKind.Ill, 3, 3, Verdict.Kept)]
    [InlineData(ExceptionKind.Ill, 2, 0, Verdict.NotJudged)]
    [InlineData(ExceptionKind.Away, 7, 0, Verdict.Watch)]
    [InlineData(ExceptionKind.Away, 7, 1, Verdict.Watch)]
    [InlineData(ExceptionKind.Away, 7, 2, Verdict.Kept)]
    [InlineData(ExceptionKind.Away, 6, 0, Verdict.Kept)]
    [InlineData(ExceptionKind.Away, 2, 0, Verdict.NotJudged)]
    public void A_high_day_soon_after_days_out(ExceptionKind kind, int daysOut, int highDay, Verdict verdict) =>
        Assert.Equal(verdict, Judge([new PlanException(Monday.PlusDays(-daysOut), Monday.PlusDays(-1), kind)], On(highDay, RideKind.High)).Verdict);

    [Fact]
    public void A_threshold_ride_in_the_first_days_back_is_not_yet_a_high_day() =>
        Assert.Equal(Verdict.Kept, Judge([Ill(-4, -1)], On(0, RideKind.Threshold)).Verdict);

    [Fact]
    public void One_ill_day_makes_the_absence_an_illness() =>
        Assert.Equal(Verdict.Broken, Judge([Ill(-4, -4), new PlanException(Monday.PlusDays(-3), Monday.PlusDays(-1), ExceptionKind.Away)], On(1, RideKind.High)).Verdict);

    [Fact]
    public void The_sentence_says_which_day_back_it_was()
    {
        var finding = Judge([Ill(-5, -1)], On(1, RideKind.High));

        Assert.Equal("Tuesday was a high day, the second day after five ill days.", finding.Sentence);
        Assert.Equal("Nothing but easy riding in the first three days back.", finding.WouldHaveKept);
        Assert.Equal("a hard ride too soon after five ill days", finding.Headline);
        Assert.Equal([Monday.PlusDays(1)], Assert.Single(finding.Occurrences).Dates.ToArray());
    }

    [Fact]
    public void Days_out_that_end_within_the_week_count_as_well() =>
        Assert.Equal(Verdict.Broken, Judge([Ill(-1, 2)], On(4, RideKind.High)).Verdict);

    [Fact]
    public void Of_two_absences_the_one_that_was_not_heeded_counts() =>
        Assert.Equal(Verdict.Broken, Judge([Ill(-4, -1), Ill(4, 4)], On(1, RideKind.High)).Verdict);

    [Theory]
    [InlineData(-7, 4.2, Verdict.Kept)]
    [InlineData(-7, 4.22, Verdict.Kept)]
    [InlineData(-7, 4.3, Verdict.Watch)]
    [InlineData(-6, 6.0, Verdict.Kept)]
    public void The_first_seven_days_after_a_week_out_hold_at_most_70_percent_of_the_usual_hours(int firstOut, double hours, Verdict verdict) =>
        Assert.Equal(verdict, Judge([new PlanException(Monday.PlusDays(firstOut), Monday.PlusDays(-1), ExceptionKind.Away)], Sample.Ride(Monday.PlusDays(1), RideKind.Endurance, 60 * hours)).Verdict);

    [Fact]
    public void Days_back_in_the_week_before_count_towards_the_first_seven()
    {
        var away = new PlanException(Monday.PlusDays(-10), Monday.PlusDays(-3), ExceptionKind.Away);

        Assert.Equal(Verdict.Watch, Judge([away], Sample.Ride(Monday.PlusDays(-1), RideKind.Endurance, 150), Sample.Ride(Monday.PlusDays(3), RideKind.Endurance, 120)).Verdict);
        Assert.Equal(Verdict.Kept, Judge([away], Sample.Ride(Monday.PlusDays(-1), RideKind.Endurance, 150), Sample.Ride(Monday.PlusDays(5), RideKind.Endurance, 120)).Verdict);
    }

    [Theory]
    [InlineData("weekly-hours")]
    [InlineData("endurance-volume")]
    [InlineData("long-ride")]
    public void No_rule_asks_the_rider_who_has_just_come_back_for_more(string rule)
    {
        var week = Sample.Review([On(1, RideKind.Endurance)], Sample.Plan(6, exceptions: Ill(-5, -1)));
        var ordinary = Sample.Review([On(1, RideKind.Endurance)], Sample.Plan(6, exceptions: Ill(-9, -5)));

        Assert.Equal((Verdict.NotJudged, Verdict.Broken), (Sample.Judge(rule, week).Verdict, Sample.Judge(rule, ordinary).Verdict));
    }

    [Fact]
    public void Without_days_out_there_is_no_return_to_judge() =>
        Assert.Equal("there were no three days out in a row to come back from", Judge([], On(0, RideKind.High)).Reason);

    private static Finding Judge(PlanException[] exceptions, params RideFigures[] rides) =>
        Sample.Judge("return-to-riding", Sample.Review(rides, Sample.Plan(6, exceptions: exceptions)));

    private static PlanException Ill(int first, int last) => new(Monday.PlusDays(first), Monday.PlusDays(last), ExceptionKind.Ill);

    private static RideFigures On(int day, RideKind kind) => Sample.Ride(Monday.PlusDays(day), kind, 60);
}
