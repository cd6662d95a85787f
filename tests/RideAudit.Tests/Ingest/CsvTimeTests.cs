using NodaTime;
using RideAudit.Rides;

namespace RideAudit.Tests.Ingest;

public sealed class CsvTimeTests
{
    /// <summary>2026-05-05T18:00:00 in Lisbon.</summary>
    private static readonly Instant Evening = Instant.FromUtc(2026, 5, 5, 17, 0);

    private static Recording Single(string header, IEnumerable<string> times, string name = "ride.csv", char separator = ',') =>
        Assert.Single(Reading.Of(name, $"{header}{separator}power\n" + string.Concat(times.Select(t => $"{t}{separator}200\n"))).Recordings);

    [Theory]
    [InlineData("timestamp", "2026-05-05T17:00:0{0}Z")]
    [InlineData("timestamp", "2026-05-05T18:00:0{0}+01:00")]
    [InlineData("timestamp", "2026-05-05T18:00:0{0}+0100")]
    [InlineData("timestamp", "2026-05-05T18:00:0{0}+01")]
    [InlineData("timestamp", "2026-05-05T18:00:0{0}")]
    [InlineData("timestamp", "2026-05-05 18:00:0{0}")]
    [InlineData("timestamp", "2026/05/05 18:00:0{0}")]
    [InlineData("timestamp", "20260505T18000{0}")]
    [InlineData("timestamp", "2026-05-05T18:00:0{0}.25+01:00")]
    [InlineData("timestamp", "177800040{0}")]
    [InlineData("timestamp", "177800040{0}000")]
    [InlineData("timestamp (UTC)", "2026-05-05 17:00:0{0}")]
    [InlineData("utc", "2026-05-05T17:00:0{0}")]
    public void A_timestamp_is_read_in_the_forms_of_ISO_8601(string header, string form)
    {
        var recording = Single(header, Enumerable.Range(0, 5).Select(i => string.Format(form, i)));
        Assert.Equal(Evening, recording.Start);
        Assert.Equal(5, recording.TimerSeconds);
        Assert.Equal(Offset.FromHours(1), recording.Offset);
    }

    [Fact]
    public void An_offset_in_the_timestamps_is_the_rides_own()
    {
        var recording = Single("timestamp", ["2026-05-05T18:00:00-05:00", "2026-05-05T18:00:01-05:00"]);
        Assert.Equal(Offset.FromHours(-5), recording.Offset);
        Assert.Equal(OffsetSource.File, recording.OffsetFrom);
    }

    [Theory]
    [InlineData("2026-05-05-1800.csv")]
    [InlineData("20260505_180000.csv")]
    [InlineData("2026-05-05T18-00-00.csv")]
    [InlineData("ride 2026-05-05 18.00.csv")]
    [InlineData("20260505180000.csv")]
    public void Seconds_begin_at_the_time_in_the_files_name(string name) =>
        Assert.Equal(Evening, Single("seconds", ["0", "1", "2"], name).Start);

    [Fact]
    public void A_name_with_a_date_alone_means_noon_and_says_so()
    {
        var recording = Single("seconds", ["0", "1", "2"], "2026-05-05.csv");
        Assert.Equal(new LocalDateTime(2026, 5, 5, 12, 0), recording.StartsAt.LocalDateTime);
        Assert.Contains("The file says no time of day: noon is taken for its start.", recording.Remarks);
    }

    [Fact]
    public void Seconds_without_any_date_are_named_with_what_to_do()
    {
        var read = Reading.Of("ride.csv", "seconds,power\n0,200\n1,200\n");
        Assert.Empty(read.Recordings);
        Assert.Contains("put it into the file’s name", Assert.Single(read.Notices).Sentence);
    }

