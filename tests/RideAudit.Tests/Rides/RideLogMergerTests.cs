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

    [Theory]
    [InlineData(null, "From the ride log, no start time: noon is taken.", 12, 0)]
    [InlineData(7, "From the ride log.", 7, 0)]
    public void A_ride_without_recording_says_where_it_is_from_and_starts_when_the_log_says(int? startHour, string remark, int hour, int minute)
    {
        var ride = Assert.Single(RideLogMerger.Merge([], [Row(61.5, 7) with { Start = startHour is { } h ? new LocalTime(h, 0) : null }]));
        Assert.Equal(remark, Assert.Single(ride.Remarks));
        Assert.Equal((Day + new LocalTime(hour, minute), 3690.0, 3690.0), (ride.StartsAt.LocalDateTime, ride.TimerSeconds, ride.ElapsedSeconds));
    }

    [Fact]
    public void Of_several_rows_for_one_ride_the_hardest_rating_and_word_count_and_all_notes()
    {
        var rows = new[]
        {
            Row(60, 5) with { RideFile = "hour.fit", Note = "Fresh." },
            Row(60, 7) with { RideFile = "hour.fit", Kind = RideKind.Threshold, File = "log.csv#3" },
            Row(60, 6) with { RideFile = "hour.fit", Kind = RideKind.Recovery, Note = "Tired.", File = "log.csv#4" },
        };
        foreach (var order in new[] { rows, [.. rows.Reverse()] })
        {
            var ride = Assert.Single(RideLogMerger.Merge([Recorded()], [.. order]));
            Assert.Equal((7, RideKind.Threshold), (ride.Rating, ride.GivenKind));
        }
        Assert.Equal("Fresh.; Tired.", RideLogMerger.Merge([Recorded()], [.. rows])[0].Note);
    }

    [Fact]
    public void A_row_outranks_the_rating_of_the_recording_and_without_one_that_stays()
    {
        var rated = Hour() with { Rating = 8, Note = "Wind." };
        Assert.Equal((3.0, "Wind."), Said(Row(60, 3)));
        Assert.Equal((8.0, "Wind.; Cold."), Said(Row(60, 3) with { Rating = null, Note = "Cold." }));
        (double?, string?) Said(LoggedRide row) => (RideLogMerger.Merge([rated], [row])[0].Rating, RideLogMerger.Merge([rated], [row])[0].Note);
    }

    [Theory]
    [InlineData(13, 0, false)]
    [InlineData(12, 59, true)]
    [InlineData(10, 20, false)]
    [InlineData(10, 21, true)]
    public void A_row_rides_at_the_same_time_only_when_it_begins_before_the_end_and_ends_after_the_start(int hour, int minute, bool same)
    {
        // The recording lasts from 12:00 to 13:00, the row 100 minutes; a start within half an hour would be the same ride anyway.
        var rows = RideLogMerger.Merge([Hour()], [Row(100, 5) with { Start = new LocalTime(hour, minute) }]);
        Assert.Equal(same ? 1 : 2, rows.Length);
    }

    [Fact]
    public void A_row_too_long_for_any_ride_is_taken_for_the_nearest_in_length()
    {
        var brief = Ride(Flat(1200, 150), start: Noon - Duration.FromHours(3), file: "brief.fit");
        var merged = RideLogMerger.Merge([brief, Hour()], [Row(200, 5)]);
        Assert.Equal([false, true], merged.Select(r => !r.Remarks.IsEmpty));
        // Which of the two was meant is not known: neither takes the rating.
        Assert.Equal([null, null], merged.Select(r => r.Rating));
    }

    [Fact]
    public void A_second_doubtful_row_does_not_fall_on_a_ride_that_is_spoken_of() =>
        Assert.Equal(2, RideLogMerger.Merge([Hour()], [Row(200, 5), Row(150, 4) with { File = "log.csv#3" }]).Length);

    [Fact]
    public void A_part_is_spoken_of_once_and_the_rows_before_it_do_not_come_back()
    {
        // The race is named; a row as long as the warm-up comes after it and so is another ride.
        var merged = RideLogMerger.Merge([RaceDay()], [Row(60, 8) with { RideFile = "race.fit" }, Row(21, 9) with { File = "log.csv#3" }]);
        Assert.Equal([8, 9], merged.Select(r => r.Rating!.Value).Order());
        var after = RideLogMerger.Merge([RaceDay()], [Row(60, 8) with { RideFile = "race.fit" }, Row(15, 9) with { File = "log.csv#3" }]);
        Assert.Equal(9, Assert.Single(after).Rating);
    }

    [Fact]
    public void A_copied_row_that_names_its_ride_speaks_of_it_again_without_a_second_ride() =>
        Assert.Single(RideLogMerger.Merge([Recorded()], [Row(60, 7) with { RideFile = "hour.fit" }, Row(60, 7) with { RideFile = "hour.fit", File = "copy.csv#2" }]));

    [Fact]
    public void A_part_is_not_spoken_of_a_second_time()
    {
        var merged = RideLogMerger.Merge([RaceDay()], [Row(60, 8) with { RideFile = "race.fit" }, Row(60, 9) with { File = "log.csv#3" }]);
        Assert.Equal([("2026/warm-up.fit", 8.0), ("log.csv#3", 9.0)], merged.Select(r => (r.File, r.Rating!.Value)));
    }

    [Fact]
    public void A_row_as_long_as_a_part_of_a_ride_that_is_spoken_of_as_a_whole_is_another_ride()
    {
        var merged = RideLogMerger.Merge([RaceDay()], [Row(125, 8) with { Start = new LocalTime(12, 0) }, Row(20, 3) with { File = "log.csv#3" }]);
        Assert.Equal([("2026/warm-up.fit", 8.0), ("log.csv#3", 3.0)], merged.Select(r => (r.File, r.Rating!.Value)));
    }

    [Fact]
    public void A_row_that_starts_hours_after_every_part_is_another_ride()
    {
        var merged = RideLogMerger.Merge([RaceDay()], [Row(20, 3) with { Start = new LocalTime(18, 0) }]);
        Assert.Equal([null, 3.0], merged.Select(r => r.Rating));
    }

    [Fact]
    public void A_row_that_names_its_ride_is_no_copy_of_one_as_long_in_another_log()
    {
        var evening = Assert.Single(RideJoiner.Join([Recording("evening.fit", Noon + Duration.FromHours(6), Flat(3600, 180))]));
        var merged = RideLogMerger.Merge([Recorded(), evening], [Row(60, 5), Row(60, 8) with { RideFile = "evening.fit", File = "coach.csv#2" }]);
        Assert.Equal([5.0, 8.0], merged.Select(r => r.Rating));
    }

    [Fact]
    public void A_date_and_a_kind_speak_of_the_recorded_ride_of_that_day()
    {
        var word = Row(0, 0) with { Minutes = null, Rating = null, Kind = RideKind.Threshold };
        Assert.Equal(RideKind.Threshold, Assert.Single(RideLogMerger.Merge([Recorded()], [word])).GivenKind);
    }

    [Fact]
    public void A_row_for_a_file_that_is_not_there_is_a_ride_of_its_own_where_it_has_a_length()
    {
        var merged = RideLogMerger.Merge([Recorded()], [Row(90, 4) with { RideFile = "gone.fit", Date = Day.PlusDays(1) }]);
        Assert.Equal([3600.0, 5400.0], merged.Select(r => r.TimerSeconds));
    }

    [Fact]
    public void A_row_during_one_of_two_rides_speaks_of_that_one()
    {
        var evening = Ride(Flat(5400, 150), start: Noon + Duration.FromHours(6), file: "evening.fit");
        var merged = RideLogMerger.Merge([Hour(), evening], [Row(20, 5) with { Start = new LocalTime(12, 35) }]);
        Assert.Equal([5.0, null], merged.Select(r => r.Rating));
    }

    [Fact]
    public void Two_doubtful_rows_fall_on_two_rides()
    {
        var brief = Ride(Flat(1200, 150), start: Noon - Duration.FromHours(3), file: "brief.fit");
        var merged = RideLogMerger.Merge([brief, Hour()], [Row(200, 5), Row(150, 4) with { File = "log.csv#3" }]);
        Assert.Equal([1, 1], merged.Select(r => r.Remarks.Length));
    }

    [Fact]
    public void Of_two_rides_the_longer_one_is_meant_where_it_is_nearer_in_length()
    {
        var brief = Ride(Flat(3300, 150), start: Noon + Duration.FromHours(5), file: "brief.fit");
        Assert.Equal([7.0, null], RideLogMerger.Merge([Hour(), brief], [Row(60, 7)]).Select(r => r.Rating));
    }

    private static Ride Hour() => Ride(Flat(3600, 150), start: Noon, file: "hour.fit");

    private static Ride Recorded() => Assert.Single(RideJoiner.Join([Recording("hour.fit", Noon, Flat(3600, 150))]));

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
