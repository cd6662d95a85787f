using NodaTime;
using RideAudit.Rides;
using RideAudit.Units;
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
    [InlineData(11, 30, 1)]
    [InlineData(11, 29, 2)]
    public void A_start_within_half_an_hour_is_the_same_ride(int hour, int minute, int rides) =>
        Assert.Equal(rides, RideLogMerger.Merge([Hour()], [Row(20, 5) with { Start = new LocalTime(hour, minute) }]).Length);

    [Fact]
    public void A_row_that_starts_while_a_recorded_ride_goes_on_adds_no_hours_and_says_so()
    {
        var ride = Assert.Single(RideLogMerger.Merge([Hour()], [Row(20, 5) with { Start = new LocalTime(12, 35) }]));
        Assert.Equal((3600.0, 5.0), (ride.TimerSeconds, ride.Rating));
        Assert.Equal("log.csv#2 of the ride log (20 min) is taken to be this ride and adds no hours: if it was another one, write its start into the log.", Assert.Single(ride.Remarks));
    }

    [Theory]
    [InlineData(80, false)]
    [InlineData(81, true)]
    [InlineData(48, false)]
    [InlineData(47, true)]
    public void Without_a_start_a_length_within_a_quarter_is_the_same_ride_and_another_one_a_doubt(double minutes, bool doubted)
    {
        var ride = Assert.Single(RideLogMerger.Merge([Hour()], [Row(minutes, 5)]));
        Assert.Equal((5.0, doubted), (ride.Rating, !ride.Remarks.IsEmpty));
    }

    [Fact]
    public void A_second_row_of_a_day_with_one_recorded_ride_is_a_second_ride()
    {
        // Recorded the evening ride, not the way to work.
        var merged = RideLogMerger.Merge([Hour()], [Row(25, 2), Row(60, 7) with { File = "log.csv#3" }]);
        Assert.Equal([("hour.fit", 7.0, 3600.0), ("log.csv#2", 2.0, 1500.0)], merged.Select(r => (r.File, r.Rating!.Value, r.TimerSeconds)));
    }

    [Fact]
    public void The_days_sum_in_one_row_does_not_double_two_recorded_rides()
    {
        var evening = Ride(Flat(5400, 150), start: Noon + Duration.FromHours(6), file: "evening.fit");
        var merged = RideLogMerger.Merge([Hour(), evening], [Row(150, 6)]);
        Assert.Equal(9000, merged.Sum(r => r.TimerSeconds));
        Assert.Single(merged, r => !r.Remarks.IsEmpty);
        Assert.All(merged, r => Assert.Null(r.Rating));
    }

    [Fact]
    public void Warm_up_race_and_cool_down_are_three_rows_of_one_ride()
    {
        var race = RaceDay();
        var ride = Assert.Single(RideLogMerger.Merge([race],
            [Row(20, 2), Row(60, 9) with { File = "log.csv#3", Kind = RideKind.High, Note = "Third." }, Row(15, 1) with { File = "log.csv#4", Note = "Legs empty." }]));
        Assert.Equal((9.0, RideKind.High, "Third.; Legs empty.", race.TimerSeconds), (ride.Rating, ride.GivenKind, ride.Note, ride.TimerSeconds));
        Assert.Empty(ride.Remarks);
    }

    [Fact]
    public void Three_rows_with_their_starts_are_three_parts_of_one_ride()
    {
        var at = new LocalTime(12, 0);
        var ride = Assert.Single(RideLogMerger.Merge([RaceDay()],
            [Row(20, 2) with { Start = at }, Row(60, 9) with { File = "log.csv#3", Start = at.PlusMinutes(40) }, Row(15, 1) with { File = "log.csv#4", Start = at.PlusMinutes(110) }]));
        Assert.Equal(9, ride.Rating);
        Assert.Empty(ride.Remarks);
    }

    [Theory]
    [InlineData("2026/race.fit")]
    [InlineData("race.fit")]
    [InlineData("Race")]
    public void A_row_that_names_a_file_speaks_of_its_ride_whatever_its_day(string written)
    {
        var row = Row(0, 9) with { RideFile = written, Date = null, Minutes = null, Kind = RideKind.High, Note = "Third." };
        var ride = Assert.Single(RideLogMerger.Merge([RaceDay()], [row]));
        Assert.Equal((9.0, RideKind.High, "Third."), (ride.Rating, ride.GivenKind, ride.Note));
    }

    [Fact]
    public void A_row_for_a_file_that_is_not_there_gives_its_word_to_no_other_ride()
    {
        var row = Row(0, 9) with { RideFile = "gone.fit", Minutes = null, Kind = RideKind.High };
        Assert.Null(Assert.Single(RideLogMerger.Merge([Hour()], [row])).GivenKind);
    }

    [Fact]
    public void A_date_and_a_kind_speak_of_the_days_longest_ride_or_of_all_in_order()
    {
        var evening = Ride(Flat(5400, 150), start: Noon + Duration.FromHours(6), file: "evening.fit");
        var word = Row(0, 0) with { Minutes = null, Rating = null, Kind = RideKind.Threshold };
        Assert.Equal([null, RideKind.Threshold], RideLogMerger.Merge([Hour(), evening], [word]).Select(r => r.GivenKind));
        Assert.Equal([RideKind.Threshold, RideKind.Recovery],
            RideLogMerger.Merge([Hour(), evening], [word, word with { File = "log.csv#3", Kind = RideKind.Recovery }]).Select(r => r.GivenKind));
    }

    [Fact]
    public void A_copy_of_the_log_does_not_ride_twice()
    {
        var row = Row(60, 7) with { Date = Day.PlusDays(1) };
        Assert.Single(RideLogMerger.Merge([], [row, row with { File = "copy.csv#2" }]));
        Assert.Equal(2, RideLogMerger.Merge([], [row, row with { File = "log.csv#3" }]).Length);
    }

    [Fact]
    public void A_ride_without_recording_has_the_logs_kind_and_note()
    {
        var ride = Assert.Single(RideLogMerger.Merge([], [Row(60, 7) with { Kind = RideKind.Threshold, Note = "On the rollers." }]));
        Assert.Equal((RideKind.Threshold, "On the rollers."), (ride.GivenKind, ride.Note));
    }

    [Fact]
    public void Of_two_rides_on_a_day_the_nearer_in_length_is_meant_and_each_is_meant_once()
    {
        var brief = Ride(Flat(3300, 150), start: Noon + Duration.FromHours(5), file: "brief.fit");
        var merged = RideLogMerger.Merge([Hour(), brief], [Row(55, 3), Row(60, 6) with { File = "log.csv#3" }]);
        Assert.Equal(new double?[] { 6, 3 }, merged.Select(r => r.Rating).ToArray());
    }

    private static Ride Hour() => Ride(Flat(3600, 150), start: Noon, file: "hour.fit");

    /// <summary>20 min at noon, an hour from 12:40, 15 min from 13:50.</summary>
    private static Ride RaceDay() => Assert.Single(RideJoiner.Join(
    [
        Recording("2026/warm-up.fit", Noon, Flat(1200, 150)),
        Recording("2026/race.fit", Noon + Duration.FromMinutes(40), Flat(3600, 250)),
        Recording("2026/home.fit", Noon + Duration.FromMinutes(110), Flat(900, 100)),
    ]));

    private static LoggedRide Row(double minutes, double rating) => new()
    {
        File = "log.csv#2",
        Date = Day,
        Minutes = minutes,
        Rating = rating,
        Figures = new LoggedFigures(null, null, null),
    };
}
