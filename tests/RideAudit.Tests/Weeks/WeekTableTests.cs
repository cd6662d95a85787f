using System.Collections.Immutable;
using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Tests.Rules;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Tests.Weeks;

/// <summary>Where a week begins and which weeks there are.</summary>
public sealed class WeekTableTests
{
    [Theory]
    [InlineData(4, IsoDayOfWeek.Monday, 4)]
    [InlineData(10, IsoDayOfWeek.Monday, 4)]
    [InlineData(11, IsoDayOfWeek.Monday, 11)]
    [InlineData(6, IsoDayOfWeek.Sunday, 3)]
    [InlineData(9, IsoDayOfWeek.Sunday, 3)]
    [InlineData(8, IsoDayOfWeek.Saturday, 2)]
    public void A_week_begins_on_the_last_first_day_not_after_the_date(int dayOfMay, IsoDayOfWeek firstDay, int start) =>
        Assert.Equal(new LocalDate(2026, 5, start), WeekTable.StartOf(new LocalDate(2026, 5, dayOfMay), firstDay));

    [Fact]
    public void Without_a_ride_there_is_the_last_week_alone()
    {
        var week = Assert.Single(WeekTable.Build([], [], IsoDayOfWeek.Monday, Sample.Monday, Sample.Monday.PlusDays(7), new Limits(), _ => null));
        Assert.Equal((Sample.Monday, 0, true), (week.StartsOn, week.RideCount, week.Finished));
    }

    [Fact]
    public void Weeks_go_from_the_first_rides_to_the_last_and_none_is_left_out()
    {
        var first = Sample.Monday.PlusDays(-20);
        RideFigures[] rides = [Sample.Ride(Sample.Monday, RideKind.Endurance, 60), Sample.Ride(first, RideKind.Endurance, 90)];
        var weeks = WeekTable.Build(rides, [], IsoDayOfWeek.Monday, Sample.Monday, Sample.Monday.PlusDays(7), new Limits(), _ => null);
        Assert.Equal([(-21, 1), (-14, 0), (-7, 0), (0, 1)], weeks.Select(w => (Period.DaysBetween(Sample.Monday, w.StartsOn), w.RideCount)));
        Assert.All(weeks, w => Assert.Equal(first, w.FirstRideOn));
        Assert.Equal(weeks[2].LoadAfter, weeks[3].LoadBefore);
    }

    [Theory]
    [InlineData(-35, true)]
    [InlineData(-36, false)]
    [InlineData(-37, false)]
    public void Loads_settle_in_for_42_days_from_the_first_ride(int firstRide, bool settling) =>
        Assert.Equal(settling, Sample.Week([], firstRideOn: Sample.Monday.PlusDays(firstRide)).SettlingIn);

    [Fact]
    public void Loads_without_a_ride_are_settling_in() => Assert.True(Sample.Week([]).SettlingIn);

    [Theory]
    [InlineData(6, 0)]
    [InlineData(7, 1)]
    [InlineData(8, 0)]
    public void A_week_is_seven_days_in_a_row(int count, int gap)
    {
        var days = Enumerable.Range(0, count).Select(i => DayFacts.Build(Sample.Monday.PlusDays(i == 6 ? i + gap : i), [])).ToImmutableArray();
        Assert.StartsWith("A week is seven consecutive days.", Assert.Throws<ArgumentException>(() => WeekFacts.Build(days, default, null)).Message);
    }

    [Fact]
    public void The_week_before_is_the_last_of_the_past()
    {
        var weeks = new[] { Sample.Week([]), Sample.Week([], Sample.Monday.PlusDays(7)) };
        Assert.Equal(Sample.Monday.PlusDays(7), new Past([.. weeks]).LastWeek!.StartsOn);
        Assert.Null(Past.None.LastWeek);
    }

    [Fact]
    public void A_weeks_figures_are_the_sums_of_its_days()
    {
        RideFigures[] rides =
        [
            Sample.Ride(Sample.Monday, RideKind.Unrated, 30) with { StressFrom = StressSource.Unknown },
            Sample.Ride(Sample.Monday.PlusDays(2), RideKind.Unrated, 60) with { StressFrom = StressSource.Unknown },
            Sample.Ride(Sample.Monday.PlusDays(2), RideKind.Endurance, 90, 8),
            Sample.Ride(Sample.Monday.PlusDays(5), RideKind.Endurance, 120),
        ];
        var days = Enumerable.Range(0, 7).Select(i => Sample.Monday.PlusDays(i)).Select(d => DayFacts.Build(d, rides.Where(r => r.Date == d), 600));
        var week = WeekFacts.Build([.. days], default, Sample.Monday);

        Assert.Equal((5.0, 4, 1.5, 4200.0), (week.RideSeconds / 3600, week.RideCount, week.UnknownStressHours, week.OtherSeconds));
        Assert.Equal(rides.Sum(r => r.Stress ?? 0), week.Stress, 9);
        Assert.Equal(3.5 * 3600, week.Bands.Low + week.Bands.Middle + week.Bands.High, 6);
        Assert.Equal(7200, week.LongestRideSeconds);
        Assert.True(week.Finished);
    }

    [Fact]
    public void Rides_of_one_start_are_in_the_order_of_their_names()
    {
        var ride = Sample.Ride(Sample.Monday, RideKind.Endurance, 60);
        Assert.Equal(["a.fit", "b.fit"], DayFacts.Build(Sample.Monday, [ride with { File = "b.fit" }, ride with { File = "a.fit" }]).Rides.Select(r => r.File));
    }
}
