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

    [Fact]
    public void A_moved_ride_keeps_its_clock_time()
    {
        var ride = Sample.Ride(Monday, RideKind.High, 60, 23, 30);

        var moved = ChangedRide.On(ride, Monday.PlusDays(3));

        Assert.Equal((Monday.PlusDays(3), new LocalTime(23, 30)), (moved.Date, moved.StartsAt.TimeOfDay));
    }

    [Fact]
    public void An_eased_ride_is_the_same_time_at_a_ratio_of_65_percent_and_all_low()
    {
        var eased = ChangedRide.Eased(Sample.Ride(Monday, RideKind.High, 90), new Limits());

        Assert.Equal(1.5 * 0.65 * 0.65 * 100, eased.Stress!.Value, 9);
        Assert.Equal((5400.0, 1.0, RideKind.Endurance), (eased.DurationSeconds, eased.Bands.LowShare, eased.Kind));
        Assert.Equal(0.65 * 250, eased.NormalisedPower!.Value.Value, 9);
    }

    [Fact]
    public void A_lengthened_ride_reaches_the_long_ride_length_at_its_own_stress_an_hour()
    {
        var ride = Sample.Ride(Monday, RideKind.Endurance, 100);

        var longer = ChangedRide.Lengthened(ride, new Limits { LongRideHours = 2.5 });

        Assert.Equal((9000.0, RideKind.Long), (longer.DurationSeconds, longer.Kind));
        Assert.Equal(ride.Stress!.Value * 1.5, longer.Stress!.Value, 9);
        Assert.Equal(ride.Bands.AboveLow, longer.Bands.AboveLow, 9);
    }

    [Fact]
    public void An_unfinished_week_is_changed_only_on_the_days_that_have_been()
    {
        var plan = Sample.Plan(plan: new TrainingPlan { Days = [IsoDayOfWeek.Tuesday, IsoDayOfWeek.Wednesday, IsoDayOfWeek.Friday] });
        var week = Sample.Review([Tuesday(RideKind.High, 60), Wednesday(RideKind.High, 60)], plan, daysThatCount: 3);

        var change = ChangeSearch.Find(week, RuleBook.Standard.Judge(week))!;

        Assert.Equal(ChangeKind.Ease, Assert.Single(change.Changes).Kind);
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
        for (var round = 0; round < 40; round++)
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

    private static WeekUnderReview RandomWeek(Random random)
    {
        RideKind[] kinds = [RideKind.High, RideKind.High, RideKind.Threshold, RideKind.Endurance, RideKind.Endurance, RideKind.Recovery, RideKind.Long, RideKind.Unrated];
        var days = random.Next(3) == 0 ? ImmutableArray.Create(IsoDayOfWeek.Tuesday, IsoDayOfWeek.Wednesday, IsoDayOfWeek.Friday, IsoDayOfWeek.Sunday) : [];
        var plan = Sample.Plan(random.Next(3, 12), (Experience)random.Next(3), new TrainingPlan { Days = days });
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

    private static RideFigures[] UsualRides(LocalDate start) =>
    [
        Sample.Ride(start.PlusDays(1), RideKind.High, 60), Sample.Ride(start.PlusDays(3), RideKind.Threshold, 60), Sample.Ride(start.PlusDays(6), RideKind.Long, 180, 9),
    ];

    private static SmallestChange? Find(PlanInForce plan, params RideFigures[] rides)
    {
        var week = Sample.Review(rides, plan);
        return ChangeSearch.Find(week, RuleBook.Standard.Judge(week));
    }

    private static RideFigures Tuesday(RideKind kind, double minutes) => Sample.Ride(Monday.PlusDays(1), kind, minutes);

    private static RideFigures Wednesday(RideKind kind, double minutes) => Sample.Ride(Monday.PlusDays(2), kind, minutes);

    private static RideFigures Saturday(RideKind kind, double minutes) => Sample.Ride(Monday.PlusDays(5), kind, minutes, 9);
}
