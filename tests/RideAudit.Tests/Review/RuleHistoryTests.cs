using NodaTime;
using RideAudit.Document;
using RideAudit.Plan;
using RideAudit.Rides;
using RideAudit.Rules;
using RideAudit.Tests.Support;
using static RideAudit.Tests.Support.Made;

namespace RideAudit.Tests.Review;

/// <summary>What the rules said of the weeks before the reviewed one.</summary>
public sealed class RuleHistoryTests
{
    private static readonly LocalDate AsOf = new(2026, 5, 11);

    [Theory]
    [InlineData(1, 1)]
    [InlineData(5, 5)]
    [InlineData(8, 8)]
    [InlineData(12, 8)]
    public void Every_rule_has_the_weeks_since_the_first_ride_but_no_more_than_eight(int ridden, int shown)
    {
        var review = Review(Rider(), Enumerable.Range(0, ridden).Select(ago => Ride(ago, 3600)));
        Assert.Equal(review.Findings.Select(f => f.Rule), review.RuleHistory.Select(h => h.Rule));
        LocalDate[] starts = [.. Enumerable.Range(0, shown).Reverse().Select(ago => Monday(ago))];
        Assert.All(review.RuleHistory, h => Assert.Equal(starts, h.Weeks.Select(w => w.StartsOn)));
        Assert.Equal(review.Findings.Select(f => f.Verdict), review.RuleHistory.Select(h => h.Weeks[^1].Verdict));
    }

    [Fact]
    public void Weeks_without_a_ride_are_weeks_too_and_say_what_such_a_week_says()
    {
        // Ridden six weeks ago and now; in between the planned hours are to be watched and nothing else is judged.
        var review = Review(Rider(), [Ride(6, 3600), Ride(0, 3600)]);
        var hours = Of(review, "weekly-hours");
        Assert.Equal(7, hours.Length);
        Assert.All(hours[1..^1], v => Assert.Equal(Verdict.Watch, v));
        Assert.All(Of(review, "long-ride")[1..^1], v => Assert.Equal(Verdict.NotJudged, v));
    }

    [Fact]
    public void A_week_is_judged_by_the_hours_planned_then()
    {
        var rider = Rider() with { Plan = new TrainingPlan { WeeklyHours = 2 }, Hours = [new HoursEntry(Monday(0), 6)] };
        var hours = Of(Review(rider, Enumerable.Range(0, 4).Select(ago => Ride(ago, 7200))), "weekly-hours");
        Assert.Equal([Verdict.Kept, Verdict.Kept, Verdict.Kept, Verdict.Broken], hours);
    }

    [Fact]
    public void A_week_away_is_judged_as_one_away()
    {
        var rider = Rider() with { Exceptions = [new PlanException(Monday(2), Monday(2).PlusDays(6), ExceptionKind.Away)] };
        var hours = Of(Review(rider, [Ride(3, 21600), Ride(1, 21600), Ride(0, 21600)]), "weekly-hours");
        Assert.Equal([Verdict.Kept, Verdict.NotJudged, Verdict.Kept, Verdict.Kept], hours);
    }

    [Fact]
    public void Every_verdict_is_the_one_that_weeks_own_review_gave()
    {
        var now = DemoReview.Build();
        foreach (var ago in new[] { 1, 3, 7 })
        {
            var then = DemoReview.Build(DemoReview.AsOf.PlusWeeks(-ago));
            Assert.Equal(then.Week.StartsOn, now.RuleHistory[0].Weeks[^(ago + 1)].StartsOn);
            Assert.Equal(then.Findings.Select(f => (f.Rule, f.Verdict)), now.RuleHistory.Select(h => (h.Rule, h.Weeks[^(ago + 1)].Verdict)));
        }
    }

    private static Verdict[] Of(ReviewDocument review, string rule) => [.. review.RuleHistory.Single(h => h.Rule == rule).Weeks.Select(w => w.Verdict)];

    private static ReviewDocument Review(Rider rider, IEnumerable<Recording> rides) => Folders.Review(rides, rider, AsOf);

    private static Rider Rider() => Made.Rider() with { Plan = new TrainingPlan { WeeklyHours = 6 } };

    private static LocalDate Monday(int weeksAgo) => AsOf.PlusDays(-7 * (weeksAgo + 1));

    private static Recording Ride(int weeksAgo, int seconds) =>
        Recording($"{weeksAgo}.fit", Monday(weeksAgo).PlusDays(1).At(new LocalTime(12, 0)).InUtc().ToInstant(), Flat(seconds, 150));
}
