using NodaTime;
using RideAudit.Ingest;
using RideAudit.Rides;

namespace RideAudit.Tests.Ingest;

public sealed class RideLogTests
{
    private static FolderContent Log(string text) => Reading.Of("log.csv", text);

    [Fact]
    public void A_row_a_ride_with_everything_that_can_be_written_down()
    {
        var read = Log("date,start,minutes,average power,normalised power,average heart rate,rating,note\n2026-05-05,18:00,90,180,205,141,7,\"windy, \"\"hard\"\"\"\n");
        var ride = Assert.Single(read.LoggedRides);
        Assert.Equal(new LocalDate(2026, 5, 5), ride.Date);
        Assert.Equal(new LocalTime(18, 0), ride.Start);
        Assert.Equal(90, ride.Minutes);
        Assert.Equal(new LoggedFigures(180, 205, 141), ride.Figures);
        Assert.Equal(7, ride.Rating);
        Assert.Equal(Offset.FromHours(1), ride.Offset);
        Assert.Equal("log.csv#2", ride.File);
        Assert.Empty(read.Notices);
    }

    [Theory]
    [InlineData("minutes", "90", 90)]
    [InlineData("minutes", "1:30", 90)]
    [InlineData("duration", "1:30:30", 90.5)]
    [InlineData("duration", "1h30", 90)]
    [InlineData("duration", "1 h 30 min", 90)]
    [InlineData("duration", "2h", 120)]
    [InlineData("hours", "1.5", 90)]
    [InlineData("duration (h)", "1.5", 90)]
    [InlineData("duration (s)", "5400", 90)]
    [InlineData("moving time", "1:30", 90)]
    public void Lengths_are_read_as_minutes_or_hours_and_minutes(string header, string cell, double expected) =>
        Assert.Equal(expected, Assert.Single(Log($"date,{header}\n2026-05-05,{cell}\n").LoggedRides).Minutes, 6);

    [Theory]
    [InlineData("2026-05-05")]
    [InlineData("2026/05/05")]
    [InlineData("20260505")]
    [InlineData("05.05.2026")]
    [InlineData("5.5.2026")]
    [InlineData("2026-05-05T18:00:00")]
    public void Dates_are_read_in_the_forms_that_mean_one_day(string cell) =>
        Assert.Equal(new LocalDate(2026, 5, 5), Assert.Single(Log($"date,minutes\n{cell},60\n").LoggedRides).Date);

    [Fact]
    public void A_date_between_slashes_that_could_be_two_days_is_named()
    {
        var read = Log("date,minutes\n05/06/2026,60\n2026-05-05,60\n");
        Assert.Single(read.LoggedRides);
        Assert.Contains("line 2, column date: “05/06/2026”", Assert.Single(read.Notices).Sentence);
    }

    [Fact]
    public void A_log_none_of_whose_rows_can_be_read_counts_as_unusable()
    {
        var read = Log("date,minutes\nyesterday,60\n");
        Assert.True(Assert.Single(read.Notices).Unusable);
    }

    [Fact]
    public void Rest_days_and_blank_rows_are_no_faults()
    {
        var read = Log("date,minutes,rating\n2026-05-04,0,\n,,\n2026-05-05,60,5\n");
        Assert.Single(read.LoggedRides);
        Assert.Empty(read.Notices);
    }

    [Fact]
    public void A_value_that_cannot_be_is_left_out_and_the_ride_stays()
    {
        var read = Log("date,minutes,rating,avg hr\n2026-05-05,60,12,999\n");
        var ride = Assert.Single(read.LoggedRides);
        Assert.Null(ride.Rating);
        Assert.Null(ride.Figures.MeanHeartRateBpm);
        Assert.Contains("2 cells could not be read", Assert.Single(read.Notices).Sentence);
    }

    [Fact]
    public void A_log_with_semicolons_has_decimal_commas() =>
        Assert.Equal(6.5, Assert.Single(Log("date;minutes;rpe\n2026-05-05;60;6,5\n").LoggedRides).Rating);

    [Fact]
    public void A_time_column_in_a_log_is_the_start() =>
        Assert.Equal(new LocalTime(18, 0), Assert.Single(Log("date,time,duration\n2026-05-05,18:00,1:30\n").LoggedRides).Start);

    [Fact]
    public void A_rating_in_the_log_goes_to_the_recording_of_that_ride()
    {
        using var folder = new TempFolder()
            .Write("ride.fit", new FitSketch { Seconds = 3600 }.Bytes())
            .Write("log.csv", "date,start,minutes,rating\n2026-05-05,18:05,60,7\n2026-05-06,18:00,45,3\n");
        var read = Reading.Of(folder);
        var rides = RideLogMerger.Merge(RideJoiner.Join(read.Recordings), read.LoggedRides);
        Assert.Equal([("ride.fit", 7.0), ("log.csv#3", 3.0)], rides.Select(r => (r.File, r.Rating!.Value)));
    }
}
