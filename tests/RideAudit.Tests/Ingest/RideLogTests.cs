using NodaTime;
using RideAudit.Ingest;
using RideAudit.Rides;
using RideAudit.Units;

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
        Assert.Equal("windy, \"hard\"", ride.Note);
        Assert.Equal(Offset.FromHours(1), ride.Offset);
        Assert.Equal("log.csv#2", ride.File);
        Assert.Empty(read.Notices);
    }

    [Theory]
    [InlineData("recovery", RideKind.Recovery)]
    [InlineData("Endurance", RideKind.Endurance)]
    [InlineData("long", RideKind.Long)]
    [InlineData("threshold", RideKind.Threshold)]
    [InlineData("high", RideKind.High)]
    [InlineData("race", RideKind.High)]
    [InlineData(" Test ", RideKind.High)]
    public void The_coachs_word_is_one_of_seven(string cell, RideKind expected) =>
        Assert.Equal(expected, Assert.Single(Log($"date,minutes,kind,rating\n2026-05-05,60,{cell},\n").LoggedRides).Kind);

    [Fact]
    public void A_table_of_dates_kinds_and_minutes_alone_is_a_plan_and_counts_no_ride()
    {
        var read = Log("date,minutes,kind\n2026-05-05,60,high\n");
        Assert.Empty(read.LoggedRides);
        Assert.Equal(new LocalDate(2026, 5, 5), Assert.Single(read.Plan.Sessions).Date);
    }

    [Fact]
    public void Another_word_is_named_with_its_line_and_what_is_allowed_and_the_row_counts()
    {
        var read = Log("date,minutes,kind,rating\n2026-05-04,60,high,7\n2026-05-05,60,tempo,6\n2026-05-06,60,VO2,6\n");
        Assert.Equal([RideKind.High, null, null], read.LoggedRides.Select(r => r.Kind));
        var notice = Assert.Single(read.Notices);
        Assert.False(notice.Unusable);
        Assert.Equal("2 kinds are not known and are left out (the first: line 3, column kind: “tempo”); allowed: recovery, endurance, long, threshold, high, race, test.", notice.Sentence);
    }

    [Fact]
    public void A_kind_and_a_rating_that_cannot_be_are_both_named()
    {
        var sentence = Assert.Single(Log("date,minutes,kind,rating\n2026-05-05,60,tempo,99\n").Notices).Sentence;
        Assert.Contains("1 cell could not be read", sentence);
        Assert.Contains("1 kind is not known and is left out", sentence);
    }

    [Fact]
    public void A_row_with_a_file_needs_neither_date_nor_length()
    {
        var read = Log("file,kind,rating,note\nrace.fit,race,9,\"Third, in the rain\"\n");
        var row = Assert.Single(read.LoggedRides);
        Assert.Equal(("race.fit", null, null, RideKind.High, 9.0, "Third, in the rain"), (row.RideFile, row.Date, row.Minutes, row.Kind, row.Rating, row.Note));
    }

    [Fact]
    public void A_row_with_a_date_and_a_kind_needs_no_length()
    {
        using var folder = new TempFolder().Write("ride.fit", new FitSketch().Bytes()).Write("log.csv", "date,start,kind\n2026-05-05,18:00,race\n");
        var read = Reading.Of(folder);
        Assert.Equal(RideKind.High, Assert.Single(RideLogMerger.Merge(RideJoiner.Join(read.Recordings), read.LoggedRides)).GivenKind);
        Assert.Empty(read.Notices);
    }

    [Fact]
    public void A_row_for_a_ride_that_is_not_there_is_named()
    {
        using var folder = new TempFolder().Write("ride.fit", new FitSketch().Bytes()).Write("log.csv", "file,date,kind\nrace.fit,,race\n,2026-05-09,test\nRIDE,,long\n");
        Assert.Equal(
            [("log.csv#2", "The ride log names race.fit, which is not among the rides: write the name as the review shows it."), ("log.csv#3", "The ride log says what the ride of 2026-05-09 was, and there is none: write its minutes, or another date.")],
            Reading.Of(folder).Notices.Select(n => (n.File, n.Sentence)));
    }

    [Fact]
    public void A_row_that_names_the_copy_that_was_left_out_speaks_of_the_one_kept()
    {
        using var folder = new TempFolder().Write("a.fit", new FitSketch().Bytes()).Write("b.fit", new FitSketch().Bytes())
            .Write("watch.fit", new FitSketch { Start = FitSketch.Evening + 4, Power = _ => null }.Bytes())
            .Write("log.csv", "file,kind\nb.fit,race\n").Write("log2.csv", "file,rating\nwatch.fit,8\n");
        var read = Reading.Of(folder);
        var ride = Assert.Single(RideLogMerger.Merge(RideJoiner.Join(read.Recordings), read.LoggedRides));
        Assert.Equal((RideKind.High, 8.0), (ride.GivenKind, ride.Rating));
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
        Assert.Equal(expected, Assert.Single(Log($"date,{header}\n2026-05-05,{cell}\n").LoggedRides).Minutes!.Value, 6);

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
