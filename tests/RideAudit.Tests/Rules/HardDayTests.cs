using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Rules;
using RideAudit.Rules.Changes;
using RideAudit.Units;

namespace RideAudit.Tests.Rules;

public class HardDayTests
{
    private static readonly LocalDate Monday = Sample.Monday;

    [Theory]
    [InlineData(RideKind.High, RideKind.High, Verdict.Broken)]
    [InlineData(RideKind.High, RideKind.Threshold, Verdict.Watch)]
    [InlineData(RideKind.Threshold, RideKind.High, Verdict.Watch)]
    [InlineData(RideKind.Threshold, RideKind.Threshold, Verdict.Watch)]
    [InlineData(RideKind.High, RideKind.Long, Verdict.Kept)]
    [InlineData(RideKind.High, RideKind.Endurance, Verdict.Kept)]
    public void Two_days_in_a_row_are_judged_by_their_kinds(RideKind first, RideKind second, Verdict verdict) =>
        Assert.Equal(verdict, Spacing(On(1, first), On(2, second)).Verdict);

    [Fact]
    public void One_day_between_two_high_days_is_enough() =>
        Assert.Equal(Verdict.Kept, Spacing(On(1, RideKind.High), On(3, RideKind.High)).Verdict);

    [Theory]
    [InlineData(1200, 1169, Verdict.Watch)]
    [InlineData(1200, 1170, Verdict.Broken)]
    public void Two_threshold_days_in_a_row_are_broken_from_40_minutes_close_to_threshold_on(double first, double second, Verdict verdict)
    {
        var finding = Spacing(Near(1, first), Near(2, second));

        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal(verdict == Verdict.Broken, finding.Sentence.Plain().Contains("with 40 min close to threshold between them", StringComparison.Ordinal));
    }

    [Fact]
    public void A_high_and_a_threshold_day_are_worth_a_look_however_much_of_them_is_close_to_threshold() =>
        Assert.Equal(Verdict.Watch, Spacing(On(1, RideKind.High), Near(2, 3000)).Verdict);

    [Fact]
    public void A_second_hard_ride_three_hours_after_the_first_counts_as_another()
    {
        RideFigures[] early = [On(0, RideKind.High, 7), On(0, RideKind.High, 11), On(2, RideKind.High), On(4, RideKind.Threshold)];
        RideFigures[] near = [On(0, RideKind.High, 7), On(0, RideKind.High, 10, 59), On(2, RideKind.High), On(4, RideKind.Threshold)];
        var finding = Sample.Judge("hard-day-count", Sample.Review(early, Sample.Plan()));

        Assert.Equal((Verdict.Broken, Verdict.Kept), (finding.Verdict, Sample.Judge("hard-day-count", Sample.Review(near, Sample.Plan())).Verdict));
        Assert.Equal(
            "Three high sessions and one threshold session on three days, and a second hard ride of a day counts like another day; "
            + "the plan has at most two high days and three hard days in all.",
            finding.Sentence.Plain());
        Assert.Equal("One high session fewer, ridden easy.", finding.WouldHaveKept);
        Assert.Equal("four hard sessions on three days where the plan has three", finding.Headline);
    }

    [Fact]
    public void A_long_ride_that_is_nearly_there_is_not_crowded_out()
    {
        var rides = Enumerable.Range(0, 3).Select(i => On(2 * i, RideKind.Threshold)).ToList();

        Assert.Equal(Verdict.Kept, Sample.Judge("long-ride-first", Sample.Review([.. rides, Sample.Ride(Monday.PlusDays(6), RideKind.Endurance, 120, 9)], Sample.Plan())).Verdict);
        Assert.Equal(Verdict.Broken, Sample.Judge("long-ride-first", Sample.Review([.. rides, Sample.Ride(Monday.PlusDays(6), RideKind.Endurance, 119, 9)], Sample.Plan())).Verdict);
    }

    [Fact]
    public void Two_hard_rides_on_one_day_are_one_hard_day() =>
        Assert.Equal(Verdict.Kept, Spacing(On(1, RideKind.High, 7), On(1, RideKind.High, 18)).Verdict);

    [Fact]
    public void Spacing_looks_back_across_the_weeks_border()
    {
        var finding = Spacing(On(-1, RideKind.High, 23, 30), On(0, RideKind.High));

        Assert.Equal(Verdict.Broken, finding.Verdict);
        Assert.Equal("The Sunday before and Monday were both high days with no easier day between, 18 h from the end of one hard ride to the start of the next.", finding.Sentence.Plain());
        var occurrence = Assert.Single(finding.Occurrences);
        Assert.Equal([Monday.PlusDays(-1), Monday], occurrence.Dates.ToArray());
        Assert.Equal(17.5, Assert.Single(occurrence.Numbers).Value);
    }

