using System.Collections.Immutable;
using NodaTime;
using RideAudit.Plan;
using RideAudit.Tests.Rules;
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
}
