using System.Collections.Immutable;
using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Rules;
using RideAudit.Rules.Changes;
using RideAudit.Units;

namespace RideAudit.Tests.Rules;

public class ChangeSearchTests
{
    private static readonly LocalDate Monday = Sample.Monday;

    [Fact]
    public void A_week_that_breaks_nothing_needs_no_change()
    {
        var week = Sample.Review([Sample.Ride(Monday, RideKind.Long, 150, 9)], Sample.Plan());

        Assert.Null(ChangeSearch.Find(week, RuleBook.Standard.Judge(week)));
    }

    [Fact]
    public void One_ride_on_another_day_comes_before_everything_else()
    {
        var change = Find(Sample.Plan(), Tuesday(RideKind.High, 60), Wednesday(RideKind.High, 60), Saturday(RideKind.Long, 150))!;

        var move = Assert.Single(change.Changes);
        Assert.Equal((ChangeKind.Move, Monday.PlusDays(1), Monday), (move.Kind, move.From, move.To));
        Assert.Equal(["hard-day-spacing"], change.Keeps.ToArray());
    }

    [Fact]
    public void Of_two_moves_the_one_with_less_stress_wins()
    {
        var change = Find(Sample.Plan(), Tuesday(RideKind.High, 75), Wednesday(RideKind.High, 50), Saturday(RideKind.Long, 150))!;

        Assert.Equal("Wednesday’s ride on Thursday instead would have kept the spacing rule.", change.Sentence);
    }

    [Fact]
    public void A_ride_is_only_moved_to_a_day_that_can_be_ridden_on()
    {
        var plan = Sample.Plan(plan: new TrainingPlan { Days = [IsoDayOfWeek.Tuesday, IsoDayOfWeek.Wednesday, IsoDayOfWeek.Friday, IsoDayOfWeek.Saturday] });

        var change = Find(plan, Tuesday(RideKind.High, 75), Wednesday(RideKind.High, 50), Saturday(RideKind.Long, 150))!;

        Assert.Equal("Wednesday’s ride on Friday instead would have kept the spacing rule.", change.Sentence);
    }

    [Fact]
    public void Two_hard_rides_are_never_put_on_one_day()
    {
        var plan = Sample.Plan(plan: new TrainingPlan { Days = [IsoDayOfWeek.Tuesday, IsoDayOfWeek.Wednesday] });

        var change = Find(plan, Sample.Ride(Monday.PlusDays(1), RideKind.High, 60, 6), Wednesday(RideKind.High, 60), Saturday(RideKind.Long, 150))!;

        Assert.Equal(ChangeKind.Ease, Assert.Single(change.Changes).Kind);
    }

    [Fact]
    public void Two_days_are_swapped_where_no_single_move_helps()
    {
        var plan = Sample.Plan(plan: new TrainingPlan { Days = [IsoDayOfWeek.Tuesday, IsoDayOfWeek.Wednesday, IsoDayOfWeek.Friday, IsoDayOfWeek.Saturday] });

        var change = Find(
            plan, Tuesday(RideKind.High, 60), Wednesday(RideKind.High, 60), Sample.Ride(Monday.PlusDays(4), RideKind.Endurance, 60), Sample.Ride(Monday.PlusDays(5), RideKind.Long, 150, 17))!;

        Assert.Equal("Tuesday’s and Friday’s rides swapped would have kept the spacing rule.", change.Sentence);
        Assert.All(change.Changes, c => Assert.Equal(ChangeKind.Swap, c.Kind));
    }

    [Fact]
    public void A_move_says_the_hour_where_the_day_has_two_rides()
    {
        var change = Find(
            Sample.Plan(hours: 7),
            Sample.Ride(Monday.PlusDays(1), RideKind.High, 75), Sample.Ride(Monday.PlusDays(2), RideKind.Endurance, 30, 7), Wednesday(RideKind.High, 50), Saturday(RideKind.Long, 150))!;

        Assert.Equal("Wednesday’s 18:00 ride on Thursday instead would have kept the spacing rule.", change.Sentence);
    }

