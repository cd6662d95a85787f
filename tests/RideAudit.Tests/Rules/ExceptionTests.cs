using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Rules;
using RideAudit.Units;

namespace RideAudit.Tests.Rules;

/// <summary>Days out, events and lighter days change what a week is judged by, day by day.</summary>
public sealed class ExceptionTests
{
    private static readonly LocalDate Monday = Sample.Monday;

    private static readonly string[] AskForRiding = ["long-ride", "endurance-volume", "weekly-hours", "long-ride-first"];

    [Theory]
    [InlineData(0, 7)]
    [InlineData(1, 6)]
    [InlineData(2, 5)]
    public void Hours_asked_shrink_by_a_seventh_for_each_day_out(int daysOut, double hours)
    {
        var plan = Sample.Plan(7, exceptions: daysOut == 0 ? [] : [Out(ExceptionKind.Away, 0, daysOut - 1)]);

        Assert.Equal(hours, new JudgedWeek(Sample.Review([On(6, RideKind.Endurance, 60)], plan)).PlannedHours!.Value, 9);
    }

    [Fact]
    public void A_lighter_week_asks_for_six_tenths_and_every_sentence_says_so()
    {
        var week = Sample.Review([On(2, RideKind.Endurance, 300)], Sample.Plan(10, exceptions: Out(ExceptionKind.Lighter, 0, 6)));

        Assert.Equal("5.0 h ridden, 83 % of the 6.0 h planned for a lighter week.", Sample.Judge("weekly-hours", week).Sentence.Plain());
        Assert.Contains("80 % of 6.0 h planned is 4.8 h", Sample.Judge("endurance-volume", week).Sentence.Plain(), StringComparison.Ordinal);
        Assert.Equal("the week was planned lighter", Sample.Judge("long-ride", week).Reason);
    }

    [Theory]
    [InlineData(ExceptionKind.Away, 2, false)]
    [InlineData(ExceptionKind.Away, 3, true)]
    [InlineData(ExceptionKind.Ill, 1, true)]
    public void Nobody_is_asked_to_ride_more_when_away_for_three_days_or_ill_for_one(ExceptionKind kind, int days, bool excepted)
    {
        var week = Sample.Review([On(6, RideKind.Endurance, 60)], Sample.Plan(10, exceptions: Out(kind, 0, days - 1)));

        Assert.All(AskForRiding, rule => Assert.Equal(excepted, Sample.Judge(rule, week).Verdict == Verdict.NotJudged));
        if (excepted)
            Assert.Equal(kind == ExceptionKind.Ill ? "the rider was ill" : "the rider was away", Sample.Judge("weekly-hours", week).Reason);
    }

    [Fact]
    public void What_an_event_moves_is_not_judged_in_its_week_and_rest_is()
    {
        string[] excepted =
        [
            "hard-day-spacing", "hard-day-count", "long-ride", "endurance-volume", "intensity-split", "weekly-hours", "chronic-ramp", "weekly-growth", "longest-ride-jump",
            "growth-is-endurance", "monotony", "long-ride-first",
        ];
        var rides = Enumerable.Range(-60, 67).Where(d => d % 2 == 0).Select(d => On(d, RideKind.High, 90));
        var findings = RuleBook.Standard.Judge(Sample.Review(rides, Sample.Plan(10, exceptions: Out(ExceptionKind.Event, 6, 6))));

        Assert.Equal(excepted.Order(StringComparer.Ordinal), findings.Where(f => f.Reason == "the week holds an event").Select(f => f.Rule).Order(StringComparer.Ordinal));
        Assert.All(["rest-days", "rest-after-load", "easy-rides-easy"], rule => Assert.NotEqual(Verdict.NotJudged, findings.Single(f => f.Rule == rule).Verdict));
    }

    [Fact]
    public void A_camp_of_seven_days_is_asked_for_no_day_of_rest()
    {
        var rides = Enumerable.Range(0, 7).Select(d => On(d, RideKind.Endurance, 200));

        Assert.Equal(Verdict.Kept, Sample.Judge("rest-days", Sample.Review(rides, Sample.Plan(10, exceptions: Out(ExceptionKind.Event, 0, 6)))).Verdict);
        Assert.Equal(Verdict.Broken, Sample.Judge("rest-days", Sample.Review(rides, Sample.Plan(10))).Verdict);
    }

    [Fact]
    public void Raised_hours_rejudge_no_week_before_their_date()
    {
        var rider = Sample.Plan(5).Rider with { Hours = [new HoursEntry(Monday, 9)] };
        var rides = new[] { On(-5, RideKind.Endurance, 300), On(2, RideKind.Endurance, 300) };

        Assert.Equal(Verdict.Kept, Hours(Monday.PlusDays(-7)));
        Assert.Equal(Verdict.Broken, Hours(Monday));

        Verdict Hours(LocalDate startsOn) =>
            Sample.Judge("weekly-hours", Sample.Review(rides.Where(r => r.Date < startsOn.PlusDays(7)), PlanInForce.For(rider, [], startsOn), startsOn)).Verdict;
    }

    [Fact]
    public void A_week_without_rides_and_without_exception_is_worth_a_look_and_nothing_else()
    {
        var findings = RuleBook.Standard.Judge(Sample.Review([On(-7, RideKind.Endurance, 60)], Sample.Plan()));

        Assert.All(findings, f => Assert.Equal(f.Rule == "weekly-hours" ? Verdict.Watch : Verdict.NotJudged, f.Verdict));
    }

    [Fact]
    public void A_partial_first_week_is_no_ordinary_week()
    {
        var rides = Enumerable.Range(1, 4).Select(w => On(-7 * w, RideKind.Endurance, 300)).Append(On(-33, RideKind.Endurance, 60));

        Assert.Equal("it needs four ordinary weeks before this one", Sample.Judge("weekly-growth", Sample.Review(rides.Where(r => r.Date > Monday.PlusDays(-28)).Append(On(-24, RideKind.Endurance, 60)).Append(On(0, RideKind.Endurance, 60)), Sample.Plan())).Reason);
        Assert.Equal(Verdict.Kept, Sample.Judge("weekly-growth", Sample.Review(rides.Append(On(0, RideKind.Endurance, 390)), Sample.Plan())).Verdict);
    }

    [Fact]
    public void In_an_unfinished_week_only_what_more_riding_cannot_mend_is_judged()
    {
        string[] judged = ["hard-day-spacing", "hard-day-count", "longest-ride-jump", "easy-rides-easy", "weekly-hours"];
        var rides = Enumerable.Range(-60, 63).Select(d => On(d, RideKind.High, 150)).Append(On(2, RideKind.Endurance, 300));
        var findings = RuleBook.Standard.Judge(Sample.Review(rides, Sample.Plan(), daysThatCount: 3));

        Assert.All(findings.Where(f => !judged.Contains(f.Rule)), f => Assert.Equal("the week is not over", f.Reason));
        Assert.All(judged, rule => Assert.NotEqual(Verdict.NotJudged, findings.Single(f => f.Rule == rule).Verdict));
    }

    private static PlanException Out(ExceptionKind kind, int first, int last) => new(Monday.PlusDays(first), Monday.PlusDays(last), kind);

    private static RideFigures On(int day, RideKind kind, double minutes) => Sample.Ride(Monday.PlusDays(day), kind, minutes);
}
