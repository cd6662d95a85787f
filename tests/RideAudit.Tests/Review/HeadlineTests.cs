using RideAudit.Document;
using RideAudit.Document.Json;
using RideAudit.Figures;
using RideAudit.Ingest;
using RideAudit.Plan;
using RideAudit.Tests.Rules;
using RideAudit.Units;

namespace RideAudit.Tests.Review;

/// <summary>The headline says first what matters most, and calls a week what it was.</summary>
public sealed class HeadlineTests
{
    [Fact]
    public void A_week_away_is_away_and_not_kept()
    {
        Assert.Equal("A week away, no ride.", Of(Excepted(ExceptionKind.Away, 0, 6)).Headline);
        Assert.Equal("A week away, one ride.", Of(Excepted(ExceptionKind.Away, 0, 6), Ride(2, RideKind.Endurance, 60)).Headline);
    }

    [Fact]
    public void An_ill_week_is_an_ill_week() => Assert.Equal(
        "An ill week: Wednesday to Sunday out, one ride.", Of(Excepted(ExceptionKind.Ill, 2, 6), Ride(1, RideKind.Endurance, 60)).Headline);

    [Fact]
    public void An_event_week_is_about_the_event_and_the_recovery()
    {
        Assert.Equal(
            "An event week: 5 h on Sunday, and recovery comes next.",
            Of(Excepted(ExceptionKind.Event, 6, 6), Ride(1, RideKind.High, 45), Ride(6, RideKind.Threshold, 300)).Headline.Plain());
        Assert.Equal(
            "An event week: 7 h from Monday to Tuesday, and rest after it.",
            Of(Excepted(ExceptionKind.Event, 0, 1), Ride(0, RideKind.Threshold, 210), Ride(1, RideKind.Threshold, 210), Ride(4, RideKind.Endurance, 60)).Headline.Plain());
    }

    [Fact]
    public void What_guards_the_rider_comes_before_what_was_missed() => Assert.StartsWith(
        "Two hard rides 23 h apart", Of(Sample.Plan(10), Ride(1, RideKind.High, 60), Ride(2, RideKind.High, 60)).Headline.Plain());

    [Fact]
    public void The_hours_are_those_of_the_pair_that_breaks_the_rule_not_of_the_closest()
    {
        // Tuesday and Wednesday are two high days 23 h apart; Friday evening's threshold ride and Saturday morning's high one are 14 h apart and only to watch.
        RideFigures[] rides =
        [
            Ride(1, RideKind.High, 60), Ride(2, RideKind.High, 60),
            Ride(4, RideKind.Threshold, 60), Sample.Ride(Sample.Monday.PlusDays(5), RideKind.High, 60, hour: 9),
        ];
        Assert.StartsWith("Two hard rides 23 h apart", Of(Sample.Plan(10), rides).Headline.Plain());
    }

    [Theory]
    [InlineData(Experience.New, "Two high days where the plan has one")]
    [InlineData(Experience.Racing, "The week kept the plan")]
    public void Too_many_hard_days_stand_beside_what_the_plan_has(Experience experience, string headline)
    {
        var plan = Sample.Plan(4.5, experience);
        Assert.StartsWith(headline, Of(plan, Ride(1, RideKind.High, 60), Ride(3, RideKind.High, 60), Ride(5, RideKind.Long, 150)).Headline.Plain());
    }

    [Fact]
    public void A_week_that_hardly_anything_could_rate_says_what_is_open()
    {
        var headline = Of(Sample.Plan(), Ride(0, RideKind.Unrated, 90), Ride(2, RideKind.Unrated, 90), Ride(4, RideKind.Unrated, 60), Ride(5, RideKind.Unrated, 150)).Headline;

        Assert.StartsWith("Much of this week could not be judged: ", headline, StringComparison.Ordinal);
        Assert.DoesNotContain("kept", headline, StringComparison.Ordinal);
    }

