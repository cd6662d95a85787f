using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Rules;
using RideAudit.Rules.Changes;
using RideAudit.Units;

namespace RideAudit.Tests.Rules;

/// <summary>Where a ride may go: the limits of each kind of room, met exactly and passed by a minute.</summary>
public sealed class RidingDaysTests
{
    private static readonly LocalDate Monday = Sample.Monday;

    [Fact]
    public void Without_a_past_any_day_that_counts_is_open_and_with_one_those_of_six_weeks()
    {
        Assert.Equal([true, true, true, true, false, false, false], Open(Sample.Review([On(1, 60)], Sample.Plan(), Monday, 4)));
        Assert.Equal([true, true, false, true, false, false, false], Open(Sample.Review([On(1, 60), On(-7 * 6, 60), On(3 - 7, 60), On(4 - 7 * 7, 60)], Sample.Plan())));
    }

    [Fact]
    public void Days_that_are_named_or_have_minutes_are_the_open_ones()
    {
        var named = Sample.Plan(plan: new TrainingPlan { Days = [IsoDayOfWeek.Tuesday, IsoDayOfWeek.Sunday] });

        Assert.Equal([false, true, false, false, false, false, true], Open(Sample.Review([On(2, 60)], named)));
        Assert.Equal([false, false, true, true, false, false, false], Open(Sample.Review([On(1, 60)], Sample.WithFree((IsoDayOfWeek.Tuesday, 0), (IsoDayOfWeek.Wednesday, 1), (IsoDayOfWeek.Thursday, 60)))));
    }

    [Fact]
    public void In_a_week_with_illness_nothing_is_made_longer()
    {
        var well = Sample.Review([On(1, 60)], Sample.Plan(), Monday);
        var ill = Sample.Review([On(1, 60)], Sample.Plan(6.5, Experience.Regular, null, new PlanException(Monday.PlusDays(3), Monday.PlusDays(3), ExceptionKind.Ill)));
        var away = Sample.Review([On(1, 60)], Sample.Plan(6.5, Experience.Regular, null, new PlanException(Monday.PlusDays(3), Monday.PlusDays(3), ExceptionKind.Away)));

        Assert.Equal((true, false, true), (new RidingDays(well).MayBeLonger(0), new RidingDays(ill).MayBeLonger(0), new RidingDays(away).MayBeLonger(0)));
        Assert.False(new RidingDays(away).MayBeLonger(3));
    }

    [Fact]
    public void Of_a_day_on_which_a_ride_stands_the_longest_stays()
    {
        var plan = Sample.Plan();
        plan = plan with { Rider = plan.Rider with { FixedRides = [new FixedRide(IsoDayOfWeek.Wednesday, PlannedKind.High, 50, null)] } };
        RideFigures[] rides = [On(2, 40, 7), On(2, 60, 18), On(3, 30, 7), On(3, 60, 18)];

        var room = new RidingDays(Sample.Review(rides, plan));

        Assert.Equal([true, false, true, true], rides.Select(room.MayMove));
        RideFigures[] alike = [On(2, 60, 7), On(2, 60, 18)];
        Assert.Equal([false, false], alike.Select(new RidingDays(Sample.Review(alike, plan)).MayMove));
    }

    [Theory]
    [InlineData(90, 0, true)]
    [InlineData(91, 0, false)]
    [InlineData(60, 30, true)]
    [InlineData(60, 31, false)]
    public void What_the_rider_file_says_is_free_is_enough_to_the_minute(int minutes, int besides, bool hasRoom)
    {
        var ride = On(1, minutes);
        var room = new RidingDays(Sample.Review([ride], Sample.WithFree((IsoDayOfWeek.Friday, 90))));

        Assert.Equal(hasRoom, HasRoom(room, ride, besides));
    }

    [Theory]
    [InlineData(119, 90, true)]
    [InlineData(120, 120, true)]
    [InlineData(120, 119, false)]
    [InlineData(150, 120, false)]
    public void A_ride_of_two_hours_needs_as_much_as_was_ever_ridden_on_that_weekday(int minutes, int most, bool hasRoom)
    {
        var ride = On(1, minutes);
        var room = new RidingDays(Sample.Review([ride, On(4 - 7, most), On(4 - 14, 60)], Sample.Plan()));

        Assert.Equal(hasRoom, HasRoom(room, ride, 0));
    }

    [Theory]
    [InlineData(119, true)]
    [InlineData(120, false)]
    public void A_ride_of_two_hours_does_not_go_onto_a_hard_day(int minutes, bool hasRoom)
    {
        var ride = On(1, minutes);
        var room = new RidingDays(Sample.Review([ride, On(4 - 7, 300)], Sample.Plan()));
        var moved = ChangedRide.On(ride, Monday.PlusDays(4));

        foreach (var order in new[] { 0, 1 })
        {
            List<RideFigures> rides = [Sample.Ride(Monday.PlusDays(4), RideKind.High, 60, 6), On(4, 20, 21)];
            rides.Insert(order == 0 ? 0 : 2, moved);
            Assert.Equal(hasRoom, room.HasRoom(new RideEdit(ChangeKind.Move, ride, moved, 1, 4), rides));
        }
        Assert.True(room.HasRoom(new RideEdit(ChangeKind.Move, ride, moved, 1, 4), [moved]));
    }

    /// <summary>A long ride in place of a hard one: half as long again, or as long as was ever ridden on that weekday.</summary>
    [Theory]
    [InlineData(100, 60, true)]
    [InlineData(99, 60, false)]
    [InlineData(60, 150, true)]
    [InlineData(60, 149, false)]
    public void A_hard_ride_is_ridden_long_where_it_was_nearly_that_or_the_day_has_had_it(int minutes, int most, bool hasRoom)
    {
        var hard = Sample.Ride(Monday.PlusDays(1), RideKind.High, minutes);
        var review = Sample.Review([hard, On(1 - 7, most), On(4 - 7, 300)], Sample.Plan());
        var ridden = ChangedRide.AsLongRide(hard, new Limits());

        Assert.Equal(hasRoom, new RidingDays(review).HasRoom(new RideEdit(ChangeKind.RideLong, hard, ridden, 1, 1), [ridden]));
    }

    // Moved from Tuesday to Friday, where there may be another ride.
    private static bool HasRoom(RidingDays room, RideFigures ride, int besides)
    {
        var now = ChangedRide.On(ride, Monday.PlusDays(4));
        List<RideFigures> rides = [now];
        if (besides > 0)
            rides.Add(On(4, besides, 6));
        return room.HasRoom(new RideEdit(ChangeKind.Move, ride, now, 1, 4), rides);
    }

    private static bool[] Open(WeekUnderReview review)
    {
        var room = new RidingDays(review);
        return [.. Enumerable.Range(0, 7).Select(room.IsOpen)];
    }

    private static RideFigures On(int day, int minutes, int hour = 18) => Sample.Ride(Monday.PlusDays(day), RideKind.Endurance, minutes, hour);
}
