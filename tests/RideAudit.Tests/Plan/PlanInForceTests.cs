using NodaTime;
using RideAudit.Plan;

namespace RideAudit.Tests.Plan;

public class PlanInForceTests
{
    private static readonly LocalDate Monday = new(2026, 3, 2);

    [Theory]
    [InlineData(5, Tier.Low)]
    [InlineData(5.04, Tier.Low)]
    [InlineData(5.06, Tier.Middle)]
    [InlineData(8, Tier.Middle)]
    [InlineData(8.06, Tier.High)]
    [InlineData(15, Tier.High)]
    [InlineData(15.06, Tier.VeryHigh)]
    public void The_tier_follows_from_the_planned_hours(double hours, Tier tier) =>
        Assert.Equal(tier, Of(hours).Tier);

    // Each row adds up to six, or five, times the limit; summed in binary hours the mean is a hair above it.
    [Theory]
    [InlineData(new[] { 355, 386, 201, 298, 389, 171 }, Tier.Low)]
    [InlineData(new[] { 431, 447, 538, 475, 511, 478 }, Tier.Middle)]
    [InlineData(new[] { 1142, 1165, 1105, 714, 374 }, Tier.High)]
    public void A_mean_of_past_weeks_exactly_on_a_tiers_limit_is_in_that_tier(int[] minutesAWeek, Tier tier)
    {
        var weeks = minutesAWeek.Select((minutes, i) => new WeekHours(Monday.PlusWeeks(i), minutes / 60.0)).ToArray();

        Assert.Equal(tier, PlanInForce.For(new Rider(), weeks).Tier);
    }

    [Theory]
    [InlineData(4, Experience.New, 1, 1, 1.5, 3, 0.70, 0.07)]
    [InlineData(4, Experience.Regular, 2, 1, 2, 3, 0.70, 0.07)]
    [InlineData(4, Experience.Racing, 3, 0, 2, 3, 0.70, 0.07)]
    [InlineData(6, Experience.New, 1, 1, 2.5, 2, 0.75, 0.07)]
    [InlineData(6, Experience.Regular, 2, 1, 2.5, 2, 0.75, 0.07)]
    [InlineData(6, Experience.Racing, 2, 1, 2.5, 2, 0.75, 0.07)]
    [InlineData(10, Experience.New, 2, 1, 3, 1, 0.80, 0.05)]
    [InlineData(10, Experience.Racing, 2, 1, 3, 1, 0.80, 0.05)]
    [InlineData(20, Experience.New, 2, 1, 4, 1, 0.90, 0.05)]
    [InlineData(20, Experience.Regular, 2, 1, 4, 1, 0.90, 0.05)]
    public void Limits_follow_from_tier_and_experience(
        double hours, Experience experience, int high, int threshold, double longRide, int rest, double low, double tolerance)
    {
        var limits = Of(hours, experience).Limits;

        Assert.Equal((high, threshold), (limits.HighDaysAtMost, limits.ThresholdDaysOnTop));
        Assert.Equal((longRide, rest), (limits.LongRideHours, limits.RestDaysAtLeast));
        Assert.Equal((low, tolerance), (limits.IntendedLowShare, limits.SplitTolerance));
    }

    [Theory]
    [InlineData(3, 1.5)]
    [InlineData(3.9, 1.95)]
    [InlineData(4, 2)]
    public void The_long_ride_is_never_more_than_half_the_planned_hours(double hours, double longRide) =>
        Assert.Equal(longRide, Of(hours).Limits.LongRideHours);

    [Fact]
    public void A_long_ride_given_by_name_is_taken_as_it_is() =>
        Assert.Equal(2.5, Of(4, limits: ("long_ride_h", 2.5)).Limits.LongRideHours);

    [Fact]
    public void A_low_share_in_the_plan_replaces_the_tiers() =>
        Assert.Equal(0.82, PlanInForce.For(new Rider { Plan = new TrainingPlan { WeeklyHours = 6, LowShare = 0.82 } }, []).Limits.IntendedLowShare);

    [Fact]
    public void Tier_bounds_can_be_moved() =>
        Assert.Equal(Tier.Low, Of(6, limits: ("low_tier_h", 6)).Tier);

    [Fact]
    public void Without_planned_hours_they_are_the_mean_of_six_weeks_before_and_exceptions_are_left_out()
    {
        double[] hours = [20, 6, 7, 2, 8, 9, 0];
        var weeks = hours.Select((h, i) => new WeekHours(Monday.PlusDays(7 * i), h, Excepted: i == 3)).ToList();

        var plan = PlanInForce.For(new Rider(), weeks);

        Assert.Equal((6.0 + 7 + 8 + 9 + 0) / 5, plan.PlannedHours);
        Assert.Equal((true, 5), (plan.PlannedHoursFromHistory, plan.HistoryWeeks));
        Assert.Equal(Tier.Middle, plan.Tier);
    }

    [Theory]
    [InlineData(0, false, 5.0)]
    [InlineData(1, false, 5.0)]
    [InlineData(2, true, 8.0)]
    public void A_first_week_whose_first_ride_is_later_than_its_second_day_is_left_out_and_said_so(int firstDay, bool leftOut, double hours)
    {
        var plan = PlanInForce.For(new Rider(), [new WeekHours(Monday, 2, FirstRideOn: Monday.PlusDays(firstDay)), new WeekHours(Monday.PlusWeeks(1), 8)]);

        Assert.Equal((hours, leftOut, leftOut ? 1 : 2), (plan.PlannedHours!.Value, plan.FirstWeekLeftOut, plan.HistoryWeeks));
    }

    [Fact]
    public void One_week_before_is_enough_to_take_hours_from() =>
        Assert.Equal(4.5, PlanInForce.For(new Rider(), [new WeekHours(Monday, 4.5)]).PlannedHours);

    [Fact]
    public void Without_planned_hours_and_weeks_there_is_no_tier()
    {
        var plan = PlanInForce.For(new Rider(), [new WeekHours(Monday, 4, Excepted: true)]);

        Assert.Null(plan.PlannedHours);
        Assert.Null(plan.Tier);
        Assert.False(plan.PlannedHoursFromHistory);
        Assert.Equal(2.5, plan.Limits.LongRideHours);
    }

    [Fact]
    public void Planned_hours_in_the_rider_file_come_before_the_weeks()
    {
        var plan = PlanInForce.For(new Rider { Plan = new TrainingPlan { WeeklyHours = 10 } }, [new WeekHours(Monday, 4.5)]);

        Assert.Equal((10.0, false), (plan.PlannedHours!.Value, plan.PlannedHoursFromHistory));
    }

    private static PlanInForce Of(double hours, Experience experience = Experience.Regular, params (string Name, double Value)[] limits)
    {
        var plan = new TrainingPlan { WeeklyHours = hours };
        foreach (var (name, value) in limits)
            plan = plan with { LimitOverrides = plan.LimitOverrides.SetItem(name, value) };
        return PlanInForce.For(new Rider { Experience = experience, Plan = plan }, []);
    }
}
