using System.Collections.Immutable;
using NodaTime;
using RideAudit.Document.Layouts;
using RideAudit.Figures;
using RideAudit.Next;
using RideAudit.Plan;
using RideAudit.Plan.Table;
using RideAudit.Rules;
using RideAudit.Weeks;
using Xunit.Abstractions;

namespace RideAudit.Tests.Next;

/// <summary>What a coach chooses among layouts that the rules judge alike.</summary>
public class CoachesChoiceTests(ITestOutputHelper output)
{
    private static readonly LocalDate Monday = RiddenWeeks.Monday;

    [Fact]
    public void Sprints_come_in_an_easy_ride_every_other_week_fresh_and_never_for_a_new_rider()
    {
        var weeks = RiddenWeeks.LayOut(RiddenWeeks.RiderOf(8, Experience.Regular), 12).Weeks;
        var with = weeks.SelectMany(w => w.Days.Select((d, i) => (Week: w, Day: d, Index: i))).Where(x => x.Day.Sessions.Any(s => s.Session == "easy with four sprints")).ToList();
        Assert.InRange(with.Count, 3, 6);
        Assert.All(with, x =>
        {
            Assert.Equal(DayKind.Endurance, x.Day.Kind);
            Assert.DoesNotContain(Around(x.Week, x.Index - 1).Concat(Around(x.Week, x.Index + 1)), s => PlannedKinds.IsHard(s.Kind));
            Assert.DoesNotContain(Around(x.Week, x.Index - 1), s => s.Kind == PlannedKind.Long);
        });
        var ofNew = RiddenWeeks.LayOut(RiddenWeeks.RiderOf(8, Experience.New), 12).Weeks;
        Assert.DoesNotContain(ofNew.SelectMany(Sessions), s => s.Session == "easy with four sprints");
    }

    [Theory]
    [InlineData(4, Experience.Regular)]
    [InlineData(4.5, Experience.Racing)]
    public void Where_hours_are_few_the_easy_riding_around_the_work_is_shorter(double hours, Experience experience)
    {
        var week = RiddenWeeks.LayOut(RiddenWeeks.RiderOf(hours, experience)).Weeks.Single();
        Assert.InRange(week.Hours, 0.94 * hours, 1.06 * hours);
        Assert.All(Sessions(week).Where(s => PlannedKinds.IsHard(s.Kind)), s => Assert.InRange(s.Minutes, 40, 60));
    }

    [Fact]
    public void However_many_hours_are_planned_no_ride_is_half_as_long_again_as_the_review_asks_for()
    {
        foreach (var hours in new[] { 6.5, 11, 18 })
        {
            var weeks = RiddenWeeks.LayOut(RiddenWeeks.RiderOf(hours, Experience.Racing), 8).Weeks;
            Assert.All(weeks.Where(w => w.LongRideMinutes is not null), w => Assert.True(Sessions(w).Max(s => s.Minutes) <= 1.5 * w.LongRideMinutes));
        }
    }

    [Fact]
    public void At_eighteen_hours_it_is_monotony_that_keeps_a_week_below_the_hours_planned()
    {
        var rider = RiddenWeeks.RiderOf(18, Experience.Racing);
        var week = RiddenWeeks.LayOut(rider).Weeks.Single();
        var without = RiddenWeeks.LayOut(rider with { SetAside = [new SetAsideRule("monotony", Monday.PlusDays(30), "hours first")] }).Weeks.Single();
        Assert.Null(week.GaveWay);
        output.WriteLine($"{week.Hours:0.0} h, without monotony {without.Hours:0.0} h");
        Assert.InRange(week.Hours, 0.85 * 18, without.Hours - 0.25);
    }

    [Fact]
    public void Riding_in_the_week_of_an_event_is_short_and_the_note_says_what_is_hard_in_it()
    {
        var race = Monday.PlusDays(7 * 3 + 6);
        var week = RiddenWeeks.LayOut(RiddenWeeks.RiderOf(10, Experience.Racing) with { Exceptions = [new PlanException(race, race, ExceptionKind.Event)] }, 4).Weeks[3];
        Assert.All(Sessions(week), s => Assert.InRange(s.Minutes, 20, 75));
        var hard = week.Days.Where(d => d.Sessions.Any(s => PlannedKinds.IsHard(s.Kind))).ToList();
        Assert.True(hard.Count <= 1);
        Assert.Contains(week.Notes, n => n.StartsWith("Riding before the event is short", StringComparison.Ordinal) && hard.TrueForAll(d => n.Contains(d.Date.DayOfWeek.ToString(), StringComparison.Ordinal)));
        Assert.DoesNotContain(week.Notes, n => n.StartsWith("The plan asks for", StringComparison.Ordinal));
        Assert.Null(week.AskedOtherwise);
    }

    [Fact]
    public void A_lighter_week_due_just_before_the_one_before_an_event_waits_and_says_so()
    {
        var rider = RiddenWeeks.RiderOf(7, Experience.Regular);
        var without = RiddenWeeks.LayOut(rider, 6).Weeks;
        Assert.True(without[3].ProposedLighter);
        var race = Monday.PlusDays(7 * 5 + 5);
        var weeks = RiddenWeeks.LayOut(rider with { Exceptions = [new PlanException(race, race, ExceptionKind.Event)] }, 6).Weeks;
        Assert.Equal((false, true), (weeks[3].ProposedLighter, weeks[4].ProposedLighter));
        Assert.Equal("lighter-week", Assert.Single(weeks[3].GaveWay!.Rules));
        Assert.Equal("A lighter week is due and waits: the next week is the lighter one, before the event.", weeks[3].GaveWay!.Sentence);
    }