    [Fact]
    public void Clock_times_run_over_midnight_into_the_next_day()
    {
        var times = Enumerable.Range(0, 120).Select(i => LocalTime.Midnight.PlusSeconds(-60 + i).ToString("HH:mm:ss", null));
        var recording = Single("time", times, "2026-05-05.csv");
        Assert.Equal(new LocalDateTime(2026, 5, 5, 23, 59, 0), recording.StartsAt.LocalDateTime);
        Assert.Equal(120, recording.TimerSeconds);
        Assert.Equal(120, recording.ElapsedSeconds);
    }

    [Fact]
    public void Clock_times_with_AM_and_PM_are_read()
    {
        var recording = Single("time", ["5:59:59 PM", "6:00:00 PM"], "2026-05-05.csv");
        Assert.Equal(new LocalDateTime(2026, 5, 5, 17, 59, 59), recording.StartsAt.LocalDateTime);
        Assert.Equal(2, recording.TimerSeconds);
    }

    [Fact]
    public void Elapsed_times_that_begin_at_nought_begin_at_the_names_time()
    {
        var recording = Single("elapsed time", ["0:00:00", "0:00:01", "0:00:02"], "2026-05-05-1800.csv");
        Assert.Equal(Evening, recording.Start);
    }

    [Fact]
    public void A_date_column_beside_a_clock_column_gives_the_date()
    {
        var text = "date,time,power\n2026-05-05,18:00:00,200\n2026-05-05,18:00:01,200\n";
        Assert.Equal(Evening, Assert.Single(Reading.Of("ride.csv", text).Recordings).Start);
    }

    [Fact]
    public void Samples_of_one_second_become_their_mean()
    {
        var text = "timestamp,power\n" + string.Concat(Enumerable.Range(0, 40).Select(i => $"2026-05-05T17:00:0{i / 4}.{i % 4 * 25:00}Z,{100 + i % 4 * 20}\n"));
        var grid = Assert.Single(Reading.Of("ride.csv", text).Recordings).Grid;
        Assert.Equal(10, grid.Length);
        Assert.All(grid.PowerW!, p => Assert.Equal(130, p));
    }

    [Fact]
    public void A_row_with_a_mistyped_year_does_not_make_a_ride_of_years()
    {
        var times = Enumerable.Range(0, 60).Select(i => i == 30 ? "2062-05-05T17:00:30Z" : $"2026-05-05T17:00:{i:00}Z");
        var recording = Single("timestamp", times);
        Assert.Equal(60, recording.ElapsedSeconds);
        Assert.Contains("1 record with an impossible date left out.", recording.Remarks);
    }

    [Fact]
    public void Rows_without_a_readable_time_are_counted_and_the_first_is_shown()
    {
        var read = Reading.Of("ride.csv", "timestamp,power\n2026-05-05T17:00:00Z,200\nlater,200\n2026-05-05T17:00:02Z,abc\n2026-05-05T17:00:03Z,\n");
        Assert.Equal(4, Assert.Single(read.Recordings).TimerSeconds);
        Assert.Equal("1 row has no time, date or length that could be read and is left out; 1 cell could not be read and counts as missing (the first: line 3, column timestamp: “later”).", Assert.Single(read.Notices).Sentence);
    }

    [Fact]
    public void A_gap_over_10_s_is_a_pause()
    {
        var times = Enumerable.Range(0, 20).Concat(Enumerable.Range(40, 20)).Select(i => $"2026-05-05T17:00:{i:00}Z");
        var recording = Single("timestamp", times);
        Assert.Equal(40, recording.TimerSeconds);
        Assert.Equal(60, recording.ElapsedSeconds);
    }

    [Fact]
    public void Samples_more_than_10_s_apart_are_warned_of()
    {
        var read = Reading.Of("ride.csv", "timestamp,power\n" + string.Concat(Enumerable.Range(0, 50).Select(i => $"2026-05-05T17:{i:00}:00Z,200\n")));
        Assert.Equal("sparse", Assert.Single(read.Notices).Problem);
    }
}