    [Fact]
    public void A_finding_of_three_weeks_says_so_once_and_a_watch_no_longer_leads()
    {
        var rides = Enumerable.Range(-3, 4).SelectMany(week => new[]
        {
            Ride(7 * week + 1, RideKind.High, 60), Ride(7 * week + 2, RideKind.Threshold, 60), Ride(7 * week + 4, RideKind.Endurance, 90), Ride(7 * week + 6, RideKind.Long, 160),
        }).ToArray();

        var document = Review(Sample.Plan(), rides);

        var spacing = document.Findings.Single(f => f.Rule == "hard-day-spacing");
        Assert.Equal((RideAudit.Rules.Verdict.Watch, 3), (spacing.Verdict, spacing.WeeksInARow));
        Assert.EndsWith("It is the fourth week in a row.", spacing.Sentence, StringComparison.Ordinal);
        Assert.DoesNotContain("apart", document.Summary.Headline, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rule_set_aside_is_shown_with_its_reason_and_leads_nothing()
    {
        var plan = Sample.Plan();
        plan = plan with { Rider = plan.Rider with { SetAside = [new SetAsideRule("hard-day-spacing", Sample.Monday.PlusDays(30), "a race block")] } };

        var document = Review(plan, Ride(1, RideKind.High, 60), Ride(2, RideKind.High, 60), Ride(6, RideKind.Long, 160));

        var spacing = document.Findings.Single(f => f.Rule == "hard-day-spacing");
        Assert.Equal("a race block", spacing.SetAside!.Why);
        Assert.Contains("set aside until", spacing.Reason!.ToLowerInvariant(), StringComparison.Ordinal);
        Assert.DoesNotContain("apart", document.Summary.Headline, StringComparison.Ordinal);
        Assert.Contains("\"why\": \"a race block\"", ReviewJson.Write(document), StringComparison.Ordinal);
    }

    [Fact]
    public void Doubtful_files_near_the_week_are_named_in_one_line_and_others_counted()
    {
        FileNotice[] files =
        [
            new("2026-05-06-evening.fit", "not a ride", null, "It is no ride.", Unusable: true),
            new("2023-01-02.fit", "not a ride", null, "It is no ride.", Unusable: true),
            new("2022-01-02.fit", "not a ride", null, "It is no ride.", Unusable: true),
            new("2026-05-05-1800.fit", "truncated", "half", "It ends early.", Unusable: false),
        ];

        var document = Review(Sample.Plan(), [Ride(1, RideKind.High, 60)], files);

        Assert.Equal(
            "Tuesday’s recording is incomplete: figures and kind are those of what was kept; 2026-05-06-evening.fit could not be used; of other times two files could not be used.",
            document.Summary.DataLine);
        Assert.EndsWith(document.Summary.DataLine!, document.Summary.Subline, StringComparison.Ordinal);
        Assert.DoesNotContain(document.ForOnePage(), n => n.File is "2023-01-02.fit");
        Assert.Null(Review(Sample.Plan(), [Ride(1, RideKind.High, 60)], files[1..3]).Summary.DataLine);
    }

    private static PlanInForce Excepted(ExceptionKind kind, int from, int to) =>
        Sample.Plan(6.5, Experience.Regular, null, new PlanException(Sample.Monday.PlusDays(from), Sample.Monday.PlusDays(to), kind));

    private static RideFigures Ride(int day, RideKind kind, double minutes) => Sample.Ride(Sample.Monday.PlusDays(day), kind, minutes);

    private static SummaryEntry Of(PlanInForce plan, params RideFigures[] rides) => Review(plan, rides).Summary;

    private static ReviewDocument Review(PlanInForce plan, params RideFigures[] rides) => Review(plan, rides, []);

    private static ReviewDocument Review(PlanInForce plan, RideFigures[] rides, FileNotice[] notices) => RandomReviews.Of(Sample.Review(rides, plan), rides, notices);
}