    /// <summary>Pairs of 300 rides would be millions of weeks to judge.</summary>
    [Theory]
    [InlineData(4, true, "No change to one or two rides would have kept the spacing rule without costing another rule.")]
    [InlineData(5, false, "No change to one ride would have kept the spacing rule without costing another rule.")]
    [InlineData(43, false, "No change to one ride would have kept the spacing rule without costing another rule.")]
    public void Of_more_rides_than_four_a_day_no_pair_is_tried_and_the_sentence_says_so(int ridesADay, bool triesPairs, string sentence)
    {
        var week = Sample.Review([.. Enumerable.Range(0, 7 * ridesADay).Select(i => Sample.Ride(Monday.PlusDays(i / ridesADay), RideKind.High, 20 + i % 20, hour: i % ridesADay % 24, minute: i % 60))], Sample.Plan());

        var classes = new ChangeClasses(week);

        Assert.Equal(triesPairs, classes.TriesPairs);
        Assert.InRange(classes.InOrder.Sum(candidates => candidates.Count()), 1, triesPairs ? 30_000 : 3_000);
        Assert.Equal(sentence, ChangeSearch.Find(week, RuleBook.Standard.Judge(week))!.Sentence);
    }

    [Fact]
    public void An_unfinished_week_is_changed_only_on_the_days_that_have_been()
    {
        var plan = Sample.Plan(plan: new TrainingPlan { Days = [IsoDayOfWeek.Tuesday, IsoDayOfWeek.Wednesday, IsoDayOfWeek.Friday] });
        var week = Sample.Review([Tuesday(RideKind.High, 60), Wednesday(RideKind.High, 60)], plan, daysThatCount: 3);

        var change = ChangeSearch.Find(week, RuleBook.Standard.Judge(week))!;

        Assert.Equal(ChangeKind.Ease, Assert.Single(change.Changes).Kind);
    }

    [Fact]
    public void A_ride_moves_only_to_a_day_on_which_the_rider_has_ridden_of_late()
    {
        var change = Find(
            Sample.Plan(), [.. WeeksOf(Tuesday(RideKind.Endurance, 60), Sample.Ride(Monday.PlusDays(4), RideKind.Endurance, 60), Saturday(RideKind.Long, 150)),
            Tuesday(RideKind.High, 60), Wednesday(RideKind.High, 60), Saturday(RideKind.Long, 150)])!;

        Assert.Equal("Tuesday’s ride on Friday instead would have kept the spacing rule.", change.Sentence);
    }

    [Fact]
    public void A_ride_of_two_hours_moves_only_to_a_day_with_that_much_room()
    {
        var plan = Sample.WithFree((IsoDayOfWeek.Tuesday, 120), (IsoDayOfWeek.Wednesday, 60), (IsoDayOfWeek.Thursday, 60), (IsoDayOfWeek.Friday, 120), (IsoDayOfWeek.Saturday, 180));

        var change = Find(plan, Tuesday(RideKind.High, 120), Wednesday(RideKind.High, 120), Saturday(RideKind.Long, 150))!;

        Assert.All(change.Changes, c => Assert.Equal((ChangeKind.Move, Monday.PlusDays(4)), (c.Kind, c.To)));
    }

    [Theory]
    [InlineData(ExceptionKind.Ill)]
    [InlineData(ExceptionKind.Away)]
    public void Nothing_is_moved_onto_a_day_out_or_the_day_before_it(ExceptionKind kind)
    {
        var plan = Sample.Plan(6.5, Experience.Regular, null, new PlanException(Monday.PlusDays(4), Monday.PlusDays(4), kind));

        var change = Find(plan, Tuesday(RideKind.High, 75), Wednesday(RideKind.High, 50), Saturday(RideKind.Long, 150));

        LocalDate[] closed = [Monday.PlusDays(3), Monday.PlusDays(4)];
        Assert.NotNull(change);
        Assert.DoesNotContain(change.Changes, c => closed.Contains(c.To));
    }

    [Fact]
    public void A_hard_ride_is_not_put_on_the_long_rides_day_where_another_day_will_do()
    {
        var plan = Sample.Plan(plan: new TrainingPlan { Days = [IsoDayOfWeek.Tuesday, IsoDayOfWeek.Wednesday, IsoDayOfWeek.Saturday, IsoDayOfWeek.Sunday] });

        var change = Find(plan, Tuesday(RideKind.High, 60), Wednesday(RideKind.High, 60), Saturday(RideKind.Long, 150), Sample.Ride(Monday.PlusDays(6), RideKind.Endurance, 60, 9))!;

        Assert.Equal((ChangeKind.Move, Monday.PlusDays(6)), (change.Changes.Single().Kind, change.Changes.Single().To));
    }

