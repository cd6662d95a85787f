using System.Text;

namespace RideAudit.Tests.Ingest;

public sealed class CsvFormatTests
{
    private const string Rows = "timestamp,power,note\r\n2026-05-05T17:00:00Z,200,a\r\n2026-05-05T17:00:01Z,0,b\r\n";

    [Fact]
    public void A_missing_power_is_missing_and_a_nought_is_nought()
    {
        var grid = Assert.Single(Reading.Of("2026-05-05.csv", "seconds,power,hr\n0,0,120\n1,,121\n2,NaN,122\n3,-,123\n4,,124\n5,200,125\n").Recordings).Grid;
        Assert.Equal([0, float.NaN, float.NaN, float.NaN, float.NaN, 200], grid.PowerW!);
    }

    public static TheoryData<string> Encodings => ["utf-8", "utf-8 with mark", "utf-16 little with mark", "utf-16 big with mark", "utf-16 little", "utf-16 big", "utf-32"];

    [Theory]
    [MemberData(nameof(Encodings))]
    public void Text_is_read_in_every_Unicode_encoding(string encoding)
    {
        var bytes = encoding switch
        {
            "utf-8" => Encoding.UTF8.GetBytes(Rows),
            "utf-8 with mark" => [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(Rows)],
            "utf-16 little with mark" => [0xFF, 0xFE, .. Encoding.Unicode.GetBytes(Rows)],
            "utf-16 big with mark" => [0xFE, 0xFF, .. Encoding.BigEndianUnicode.GetBytes(Rows)],
            "utf-16 little" => Encoding.Unicode.GetBytes(Rows),
            "utf-16 big" => Encoding.BigEndianUnicode.GetBytes(Rows),
            _ => [0xFF, 0xFE, 0, 0, .. Encoding.UTF32.GetBytes(Rows)],
        };
        var read = Reading.Of("ride.csv", bytes);
        Assert.Equal([200f, 0f], Assert.Single(read.Recordings).Grid.PowerW!);
        Assert.Empty(read.Notices);
    }

    [Fact]
    public void Text_that_is_no_Unicode_is_read_as_Latin_1()
    {
        var rider = Reading.Rider with { CsvColumns = Reading.Rider.CsvColumns.Add("heart_rate", "Herzschläge") };
        var read = Reading.Of("ride.csv", Encoding.Latin1.GetBytes("timestamp,Herzschläge\n2026-05-05T17:00:00Z,150\n2026-05-05T17:00:01Z,150\n"), rider);
        Assert.Equal([150f, 150f], Assert.Single(read.Recordings).Grid.HeartRateBpm!);
    }

    [Theory]
    [InlineData(';', "200,5", 200.5)]
    [InlineData('\t', "200,5", 200.5)]
    [InlineData(';', "200.5", 200.5)]
    [InlineData(',', "200.5", 200.5)]
    public void A_comma_is_a_decimal_point_where_it_is_no_separator(char separator, string cell, float expected)
    {
        var text = $"timestamp{separator}power\n" + string.Concat(Enumerable.Range(0, 5).Select(i => $"2026-05-05T17:00:0{i}Z{separator}{cell}\n"));
        Assert.All(Assert.Single(Reading.Of("ride.csv", text).Recordings).Grid.PowerW!, p => Assert.Equal(expected, p));
    }

    // RFC 4180 (Shafranovich 2005), section 2: rule 5 (quoted fields), rule 6 (line breaks and commas in quotes) and rule 7 (doubled quotes); read in full.
    [Theory]
    [InlineData("\"timestamp\",\"b\"\"bb\",\"ccc\"", "b\"bb")]
    [InlineData("\"timestamp\",\"b\r\nbb\",\"ccc\"", "b\r\nbb")]
    [InlineData("\"timestamp\",\"b,bb\",\"ccc\"", "b,bb")]
    public void Quoted_fields_follow_RFC_4180(string header, string mapped)
    {
        var rider = Reading.Rider with { CsvColumns = Reading.Rider.CsvColumns.Add("power", mapped) };
        var text = header + "\r\n2026-05-05T17:00:00Z,\"200\",x\r\n2026-05-05T17:00:01Z,200,\"y,\r\nz\"";
        var recording = Assert.Single(Reading.Of("ride.csv", text, rider).Recordings);
        Assert.Equal([200f, 200f], recording.Grid.PowerW!);
    }

    [Fact]
    public void The_last_line_needs_no_line_end_and_short_rows_are_missing_cells()
    {
        var grid = Assert.Single(Reading.Of("ride.csv", "timestamp,power,hr\n2026-05-05T17:00:00Z,200,120\n2026-05-05T17:00:01Z,200").Recordings).Grid;
        Assert.Equal([200f, 200f], grid.PowerW!);
    }

    [Fact]
    public void A_quote_that_is_never_closed_does_not_take_the_folder_with_it()
    {
        var read = Reading.Of("ride.csv", "timestamp,power\n2026-05-05T17:00:00Z,200\n\"2026-05-05T17:00:01Z,200\n" + new string('x', 3_000_000));
        Assert.NotEmpty(read.Notices);
    }

    [Fact]
    public void A_header_without_rows_is_named() =>
        Assert.Equal("no rows", Assert.Single(Reading.Of("ride.csv", "timestamp,power\n").Notices).Problem);

    [Theory]
    [InlineData("ride.txt")]
    [InlineData("ride")]
    [InlineData("ride.fit")]
    public void Rows_are_read_whatever_the_ending(string name) =>
        Assert.Equal(2, Assert.Single(Reading.Of(name, Rows).Recordings).TimerSeconds);

    [Theory]
    [InlineData("notes.txt")]
    [InlineData("README.md")]
    [InlineData("rider.toml")]
    public void Text_that_never_promised_a_ride_is_passed_over(string name)
    {
        var read = Reading.Of(name, "Some words, and some more.\nAnother line.\n");
        Assert.Empty(read.Recordings);
        Assert.Empty(read.Notices);
    }
}
