using RideAudit.Plan;
using RideAudit.Rides;

namespace RideAudit.Tests.Ingest;

public sealed class CsvHeaderTests
{
    /// <summary>A header, what its cells say for one second, and what must come out in the channel's own unit.</summary>
    public static TheoryData<string, string, double> Spellings => new()
    {
        { "power", "200", 200 }, { "Power", "200", 200 }, { "POWER", "200", 200 }, { "Power (W)", "200", 200 }, { "power_w", "200", 200 }, { "powerW", "200", 200 },
        { "Power [watts]", "200", 200 }, { "Watts", "200", 200 }, { "watts", "200", 200 }, { "pwr", "200", 200 }, { " Power ", "200", 200 }, { "\"Power\"", "200", 200 },
        { "Heart Rate (bpm)", "140", 140 }, { "heart_rate", "140", 140 }, { "heartRate", "140", 140 }, { "HeartRate", "140", 140 }, { "HR", "140", 140 }, { "hr_bpm", "140", 140 },
        { "heart-rate", "140", 140 }, { "heart.rate", "140", 140 }, { "Pulse", "140", 140 },
        { "Cadence", "90", 90 }, { "cad", "90", 90 }, { "Cadence (rpm)", "90", 90 }, { "RPM", "90", 90 },
        { "speed", "10", 10 }, { "Speed (m/s)", "10", 10 }, { "speed_mps", "10", 10 }, { "Speed (km/h)", "36", 10 }, { "speed_kmh", "36", 10 }, { "kph", "36", 10 }, { "Speed [mph]", "22.369363", 10 },
        { "distance", "1000", 1000 }, { "Distance (km)", "1.5", 1500 }, { "distance_m", "1000", 1000 }, { "Distance (miles)", "1", 1609.344 },
    };

    [Theory]
    [MemberData(nameof(Spellings))]
    public void A_usual_spelling_is_understood_with_its_unit(string header, string cell, double expected)
    {
        var text = $"timestamp,{header}\n" + string.Concat(Enumerable.Range(0, 60).Select(i => $"2026-05-05T18:00:{i:00}+01:00,{cell}\n"));
        var grid = Assert.Single(Reading.Of("ride.csv", text).Recordings).Grid;
        float[]? distance = grid.Distance.IsEmpty ? null : [grid.Distance[0].FromM, grid.Distance[0].ToM];
        PackedSamples?[] channels = [grid.PowerW, grid.HeartRateBpm, grid.CadenceRpm, grid.SpeedMps, distance];
        var found = Assert.Single(channels, c => c is not null)!;
        Assert.All(found, v => Assert.Equal(expected, v, 3));
    }

    [Theory]
    [InlineData("Altitude (m)")]
    [InlineData("elevation")]
    [InlineData("ele")]
    [InlineData("Altitude (ft)")]
    public void An_altitude_column_makes_a_recording_though_no_figure_needs_it(string header)
    {
        var read = Reading.Of("ride.csv", $"timestamp,{header}\n" + string.Concat(Enumerable.Range(0, 60).Select(i => $"2026-05-05T18:00:{i:00}+01:00,500\n")));
        Assert.Equal(60, Assert.Single(read.Recordings).TimerSeconds);
        Assert.Empty(read.Notices);
    }

    [Theory]
    [InlineData("Power Left")]
    [InlineData("Power (w/kg)")]
    [InlineData("Speed (knots)")]
    [InlineData("Heart Rate Zone")]
    public void A_column_of_something_else_is_not_taken_for_it(string header)
    {
        var read = Reading.Of("ride.csv", $"timestamp,{header}\n2026-05-05T18:00:00Z,200\n");
        Assert.Empty(read.Recordings);
        Assert.Equal("no data column", Assert.Single(read.Notices).Problem);
        Assert.Contains(header, read.Notices[0].Sentence);
    }

    [Theory]
    [InlineData("seconds", 1)]
    [InlineData("Time (s)", 1)]
    [InlineData("secs", 1)]
    [InlineData("elapsed_time", 1)]
    [InlineData("time_ms", 1000)]
    public void Seconds_have_their_spellings_too(string header, int step)
    {
        var text = $"{header},power\n" + string.Concat(Enumerable.Range(0, 60).Select(i => $"{i * step},200\n"));
        Assert.Equal(60, Assert.Single(Reading.Of("2026-05-05-1800.csv", text).Recordings).TimerSeconds);
    }

    [Fact]
    public void The_rider_file_names_columns_that_are_not_understood()
    {
        var map = RiderFileReader.Read("time_zone = \"Europe/Lisbon\"\n[csv]\ntime = \"Zeit\"\npower = \"Leistung\"\nspeed = \"Tempo (km/h)\"\n", "rider.toml").Rider!;
        var text = "Zeit;Leistung;Tempo (km/h)\n" + string.Concat(Enumerable.Range(0, 60).Select(i => $"{i};200,5;36,0\n"));
        var grid = Assert.Single(Reading.Of("2026-05-05-1800.csv", text, map).Recordings).Grid;
        Assert.All(grid.PowerW!, p => Assert.Equal(200.5f, p));
        Assert.All(grid.SpeedMps!, v => Assert.Equal(10, v, 3));
    }

    [Fact]
    public void The_map_counts_before_a_spelling_that_is_understood()
    {
        var map = RiderFileReader.Read("time_zone = \"Europe/Lisbon\"\n[csv]\npower = \"Power 2\"\n", "rider.toml").Rider!;
        var text = "timestamp,power,Power 2\n2026-05-05T18:00:00Z,100,200\n2026-05-05T18:00:01Z,100,200\n";
        Assert.All(Assert.Single(Reading.Of("ride.csv", text, map).Recordings).Grid.PowerW!, p => Assert.Equal(200, p));
    }

    [Fact]
    public void Lines_about_the_file_before_the_header_are_passed_over()
    {
        var text = "exported by some device\nfirmware 7\n\ntimestamp,power\n2026-05-05T18:00:00Z,100\n2026-05-05T18:00:01Z,100\n";
        var read = Reading.Of("ride.csv", text);
        Assert.Equal(2, Assert.Single(read.Recordings).TimerSeconds);
        Assert.Empty(read.Notices);
    }

    [Fact]
    public void A_row_of_units_under_the_header_is_no_fault()
    {
        var read = Reading.Of("ride.csv", "timestamp,power,heart rate\ns,W,bpm\n2026-05-05T18:00:00Z,100,120\n2026-05-05T18:00:01Z,100,120\n");
        Assert.Equal(2, Assert.Single(read.Recordings).TimerSeconds);
        Assert.Empty(read.Notices);
    }

    [Fact]
    public void A_file_without_a_time_column_is_named_with_its_columns_and_what_to_do()
    {
        var notice = Assert.Single(Reading.Of("ride.csv", "lap,power\n1,200\n").Notices);
        Assert.Equal("no time column", notice.Problem);
        Assert.Contains("lap, power", notice.Sentence);
        Assert.Contains("[csv] in the rider file", notice.Sentence);
        Assert.Equal(["lap", "power"], notice.Headers.AsEnumerable());
    }
}