    [Fact]
    public void Three_high_days_in_a_row_are_two_occurrences()
    {
        var finding = Spacing(On(1, RideKind.High), On(2, RideKind.High), On(3, RideKind.Threshold));

        Assert.Equal([Verdict.Broken, Verdict.Watch], finding.Occurrences.Select(o => o.Verdict));
        Assert.EndsWith("It happened twice.", finding.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Spacing_names_the_hard_rides_and_not_the_easy_ones_of_the_day()
    {
        var finding = Spacing(On(1, RideKind.High), On(2, RideKind.Endurance, 7), On(2, RideKind.High, 18));

        Assert.Equal(["2026-05-05-1800.fit", "2026-05-06-1800.fit"], finding.Occurrences[0].Rides.ToArray());
        Assert.Equal(23, finding.Occurrences[0].Numbers[0].Value);
    }

    [Theory]
    [InlineData(6.5, Experience.Regular, 2, 1, Verdict.Kept)]
    [InlineData(6.5, Experience.Regular, 2, 2, Verdict.Broken)]
    [InlineData(6.5, Experience.Regular, 3, 0, Verdict.Broken)]
    [InlineData(6.5, Experience.Regular, 0, 3, Verdict.Kept)]
    [InlineData(6.5, Experience.Regular, 0, 4, Verdict.Broken)]
    [InlineData(6.5, Experience.New, 1, 1, Verdict.Kept)]
    [InlineData(6.5, Experience.New, 2, 0, Verdict.Broken)]
    [InlineData(4, Experience.Racing, 3, 0, Verdict.Kept)]
    [InlineData(4, Experience.Racing, 2, 1, Verdict.Kept)]
    [InlineData(4, Experience.Racing, 3, 1, Verdict.Broken)]
    [InlineData(4, Experience.Racing, 4, 0, Verdict.Broken)]
    public void Hard_days_are_counted_against_tier_and_experience(double hours, Experience experience, int high, int threshold, Verdict verdict)
    {
        var rides = Enumerable.Range(0, high).Select(i => On(i, RideKind.High)).Concat(Enumerable.Range(high, threshold).Select(i => On(i, RideKind.Threshold)));

        Assert.Equal(verdict, Sample.Judge("hard-day-count", Sample.Review(rides, Sample.Plan(hours, experience))).Verdict);
    }

    [Theory]
    [InlineData(2, Verdict.Kept)]
    [InlineData(3, Verdict.Broken)]
    public void Three_hard_days_ask_for_the_long_ride_first(int hardDays, Verdict verdict)
    {
        var rides = Enumerable.Range(0, hardDays).Select(i => On(2 * i, RideKind.Threshold)).ToList();
        var without = Sample.Judge("long-ride-first", Sample.Review(rides, Sample.Plan()));
        var with = Sample.Judge("long-ride-first", Sample.Review([.. rides, Sample.Ride(Monday.PlusDays(6), RideKind.Long, 150, 9)], Sample.Plan()));

        Assert.Equal((verdict, Verdict.Kept), (without.Verdict, with.Verdict));
    }

    [Fact]
    public void Where_the_long_ride_is_missing_beside_three_hard_days_the_change_gives_the_long_ride()
    {
        RideFigures[] rides = [On(1, RideKind.Threshold), On(3, RideKind.Threshold), On(5, RideKind.Threshold), Sample.Ride(Monday.PlusDays(6), RideKind.Endurance, 110, 7)];
        var review = Sample.Review(rides, Sample.Plan());
        var findings = RuleBook.Standard.Judge(review);

        var change = ChangeSearch.Find(review, findings);

        Assert.Equal("long-ride-first", RuleBook.MostSerious(findings)[0].Rule);
        Assert.Equal(ChangeKind.Lengthen, Assert.Single(change!.Changes).Kind);
        Assert.Contains("long-ride-first", change.Keeps);
    }

    [Fact]
    public void The_sentence_of_a_broken_count_says_both_limits()
    {
        var finding = Sample.Judge("hard-day-count", Sample.Review([On(0, RideKind.High), On(2, RideKind.High), On(4, RideKind.High), On(6, RideKind.Threshold)], Sample.Plan()));

        Assert.Equal("Three high days and one threshold day; the plan has at most two high days and three hard days in all.", finding.Sentence);
        Assert.Equal("One high day fewer, ridden easy.", finding.WouldHaveKept);
    }

    private static Finding Spacing(params RideFigures[] rides) => Sample.Judge("hard-day-spacing", Sample.Review(rides, Sample.Plan()));

    private static RideFigures Near(int day, double seconds) => On(day, RideKind.Threshold) with { NearThreshold = new SustainedTime(91, seconds, []) };

    private static RideFigures On(int day, RideKind kind, int hour = 18, int minute = 0) => Sample.Ride(Monday.PlusDays(day), kind, 60, hour, minute);
}
