using System.Collections.Immutable;
using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Rides;
using RideAudit.Rules;
using RideAudit.Tests.Rules;
using RideAudit.Tests.Simulation;

namespace RideAudit.Tests.Coach;

/// <summary>A coach's further cases, with the verdicts any coach would give, stated by hand. Common practice, no source.</summary>
public sealed class CoachCaseTests
{
    private const int Mon = 0, Tue = 1, Wed = 2, Thu = 3, Fri = 4, Sat = 5, Sun = 6;

    private static readonly LocalDate Monday = RiddenWeeks.Monday;

    private static readonly TradeWeek Usual = TradeWeeks.MiddleLongSaturday;

    private static readonly TradeWeek Commutes = new("commutes", Experience.Regular,
    [
        .. Enumerable.Range(0, 5).SelectMany(day => new[] { new TradeRide(day, 7, Session.Even(30, 58)), new TradeRide(day, 17, Session.Even(30, 58)) }),
        new(Sun, 9, Session.Even(160, 66)),
    ]);

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 25)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Two_commutes_a_day_and_a_long_Sunday_keep_every_rule(int seed)
    {
        var findings = RiddenWeeks.Judge(Commutes, Commutes, seed);

        Assert.True(findings.All(f => f.Verdict != Verdict.Broken), RiddenWeeks.Text(findings));
        Assert.Equal(Verdict.Kept, Of(findings, "rest-days").Verdict);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_rolling_gravel_ride_in_place_of_an_easy_one_changes_nothing(int seed)
    {
        var findings = RiddenWeeks.Judge(Usual, Usual.With(Wed, Simulation.Sessions.Gravel), seed);

        Assert.True(findings.All(f => f.Verdict != Verdict.Broken), RiddenWeeks.Text(findings));
        Assert.Equal(Verdict.Kept, Of(findings, "easy-rides-easy").Verdict);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Over_unders_in_place_of_the_threshold_ride_are_the_same_week(int seed)
    {
        var findings = RiddenWeeks.Judge(Usual, Usual.With(Sun, Simulation.Sessions.OverUnders, 9), seed);

        Assert.True(!RiddenWeeks.Wanting(findings).Any(f => f.Rule != "weekly-hours"), RiddenWeeks.Text(findings));
        Assert.Equal("One high day and one threshold day; the plan has at most two high days and three hard days in all.", Of(findings, "hard-day-count").Sentence);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_week_ridden_indoors_is_the_same_week(int seed)
    {
        var indoors = Usual with { Rides = [.. Usual.Rides.Select(r => r with { Session = Simulation.Sessions.Indoors(r.Session) })] };
        var findings = RiddenWeeks.Judge(Usual, indoors, seed);

        Assert.True(findings.All(f => f.Verdict != Verdict.Broken) && RiddenWeeks.Wanting(findings).Count() <= 1, RiddenWeeks.Text(findings));
        Assert.Equal(Verdict.Kept, Of(findings, "long-ride").Verdict);
        Assert.Equal(Verdict.Kept, Of(findings, "easy-rides-easy").Verdict);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_day_of_two_hard_sessions_counts_twice_and_is_one_day_for_spacing(int seed)
    {
        var findings = RiddenWeeks.Judge(Usual, Usual.And(Tue, TradeWeeks.Threshold(60), 7).With(Wed, null), seed);

        Assert.Equal(Verdict.Kept, Of(findings, "hard-day-spacing").Verdict);
        Assert.Equal("One high session and two threshold sessions on two days, and a second hard ride of a day counts like another day; the plan has at most two high days and three hard days in all.", Of(findings, "hard-day-count").Sentence.Plain());
        Assert.Equal(Verdict.Kept, Of(findings, "hard-day-count").Verdict);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_camp_is_not_held_against_the_rider_and_rest_after_it_is_asked_for(int seed)
    {
        var camp = new PlanException(Monday.PlusDays(-6), Monday.PlusDays(-1), ExceptionKind.Event);
        var plan = RiddenWeeks.PlanOf(Usual, camp);
        var days = new TradeWeek("camp", Usual.Experience, [.. Enumerable.Range(Tue, 6).Select(day => new TradeRide(day, 9, Session.Even(day == Fri ? 90 : 240, 65)))]);
        var before = RiddenWeeks.History(Usual, plan, seed, 3).Where(r => r.Date < Monday.PlusDays(-7)).Concat(RiddenWeeks.Rides(days, plan, Monday.PlusDays(-7), seed)).ToArray();

        var during = RuleBook.Standard.Judge(Sample.Review(before, plan, Monday.PlusDays(-7)));
        Assert.True(RiddenWeeks.Wanting(during).All(f => f.Rule == "lighter-week"), RiddenWeeks.Text(during));

        var rested = RiddenWeeks.Judge(before.Concat(RiddenWeeks.Rides(Usual, plan, Monday, seed)), plan);
        Assert.Equal(Verdict.Kept, Of(rested, "rest-after-load").Verdict);
        var hurried = RiddenWeeks.Judge(before.Concat(RiddenWeeks.Rides(Usual.With(Mon, Session.Even(90, 65)), plan, Monday, seed)), plan);
        Assert.Equal(("rest-after-load", Verdict.Broken), First(hurried));
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_taper_week_with_a_race_on_Sunday_is_in_order(int seed)
    {
        var taper = new TradeWeek("taper", Usual.Experience,
        [
            new(Tue, 18, Session.Repeats(45, 3, 120, 112, 180)), new(Thu, 18, Session.Even(40, 60)), new(Sat, 10, Session.Even(30, 58)),
            new(Sun, 10, Simulation.Sessions.High[^1]),
        ]);
        var findings = RiddenWeeks.Judge(Usual, taper, seed, new PlanException(Monday.PlusDays(Sun), Monday.PlusDays(Sun), ExceptionKind.Event));

        Assert.True(!RiddenWeeks.Wanting(findings).Any(), RiddenWeeks.Text(findings));
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Who_is_ill_from_Wednesday_is_asked_for_nothing(int seed)
    {
        var start = new TradeWeek("start", Usual.Experience, [new(Tue, 18, TradeWeeks.Intervals(60))]);
        var findings = RiddenWeeks.Judge(Usual, start, seed, new PlanException(Monday.PlusDays(Wed), Monday.PlusDays(Sun), ExceptionKind.Ill));

        Assert.True(!RiddenWeeks.Wanting(findings).Any(), RiddenWeeks.Text(findings));
        Assert.Equal("the rider was ill", Of(findings, "weekly-hours").Reason);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_first_week_back_of_short_easy_rides_is_right(int seed)
    {
        var back = new TradeWeek("back", Usual.Experience,
            [new(Tue, 18, Session.Even(40, 55)), new(Thu, 18, Session.Even(60, 60)), new(Sat, 9, Session.Even(75, 62)), new(Sun, 9, Session.Even(90, 62))]);
        var findings = RiddenWeeks.Judge(Usual, back, seed, new PlanException(Monday.PlusDays(-8), Monday.PlusDays(-1), ExceptionKind.Ill));

        Assert.True(!RiddenWeeks.Wanting(findings).Any(), RiddenWeeks.Text(findings));
        Assert.Equal("Back after eight ill days, and easy at first.", Of(findings, "return-to-riding").Sentence);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void After_a_stage_event_an_easy_week_is_right_and_intervals_on_Tuesday_are_not(int seed)
    {
        PlanException[] exceptions =
        [
            new(Monday.PlusDays(-4), Monday.PlusDays(-1), ExceptionKind.Event),
            new(Monday, Monday.PlusDays(Sun), ExceptionKind.Lighter),
        ];
        var plan = RiddenWeeks.PlanOf(Usual, exceptions);
        var stages = new TradeWeek("stages", Usual.Experience, [.. Enumerable.Range(Thu, 4).Select(day => new TradeRide(day, 10, Stage))]);
        var before = RiddenWeeks.History(Usual, plan, seed, 3).Where(r => r.Date < Monday.PlusDays(-7)).Concat(RiddenWeeks.Rides(stages, plan, Monday.PlusDays(-7), seed)).ToArray();
        var easy = new TradeWeek("after", Usual.Experience,
            [new(Wed, 18, Session.Even(45, 55)), new(Fri, 18, Session.Even(60, 60)), new(Sat, 9, Session.Even(75, 62)), new(Sun, 9, Session.Even(90, 62))]);

        var during = RuleBook.Standard.Judge(Sample.Review(before, plan, Monday.PlusDays(-7)));
        Assert.True(!RiddenWeeks.Wanting(during).Any(), RiddenWeeks.Text(during));
        var rested = RiddenWeeks.Judge(before.Concat(RiddenWeeks.Rides(easy, plan, Monday, seed)), plan);
        Assert.True(!RiddenWeeks.Wanting(rested).Any(), RiddenWeeks.Text(rested));
        var hurried = easy.With(Mon, Session.Even(75, 62)).With(Tue, TradeWeeks.Intervals(60));
        Assert.Equal(("rest-after-load", Verdict.Broken), First(RiddenWeeks.Judge(before.Concat(RiddenWeeks.Rides(hurried, plan, Monday, seed)), plan)));
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Growing_from_5_to_9_hours_by_easy_riding_is_right_all_the_way(int seed)
    {
        for (var week = 5; week <= RiddenWeeks.WeeksOfHistory; week++)
        {
            var findings = Growing(week, seed);
            Assert.True(findings.All(f => f.Verdict != Verdict.Broken), $"week {week}\n{RiddenWeeks.Text(findings)}");
            Assert.DoesNotContain(Verdict.Watch, new[] { Of(findings, "weekly-growth"), Of(findings, "longest-ride-jump"), Of(findings, "growth-is-endurance") }.Select(f => f.Verdict));
        }
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_rider_who_only_rates_rides_is_judged_by_what_ratings_say(int seed)
    {
        var plan = RiddenWeeks.PlanOf(Usual);
        var findings = RiddenWeeks.Judge(RatedWeeks(plan, seed), plan);

        Assert.True(findings.All(f => f.Verdict != Verdict.Broken) && RiddenWeeks.Wanting(findings).Count() <= 1, RiddenWeeks.Text(findings));
        Assert.All(["hard-day-spacing", "hard-day-count", "rest-days", "long-ride", "weekly-hours"], rule => Assert.Equal(Verdict.Kept, Of(findings, rule).Verdict));
        Assert.All(["endurance-volume", "intensity-split"], rule => Assert.Equal(Verdict.NotJudged, Of(findings, rule).Verdict));
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_rider_who_only_rates_rides_is_told_of_two_high_days_in_a_row(int seed)
    {
        var plan = RiddenWeeks.PlanOf(Usual);
        var rides = RatedWeeks(plan, seed).Where(r => r.Date != Monday.PlusDays(Wed)).Append(Rated(Monday.PlusDays(Wed), 60, 8, plan));

        Assert.Equal(("hard-day-spacing", Verdict.Broken), First(RiddenWeeks.Judge(rides, plan)));
    }

    private static Session Stage => Session.Repeats(180, 3, 480, 100, 900, 66) with { Name = "a stage" };

    /// <summary>Week by week a little more easy riding, and a lighter week every fourth.</summary>
    private static ImmutableArray<Finding> Growing(int weeks, int seed)
    {
        var lighter = Enumerable.Range(0, weeks + 1).Where(IsLighter).Select(week => Monday.PlusDays(7 * (week - weeks)))
            .Select(first => new PlanException(first, first.PlusDays(Sun), ExceptionKind.Lighter));
        var plan = RiddenWeeks.PlanOf(FullWeek(weeks).Hours, Experience.Regular, [.. lighter]);
        var rides = Enumerable.Range(0, weeks + 1).SelectMany(week => RiddenWeeks.Rides(IsLighter(week) ? FullWeek(week).Lighter : FullWeek(week), plan, Monday.PlusDays(7 * (week - weeks)), seed + week));
        return RiddenWeeks.Judge(rides, plan);
    }

    private static bool IsLighter(int week) => week % 4 == 3;

    private static TradeWeek FullWeek(int week) => new("growing", Experience.Regular,
    [
        new(Tue, 18, TradeWeeks.Intervals(60)), new(Wed, 18, Session.Even(30 + 5 * week, 62)), new(Thu, 18, TradeWeeks.Tempo(60)),
        new(Sat, 9, Session.Even(30 + 7 * week, 64)), new(Sun, 9, Session.Even(120 + 6 * week, 66)),
    ]);

    /// <summary>The usual week for months, lighter every fourth, in a log of lengths and ratings alone. The same session is not rated alike every week.</summary>
    private static IEnumerable<RideFigures> RatedWeeks(PlanInForce plan, int seed)
    {
        var random = new Random(seed);
        for (var ago = RiddenWeeks.WeeksOfHistory; ago >= 0; ago--)
        {
            var lighter = ago % 4 == 2;
            foreach (var (day, minutes, least, most) in new[] { (Tue, 60, 7, 9), (Wed, 75, 3, 4), (Thu, 60, 2, 3), (Sat, 170, 3, 4), (Sun, 90, 5, 6) })
            {
                var rating = lighter && day == Sun ? 3 : random.Next(least, most + 1);
                yield return Rated(Monday.PlusDays(day - 7 * ago), (lighter ? 0.6 : 1) * minutes + random.Next(-4, 5), rating, plan);
            }
        }
    }

    private static RideFigures Rated(LocalDate date, double minutes, double rating, PlanInForce plan)
    {
        var ride = new Ride
        {
            File = $"{date:uuuu-MM-dd}.csv",
            Parts = [],
            StartsAt = date.At(new LocalTime(9, 0)).WithOffset(Offset.Zero),
            Sport = RideSport.Cycling,
            Grid = SampleGrid.Empty,
            TimerSeconds = 60 * minutes,
            ElapsedSeconds = 60 * minutes,
            Rating = rating,
        };
        return FigureBuilder.Build([ride], plan.Rider, plan.Limits)[0];
    }

    private static (string Rule, Verdict Verdict) First(ImmutableArray<Finding> findings) =>
        RiddenWeeks.Wanting(findings).Select(f => (f.Rule, f.Verdict)).FirstOrDefault();

    private static Finding Of(ImmutableArray<Finding> findings, string rule) => findings.Single(f => f.Rule == rule);
}
