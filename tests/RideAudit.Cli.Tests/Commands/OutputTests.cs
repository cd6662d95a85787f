using System.Text.Json;
using RideAudit.Cli.Tests.Support;

namespace RideAudit.Cli.Tests.Commands;

/// <summary>What goes where, from the real program.</summary>
public class OutputTests
{
    private static readonly (string, string)[] Utf8 = [("LANG", "C.UTF-8")];

    [Fact]
    public void Json_on_standard_output_is_alone_there()
    {
        using var folder = new TempFolder();
        Demo.CopyTo(folder, from: "2026-06-20");
        folder.Write("rides/broken.fit", "not a ride");
        var ended = RealProgram.Run(folder.Path, "review", "rides", "--as-of", Demo.AsOf, "--json", "-", "--no-pdf");
        Assert.Equal(0, ended.Code);
        using var json = JsonDocument.Parse(ended.Out);
        Assert.Equal("rideaudit-review/1", json.RootElement.GetProperty("schema").GetString());
        Assert.Equal(["rides"], Directory.EnumerateFileSystemEntries(folder.Path).Select(Path.GetFileName));
    }

    [Fact]
    public void The_whole_power_curve_of_each_ride_goes_with_json_alone()
    {
        using var folder = new TempFolder();
        Demo.CopyTo(folder, from: "2026-06-20");
        var ended = RealProgram.Run(folder.Path, "rides", "rides", "--as-of", Demo.AsOf, "--format", "json", "--power-curve");
        using var json = JsonDocument.Parse(ended.Out);
        foreach (var ride in json.RootElement.GetProperty("rides").EnumerateArray())
            Assert.Equal(ride.GetProperty("duration_seconds").GetInt32(), ride.GetProperty("power_curve_w").GetArrayLength());
        Assert.Equal(2, RealProgram.Run(folder.Path, "rides", "rides", "--power-curve").Code);
    }

    [Fact]
    public void Every_file_asked_for_is_written_and_nothing_else()
    {
        using var folder = new TempFolder();
        Demo.CopyTo(folder, from: "2026-06-20");
        var ended = RealProgram.Run(
            folder.Path, "review", "rides", "--as-of", Demo.AsOf, "--pdf", "a.pdf", "--json", "a.json", "--png", "a.png", "--paper", "letter", "--room-for-notes", "--quiet");
        Assert.Equal((0, "", ""), (ended.Code, ended.Out, ended.Error));
        Assert.Equal(["a.json", "a.pdf", "a.png"], folder.Names().Where(n => n.StartsWith("a.", StringComparison.Ordinal)));
        Assert.Equal("%PDF"u8.ToArray(), File.ReadAllBytes(folder.At("a.pdf"))[..4]);
        Assert.Equal([0x89, .. "PNG"u8], File.ReadAllBytes(folder.At("a.png"))[..4]);
        Assert.Equal(4, Directory.EnumerateFileSystemEntries(folder.Path).Count());
    }

    [Fact]
    public void The_old_file_stays_whole_when_the_new_one_cannot_be_written()
    {
        if (OperatingSystem.IsWindows() || Environment.UserName == "root")
            return;
        using var folder = new TempFolder();
        Demo.CopyTo(folder, from: "2026-06-20");
        folder.Write("locked/old.pdf", "old");
        File.SetUnixFileMode(folder.At("locked"), UnixFileMode.UserRead | UnixFileMode.UserExecute);
        var ended = RealProgram.Run(folder.Path, "review", "rides", "--as-of", Demo.AsOf, "--pdf", "locked/old.pdf");
        File.SetUnixFileMode(folder.At("locked"), UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        Assert.Equal(2, ended.Code);
        Assert.Equal("old", File.ReadAllText(folder.At("locked/old.pdf")));
        Assert.Equal(["locked/old.pdf"], folder.Names().Where(n => n.StartsWith("locked/", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_full_device_is_an_error_that_says_so()
    {
        if (!File.Exists("/dev/full"))
            return;
        using var folder = new TempFolder();
        Demo.CopyTo(folder, from: "2026-06-20");
        var ended = RealProgram.Run(folder.Path, "review", "rides", "--as-of", Demo.AsOf, "--pdf", "/dev/full");
        Assert.Equal(2, ended.Code);
        Assert.Contains("/dev/full cannot be written", ended.Error, StringComparison.Ordinal);
        Assert.True(File.Exists("/dev/full"));
    }

    [Fact]
    public void In_a_pipe_there_are_no_colours_and_no_progress()
    {
        using var folder = new TempFolder();
        Demo.CopyTo(folder);
        var ended = RealProgram.Run(folder.Path, [.. Utf8, ("TERM", "xterm-256color")], "review", "rides", "--as-of", Demo.AsOf);
        Assert.DoesNotContain('\u001b', ended.Out + ended.Error);
        Assert.DoesNotContain('\r', ended.Out + ended.Error);
    }

    [Theory]
    [InlineData("LANG", "C")]
    [InlineData("LC_ALL", "POSIX")]
    [InlineData("TERM", "dumb")]
    public void Where_the_terminal_has_no_Unicode_the_summary_is_ASCII(string name, string value)
    {
        using var folder = new TempFolder();
        Demo.CopyTo(folder);
        var ended = RealProgram.Run(folder.Path, [.. Utf8.Where(e => e.Item1 != name), (name, value)], "review", "rides", "--as-of", Demo.AsOf);
        Assert.Equal(0, ended.Code);
        Assert.All(ended.Out, c => Assert.True(char.IsAscii(c), $"'{c}' in {ended.Out}"));
    }

    [Theory]
    [InlineData("80")]
    [InlineData("160")]
    public void Columns_sets_the_width_in_a_pipe(string columns)
    {
        using var folder = new TempFolder();
        Demo.CopyTo(folder);
        var ended = RealProgram.Run(folder.Path, [.. Utf8, ("COLUMNS", columns)], "weeks", "rides", "--as-of", Demo.AsOf);
        var widest = ended.Out.Split('\n').Max(l => l.Length);
        Assert.InRange(widest, columns == "80" ? 60 : 100, int.Parse(columns));
    }

    [Fact]
    public void A_reader_that_goes_away_is_no_error()
    {
        if (OperatingSystem.IsWindows())
            return;
        using var folder = new TempFolder();
        Demo.CopyTo(folder);
        var ended = Bash.Run(folder.Path, "rideaudit rides rides --as-of 2026-06-22 --format json | head -c 10; echo; echo ${PIPESTATUS[0]}");
        Assert.Equal("{\n  \"schem\n0\n", ended.Out);
        Assert.Equal("", ended.Error);
    }

    [Fact]
    public void On_a_terminal_there_is_colour_unless_NO_COLOR_is_set()
    {
        if (!File.Exists("/usr/bin/script"))
            return;
        using var folder = new TempFolder();
        Demo.CopyTo(folder);
        const string line = "script -qec 'rideaudit review rides --as-of 2026-06-22' /dev/null < /dev/null";
        Assert.Contains("\u001b[", Bash.Run(folder.Path, $"TERM=xterm-256color {line}").Out, StringComparison.Ordinal);
        Assert.DoesNotContain("\u001b[1", Bash.Run(folder.Path, $"NO_COLOR=1 TERM=xterm-256color {line}").Out, StringComparison.Ordinal);
    }
}
