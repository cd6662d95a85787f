using NodaTime;
using RideAudit.Rides;
using static RideAudit.Tests.Support.Made;

namespace RideAudit.Tests.Rides;

/// <summary>Common practice, no source.</summary>
public sealed class RideLogMergerTests
{
    private static readonly LocalDate Day = new(2026, 5, 5);

    [Fact]
    public void A_row_for_a_recorded_ride_gives_it_its_rating()
    {
        var merged = RideLogMerger.Merge([Hour()], [Row(60, 7)]);
        Assert.Equal((7.0, 1), (merged[0].Rating!.Value, merged.Length));
    }

    [Fact]
    public void A_row_without_a_recording_is_a_ride_of_its_own()
    {
        var merged = RideLogMerger.Merge([Hour()], [Row(60, 7) with { Date = Day.PlusDays(1) }]);
        Assert.Equal(2, merged.Length);
        Assert.Equal(("log.csv#2", 3600.0, 0), (merged[1].File, merged[1].TimerSeconds, merged[1].Grid.Length));
    }

    [Theory]
    [InlineData(12, 30, 1)]
    [InlineData(12, 31, 2)]
    [InlineData(11, 30, 1)]
    public void A_start_within_half_an_hour_is_the_same_ride(int hour, int minute, int rides) =>
        Assert.Equal(rides, RideLogMerger.Merge([Hour()], [Row(20, 5) with { Start = new LocalTime(hour, minute) }]).Length);

    [Theory]
    [InlineData(80, 1)]
    [InlineData(81, 2)]
    [InlineData(48, 1)]
    [InlineData(47, 2)]
    public void Without_a_start_a_length_within_a_quarter_is_the_same_ride(double minutes, int rides) =>
        Assert.Equal(rides, RideLogMerger.Merge([Hour()], [Row(minutes, 5)]).Length);

    [Fact]
    public void Of_two_rides_on_a_day_the_nearer_in_length_is_meant_and_each_is_meant_once()
    {
        var brief = Ride(Flat(3300, 150), start: Noon + Duration.FromHours(5), file: "brief.fit");
        var merged = RideLogMerger.Merge([Hour(), brief], [Row(55, 3), Row(60, 6) with { File = "log.csv#3" }]);
        Assert.Equal(new double?[] { 6, 3 }, merged.Select(r => r.Rating).ToArray());
    }

    private static Ride Hour() => Ride(Flat(3600, 150), start: Noon, file: "hour.fit");

    private static LoggedRide Row(double minutes, double rating) => new()
    {
        File = "log.csv#2",
        Date = Day,
        Minutes = minutes,
        Rating = rating,
        Figures = new LoggedFigures(null, null, null),
    };
}