    [Fact]
    public void Weeks_no_longer_than_a_lighter_one_of_the_hours_planned_grow_and_are_not_made_lighter()
    {
        _ = Layouts(RiddenWeeks.RiderOf(3.5, Experience.New), 5, out var past);
        var week = After(past, RiddenWeeks.RiderOf(6.5, Experience.New));
        Assert.False(week.ProposedLighter);
        Assert.InRange(week.Hours, past[^1].Hours, 1.3 * past[^1].Hours);
        Assert.Contains("lighter-week", week.GaveWay!.Rules);
    }

    [Fact]
    public void A_racing_rider_whose_rides_are_known_from_a_log_alone_does_not_begin_where_a_new_one_does()
    {
        var rider = RiddenWeeks.RiderOf(8, Experience.Racing);
        _ = Layouts(rider, 2, out var past);
        var logged = past.Select(w => w with { Days = [.. w.Days.Select(d => d with { Rides = [.. d.Rides.Select(Logged)] })] }).ToImmutableArray();
        var names = Sessions(After(logged, rider)).Where(s => PlannedKinds.IsHard(s.Kind)).Select(s => s.Session).ToList();
        Assert.DoesNotContain(names, n => n is "four threes" or "six ones" or "two tens at threshold" or "two twelves of tempo");
        Assert.NotEmpty(names);
    }

    [Fact]
    public void The_minutes_of_a_test_are_no_step_of_a_build_up()
    {
        var weeks = RiddenWeeks.LayOut(RiddenWeeks.RiderOf(6.5, Experience.Racing), 12).Weeks;
        string[] steps = ["four threes", "five threes", "four fours", "six threes", "five fours", "four fives", "five fives", "four eights"];
        var ridden = weeks.SelectMany(Sessions).Select(s => Array.IndexOf(steps, s.Session)).Where(i => i >= 0).ToList();
        Assert.True(ridden.Count >= 4);
        Assert.All(ridden.Zip(ridden.Skip(1)), p => Assert.True(p.Second - p.First <= 3, string.Join(' ', ridden)));
    }

    [Fact]
    public void The_week_back_from_illness_is_shorter_has_nothing_high_and_no_test()
    {
        var rider = RiddenWeeks.RiderOf(7, Experience.Regular);
        _ = Layouts(rider, 6, out var past);
        var ill = new PlanException(Monday.PlusDays(7 * 6 - 5), Monday.PlusDays(7 * 6 - 1), ExceptionKind.Ill);
        var week = After(past, rider with { Exceptions = [ill] }, weeks: 2);
        Assert.InRange(week.Hours, 3, 0.9 * 7);
        Assert.DoesNotContain(Sessions(week), s => s.Kind == PlannedKind.High);
        Assert.Contains(week.Notes, n => n.StartsWith("After the illness", StringComparison.Ordinal));
        Assert.DoesNotContain(week.Verdicts, v => v.Verdict is Verdict.Watch or Verdict.Broken);
    }

    [Fact]
    public void A_test_that_finds_no_day_is_spoken_of_once()
    {
        var rider = RiddenWeeks.RiderOf(
            4, Experience.Regular, (IsoDayOfWeek.Tuesday, 60), (IsoDayOfWeek.Thursday, 60), (IsoDayOfWeek.Sunday, 120)) with
        { Thresholds = [new ThresholdEntry(Monday.PlusDays(-50), new RideAudit.Units.Watts(250), null)] };
        var weeks = RiddenWeeks.LayOut(rider, 4).Weeks;
        Assert.DoesNotContain(weeks.SelectMany(Sessions), s => s.Session == "twenty-minute test");
        Assert.Single(weeks.SelectMany(w => w.Notes), n => n.StartsWith("A test is due", StringComparison.Ordinal));
    }

    private static RideFigures Logged(RideFigures ride) => ride with { Bands = default, AtHighShare = null, AtThresholdShare = null, BoutCount = 0, BoutSeconds = 0 };

    private static NextDocument Layouts(Rider rider, int weeks, out ImmutableArray<WeekFacts> ridden) =>
        NextBuilder.LayOut(new NextStart { AsOf = Monday, StartsOn = Monday, Past = [] }, rider, PlanTable.Empty, weeks, out ridden);

    private static NextWeekEntry After(ImmutableArray<WeekFacts> past, Rider rider, int weeks = 1)
    {
        var startsOn = past[^1].StartsOn.PlusDays(7);
        return NextBuilder.LayOut(new NextStart { AsOf = startsOn, StartsOn = startsOn, Past = past }, rider, PlanTable.Empty, weeks).Weeks[0];
    }

    private static IEnumerable<NextSessionEntry> Sessions(NextWeekEntry week) => week.Days.SelectMany(d => d.Sessions);

    private static IEnumerable<NextSessionEntry> Around(NextWeekEntry week, int day) => day is < 0 or > 6 ? [] : week.Days[day].Sessions;
}
