using NodaTime;
using RideAudit.Plan;
using RideAudit.Rules;

namespace RideAudit.Tests.Next;

/// <summary>The weeks the trade draws by volume and experience, for a rider without history. Common practice, no source.</summary>
public class TradeWeekTests
{
    [Theory]
    [InlineData(4.5, Experience.New, 1, 4)]
    [InlineData(4.5, Experience.Regular, 2, 4)]
    [InlineData(5, Experience.Racing, 3, 4)]
    [InlineData(6.5, Experience.New, 1, 5)]
    [InlineData(6.5, Experience.Regular, 2, 5)]
    [InlineData(6.5, Experience.Racing, 2, 5)]
    [InlineData(11, Experience.Regular, 3, 6)]
    [InlineData(12, Experience.Racing, 3, 6)]
    public void Hard_days_and_riding_days_are_those_of_the_trade(double hours, Experience experience, int hard, int riding)
    {
        var week = RiddenWeeks.LayOut(RiddenWeeks.RiderOf(hours, experience)).Weeks.Single();
        Assert.Equal((hard, riding), (week.Days.Count(d => d.Sessions.Any(s => PlannedKinds.IsHard(s.Kind))), week.Days.Count(d => d.Minutes > 0)));
        Assert.Contains(week.Days, d => d.Sessions.Any(s => s.Kind == PlannedKind.Long) && d.Date.DayOfWeek >= IsoDayOfWeek.Saturday);
        Assert.InRange(week.Hours, 0.88 * hours, 1.06 * hours);
        Assert.Null(week.GaveWay);
        Assert.DoesNotContain(week.Verdicts, v => v.Verdict is Verdict.Watch or Verdict.Broken);
    }

    [Fact]
    public void High_volume_has_two_interval_days_and_one_threshold_ride()
    {
        var kinds = RiddenWeeks.LayOut(RiddenWeeks.RiderOf(11, Experience.Regular)).Weeks[0].Days.SelectMany(d => d.Sessions).Select(s => s.Kind).ToList();
        Assert.Equal((2, 1, 1), (kinds.Count(k => k == PlannedKind.High), kinds.Count(k => k == PlannedKind.Threshold), kinds.Count(k => k == PlannedKind.Long)));
    }

    [Fact]
    public void Monday_rests_after_a_full_weekend()
    {
        foreach (var hours in new[] { 5, 6.5, 8, 10 })
        {
            var week = RiddenWeeks.LayOut(RiddenWeeks.RiderOf(hours, Experience.Regular), 2).Weeks[^1];
            Assert.True(week.Days[0].Sessions.IsEmpty, RiddenWeeks.Line(week));
        }
    }

    [Fact]
    public void The_long_ride_is_on_the_day_with_most_room()
    {
        var rider = RiddenWeeks.RiderOf(
            6.5, Experience.Regular, (IsoDayOfWeek.Tuesday, 60), (IsoDayOfWeek.Wednesday, 75), (IsoDayOfWeek.Thursday, 60), (IsoDayOfWeek.Friday, 240), (IsoDayOfWeek.Sunday, 120));
        var week = RiddenWeeks.LayOut(rider).Weeks.Single();
        Assert.Equal(IsoDayOfWeek.Friday, week.Days.Single(d => d.Sessions.Any(s => s.Kind == PlannedKind.Long)).Date.DayOfWeek);
        Assert.All(week.Days, d => Assert.True(d.Minutes <= (rider.MinutesFree!.TryGetValue(d.Date.DayOfWeek, out var free) ? free : 0), RiddenWeeks.Line(week)));
    }

    [Fact]
    public void A_club_ride_on_Saturday_puts_the_long_ride_on_Sunday_and_the_hard_day_well_before()
    {
        var rider = RiddenWeeks.RiderOf(7.5, Experience.Regular) with { FixedRides = [new FixedRide(IsoDayOfWeek.Saturday, PlannedKind.Threshold, 120, "club ride")] };
        var week = RiddenWeeks.LayOut(rider).Weeks.Single();
        Assert.Equal("club ride", week.Days[5].Sessions.Single().Session);
        Assert.True(week.Days[5].Sessions.Single().Stands);
        Assert.Equal(PlannedKind.Long, week.Days[6].Sessions.Single().Kind);
        Assert.DoesNotContain(week.Days[4].Sessions, s => PlannedKinds.IsHard(s.Kind));
    }
}