    [Fact]
    public void A_ride_of_a_day_on_which_one_stands_every_week_stays_there()
    {
        var free = Sample.Plan();
        var club = free with { Rider = free.Rider with { FixedRides = [new FixedRide(IsoDayOfWeek.Wednesday, PlannedKind.High, 50, null)] } };
        RideFigures[] rides = [Tuesday(RideKind.High, 75), Wednesday(RideKind.High, 50), Saturday(RideKind.Long, 150)];

        Assert.Equal(Monday.PlusDays(2), Assert.Single(Find(free, rides)!.Changes).From);
        Assert.Equal((ChangeKind.Move, Monday.PlusDays(1)), (Find(club, rides)!.Changes.Single().Kind, Find(club, rides)!.Changes.Single().From));
    }

    [Fact]
    public void An_events_ride_is_not_touched_though_another_costs_more()
    {
        var plan = Sample.Plan(6.5, Experience.Regular, null, new PlanException(Monday.PlusDays(5), Monday.PlusDays(5), ExceptionKind.Event));
        RideFigures[] others = [.. Enumerable.Range(0, 7).Where(d => d != 5).Select(d => Sample.Ride(Monday.PlusDays(d), RideKind.Endurance, 80 + d))];
        var parade = Saturday(RideKind.Endurance, 70);

        var change = Find(plan, [.. others, parade])!;

        Assert.Contains("rest-days", change.Keeps);
        Assert.NotEqual(parade.File, Assert.Single(change.Changes).Ride);
        Assert.Equal(parade.File, Find(Sample.Plan(), [.. others, parade])!.Changes.MinBy(c => c.Ride == parade.File ? 0 : 1)!.Ride);
    }

    [Fact]
    public void An_easy_ride_is_lengthened_by_half_of_itself_at_most()
    {
        RideFigures[] others = [Tuesday(RideKind.High, 60), Saturday(RideKind.Endurance, 60), Sample.Ride(Monday.PlusDays(6), RideKind.Endurance, 60)];

        Assert.Equal(
            "Thursday’s ride lengthened to 2 h 30 min at its own easy pace would have kept the long-ride rule.",
            Find(Sample.Plan(), [.. others, Thursday(RideKind.Endurance, 100)])!.Sentence.Plain());
        Assert.Empty(Find(Sample.Plan(), [.. others, Thursday(RideKind.Endurance, 95)])!.Changes);
    }

    [Fact]
    public void A_ride_is_left_out_where_moving_and_easing_do_not_help()
    {
        var days = Enumerable.Range(0, 7).Select(d => Sample.Ride(Monday.PlusDays(d), d == 5 ? RideKind.Long : RideKind.Endurance, d == 5 ? 180 : 75)).ToArray();

        var change = Find(Sample.Plan(9), days)!;

        Assert.Equal((ChangeKind.LeaveOut, Monday), (Assert.Single(change.Changes).Kind, change.Changes[0].From));
        Assert.Equal("Monday’s ride left out would have kept the rest-day rule.", change.Sentence);
    }

