using RideAudit.Plan;
using RideAudit.Tests.Rules;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Tests.Weeks;

/// <summary>What a day was: common practice, no source.</summary>
public sealed class DayFactsTests
{
    [Theory]
    [InlineData(RideKind.High, 12, 0, RideKind.Threshold, 1, 1)]
    [InlineData(RideKind.High, 11, 59, RideKind.Threshold, 1, 0)]
    [InlineData(RideKind.Threshold, 11, 59, RideKind.High, 1, 0)]
    [InlineData(RideKind.Threshold, 12, 0, RideKind.High, 1, 1)]
    [InlineData(RideKind.High, 17, 0, RideKind.High, 2, 0)]
    [InlineData(RideKind.High, 17, 0, RideKind.Endurance, 1, 0)]
    public void A_second_hard_ride_three_hours_after_the_first_is_a_session_of_its_own(
        RideKind first, int hour, int minute, RideKind second, int high, int threshold)
    {
        // The first ride ends at 9:00.
        var day = DayFacts.Build(Sample.Monday, [Sample.Ride(Sample.Monday, first, 60, 8), Sample.Ride(Sample.Monday, second, 60, hour, minute)]);
        Assert.Equal((high, threshold), (day.HighSessions, day.ThresholdSessions));
    }

    [Fact]
    public void Rides_in_a_row_are_one_session_as_long_as_the_next_one_is_near()
    {
        // 8:00, 11:00 and 14:00, an hour each: two hours between any two.
        var rides = new[] { 8, 11, 14 }.Select(hour => Sample.Ride(Sample.Monday, RideKind.Threshold, 60, hour));
        Assert.Equal((0, 1), (DayFacts.Build(Sample.Monday, rides).HighSessions, DayFacts.Build(Sample.Monday, rides).ThresholdSessions));
    }

    [Theory]
    [InlineData(RideKind.Threshold, 9, RideKind.Threshold, 10, RideKind.High, 11, 1, 0)]
    [InlineData(RideKind.High, 9, RideKind.Threshold, 10, RideKind.High, 11, 1, 0)]
    [InlineData(RideKind.High, 13, RideKind.Threshold, 14, RideKind.High, 15, 1, 0)]
    [InlineData(RideKind.High, 9, RideKind.Threshold, 14, RideKind.High, 15, 2, 0)]
    public void A_session_in_parts_is_as_hard_as_its_hardest_part(
        RideKind first, int hour, RideKind second, int secondHour, RideKind third, int thirdHour, int high, int threshold)
    {
        (RideKind, int)[] rides = [(first, hour), (second, secondHour), (third, thirdHour)];
        var day = DayFacts.Build(Sample.Monday, rides.Select(r => Sample.Ride(Sample.Monday, r.Item1, 60, r.Item2)));
        Assert.Equal((high, threshold), (day.HighSessions, day.ThresholdSessions));
    }

    [Fact]
    public void The_hours_between_can_be_set() =>
        Assert.Equal(1, DayFacts.Build(
            Sample.Monday, [Sample.Ride(Sample.Monday, RideKind.High, 60, 8), Sample.Ride(Sample.Monday, RideKind.High, 60, 17)], 0,
            new Limits { SecondHardRideHours = 10 }).HighSessions);

    [Theory]
    [InlineData(60, 0.85, DayKind.Recovery)]
    [InlineData(60.4, 0.845, DayKind.Recovery)]
    [InlineData(60.5, 0.90, DayKind.Endurance)]
    [InlineData(60, 0.844, DayKind.Endurance)]
    public void A_short_day_that_is_easy_as_shown_counts_as_recovery(double minutes, double low, DayKind expected) =>
        Assert.Equal(expected, DayFacts.Build(Sample.Monday, [Sample.Ride(Sample.Monday, RideKind.Endurance, minutes, lowShare: low)]).Kind);

    [Theory]
    [InlineData(1800, DayKind.Recovery)]
    [InlineData(1770, DayKind.Recovery)]
    [InlineData(1769, DayKind.Rest)]
    public void Half_an_hour_of_other_activity_makes_a_day_without_riding_recovery(double seconds, DayKind expected) =>
        Assert.Equal(expected, DayFacts.Build(Sample.Monday, [], seconds).Kind);

    [Fact]
    public void A_day_takes_its_hardest_ride()
    {
        RideKind[] harder = [RideKind.Recovery, RideKind.Endurance, RideKind.Unrated, RideKind.Long, RideKind.Threshold, RideKind.High];
        DayKind[] days = [DayKind.Recovery, DayKind.Endurance, DayKind.Unrated, DayKind.Long, DayKind.Threshold, DayKind.High];
        for (var i = 0; i < harder.Length; i++)
            Assert.Equal(days[i], DayFacts.Build(Sample.Monday, harder[..(i + 1)].Select((kind, at) => Sample.Ride(Sample.Monday, kind, 90, 6 + 2 * at))).Kind);
    }
}