    [Fact]
    public void The_change_keeps_the_rule_that_the_headline_leads_with_or_says_that_none_does()
    {
        var random = new Random(77);
        for (var round = 0; round < 300; round++)
        {
            var week = RandomWeek(random);
            var findings = RuleBook.Standard.Judge(week);
            if (ChangeSearch.Find(week, findings) is not { Changes.Length: > 0 } change)
                continue;
            Assert.Contains(RuleBook.MostSerious(findings)[0].Rule, change.Keeps);
        }
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void The_change_found_is_the_smallest_by_a_plain_enumeration_of_every_class(int seed)
    {
        var random = new Random(seed);
        var helped = 0;
        for (var round = 0; round < 60; round++)
        {
            var week = RandomWeek(random);
            var findings = RuleBook.Standard.Judge(week);

            var found = ChangeSearch.Find(week, findings);
            var expected = PlainChangeSearch.Find(week, findings);

            Assert.Equal(expected?.Changes.ToArray(), found?.Changes.ToArray());
            Assert.Equal(expected?.Keeps.ToArray(), found?.Keeps.ToArray());
            helped += found?.Changes.Length > 0 ? 1 : 0;
        }
        Assert.True(helped >= 5, $"Only {helped} of the weeks had a change that helps: the comparison would say little.");
    }

    private static readonly ImmutableSortedDictionary<IsoDayOfWeek, int> MinutesFree = ImmutableSortedDictionary.CreateRange(
    [
        KeyValuePair.Create(IsoDayOfWeek.Monday, 45), KeyValuePair.Create(IsoDayOfWeek.Tuesday, 60), KeyValuePair.Create(IsoDayOfWeek.Thursday, 90),
        KeyValuePair.Create(IsoDayOfWeek.Saturday, 210), KeyValuePair.Create(IsoDayOfWeek.Sunday, 120),
    ]);

    private static WeekUnderReview RandomWeek(Random random)
    {
        RideKind[] kinds = [RideKind.High, RideKind.High, RideKind.Threshold, RideKind.Endurance, RideKind.Endurance, RideKind.Recovery, RideKind.Long, RideKind.Unrated];
        var days = random.Next(3) == 0 ? ImmutableArray.Create(IsoDayOfWeek.Tuesday, IsoDayOfWeek.Wednesday, IsoDayOfWeek.Friday, IsoDayOfWeek.Sunday) : [];
        PlanException[] exceptions = random.Next(4) == 0
            ? [new PlanException(Monday.PlusDays(random.Next(-3, 7)), Monday.PlusDays(7), (ExceptionKind)random.Next(4))]
            : [];
        var plan = Sample.Plan(random.Next(3, 12), (Experience)random.Next(3), new TrainingPlan { Days = days }, exceptions);
        if (random.Next(4) == 0)
            plan = plan with { Rider = plan.Rider with { MinutesFree = MinutesFree } };
        var rides = new List<RideFigures>();
        for (var back = 5 * random.Next(2); back > 0; back--)
            rides.AddRange(UsualRides(Monday.PlusDays(-7 * back)));
        for (var i = random.Next(2, 6); i > 0; i--)
        {
            var kind = kinds[random.Next(random.Next(4) == 0 ? kinds.Length : kinds.Length - 1)];
            var minutes = kind == RideKind.Long ? plan.Limits.LongRideHours * 60 + random.Next(3) * 20 : 40 + 10 * random.Next(8);
            var ride = Sample.Ride(Monday.PlusDays(random.Next(7)), kind, minutes, 7 + 5 * random.Next(3));
            if (!rides.Exists(r => r.File == ride.File))
                rides.Add(ride);
        }
        return Sample.Review(rides, plan);
    }

    [Fact]
    public void Hours_that_are_missing_are_told_once_and_not_as_a_change_that_does_not_help()
    {
        var week = Sample.Review([Saturday(RideKind.Threshold, 75)], Sample.Plan());
        var findings = RuleBook.Standard.Judge(week);

        Assert.Equal("weekly-hours", RuleBook.MostSerious(findings)[0].Rule);
        Assert.Contains(findings, f => f is { Rule: "long-ride", Verdict: Verdict.Broken });
        Assert.Null(ChangeSearch.Find(week, findings));
    }

    private static RideFigures[] UsualRides(LocalDate start) =>
    [
        Sample.Ride(start.PlusDays(1), RideKind.High, 60), Sample.Ride(start.PlusDays(2), RideKind.Recovery, 40),
        Sample.Ride(start.PlusDays(3), RideKind.Threshold, 60), Sample.Ride(start.PlusDays(5), RideKind.Endurance, 75), Sample.Ride(start.PlusDays(6), RideKind.Long, 180, 9),
    ];

    private static SmallestChange? Find(PlanInForce plan, params RideFigures[] rides)
    {
        var week = Sample.Review(rides, plan);
        return ChangeSearch.Find(week, RuleBook.Standard.Judge(week));
    }

    private static RideFigures Tuesday(RideKind kind, double minutes) => Sample.Ride(Monday.PlusDays(1), kind, minutes);

    private static RideFigures Wednesday(RideKind kind, double minutes) => Sample.Ride(Monday.PlusDays(2), kind, minutes);

    private static RideFigures Thursday(RideKind kind, double minutes) => Sample.Ride(Monday.PlusDays(3), kind, minutes);

    private static IEnumerable<RideFigures> WeeksOf(params RideFigures[] rides) => Enumerable.Range(1, 4).SelectMany(back =>
        rides.Select(r => ChangedRide.On(r, r.Date.PlusDays(-7 * back)) with { File = $"{back} {r.File}" }));

    private static RideFigures Saturday(RideKind kind, double minutes) => Sample.Ride(Monday.PlusDays(5), kind, minutes, 9);
}
