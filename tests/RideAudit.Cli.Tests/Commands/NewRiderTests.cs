using NodaTime;
using RideAudit.Cli.Tests.Support;
using RideAudit.Plan;

namespace RideAudit.Cli.Tests.Commands;

public class NewRiderTests
{
    [Fact]
    public void Five_answers_make_a_file_that_reads_back_as_answered()
    {
        using var folder = new TempFolder();
        using var shell = new TestShell(answers: "Rider \"B\"\n265\n7,5\nracing\nsun, tuesday thu\n", folder: folder.Path);
        Assert.Equal(0, shell.Run("new-rider", "rider.toml"));
        Assert.All(new[] { "1. ", "2. ", "3. ", "4. ", "5. " }, q => Assert.Contains(q, shell.Error, StringComparison.Ordinal));
        Assert.DoesNotContain("6. ", shell.Error, StringComparison.Ordinal);
        var rider = Read(folder);
        Assert.Equal("Rider \"B\"", rider.Label);
        Assert.Equal(265, rider.Thresholds.Single().Power!.Value.Value);
        Assert.Equal(new LocalDate(2026, 1, 1), rider.Thresholds.Single().From);
        Assert.Equal(7.5, rider.Plan.WeeklyHours);
        Assert.Equal(Experience.Racing, rider.Experience);
        Assert.Equal([IsoDayOfWeek.Tuesday, IsoDayOfWeek.Thursday, IsoDayOfWeek.Sunday], rider.Plan.Days.ToArray());
        Assert.Equal("Europe/Lisbon", rider.TimeZone!.Id);
    }

    [Fact]
    public void An_answer_that_cannot_be_used_is_asked_again_with_the_reason()
    {
        using var folder = new TempFolder();
        using var shell = new TestShell(answers: "A\ntwo hundred\n9000\n250 W\n6\nold\nnew\nmonday,someday\nmonday\n", folder: folder.Path);
        Assert.Equal(0, shell.Run("new-rider", "rider.toml"));
        Assert.Contains("'two hundred' is not a number.", shell.Error, StringComparison.Ordinal);
        Assert.Contains("9000 W is outside 30 to 700 W.", shell.Error, StringComparison.Ordinal);
        Assert.Contains("'old' is none of new, regular, racing.", shell.Error, StringComparison.Ordinal);
        Assert.Contains("'someday' is no day of the week.", shell.Error, StringComparison.Ordinal);
        Assert.Equal(250, Read(folder).Thresholds.Single().Power!.Value.Value);
    }

    [Fact]
    public void On_a_real_terminal_the_questions_are_asked_and_answered()
    {
        if (!File.Exists("/usr/bin/script"))
            return;
        using var folder = new TempFolder();
        var ended = Bash.Run(folder.Path, "printf 'D\\n270\\n9\\nracing\\nmon wed sat\\n' | script -qec 'rideaudit new-rider rider.toml' /dev/null");
        Assert.Contains("5. Days you can ride", ended.Out, StringComparison.Ordinal);
        Assert.Equal(("D", 270.0), (Read(folder).Label, Read(folder).Thresholds.Single().Power!.Value.Value));
    }

    [Fact]
    public void Empty_answers_leave_a_file_that_works()
    {
        using var folder = new TempFolder();
        using var shell = new TestShell(answers: "\n\n\n\n\n", folder: folder.Path);
        Assert.Equal(0, shell.Run("new-rider", "rider.toml"));
        var rider = Read(folder);
        Assert.Null(rider.Plan.WeeklyHours);
        Assert.Empty(rider.Thresholds);
    }

    [Fact]
    public void Without_a_terminal_nothing_is_asked_and_options_are_taken()
    {
        using var folder = new TempFolder();
        var ended = RealProgram.Run(folder.Path, "new-rider", "rider.toml", "--label", "C", "--threshold-power", "280", "--weekly-hours", "10",
            "--days", "tuesday,saturday", "--experience", "regular", "--time-zone", "America/New_York", "--threshold-heart-rate", "170");
        Assert.Equal((0, ""), (ended.Code, ended.Error));
        var rider = Read(folder);
        Assert.Equal(("C", 280.0, 170.0), (rider.Label, rider.Thresholds.Single().Power!.Value.Value, rider.Thresholds.Single().HeartRateBpm));
        Assert.Equal(("America/New_York", 10.0), (rider.TimeZone!.Id, rider.Plan.WeeklyHours));
    }

    [Fact]
    public void The_threshold_holds_from_the_date_given_and_the_file_says_to_edit_it()
    {
        using var folder = new TempFolder();
        using var shell = new TestShell(folder: folder.Path);
        Assert.Equal(0, shell.Run("new-rider", "rider.toml", "--threshold-power", "250", "--threshold-from", "2025-11-03"));
        Assert.Equal(new LocalDate(2025, 11, 3), Read(folder).Thresholds.Single().From);
        Assert.Matches("(?m)^from = 2025-11-03 +# edit: ", File.ReadAllText(folder.At("rider.toml")));
    }

    [Fact]
    public void A_machine_in_UTC_writes_no_time_zone_unasked()
    {
        using var folder = new TempFolder();
        var ended = RealProgram.Run(folder.Path, [("TZ", "Etc/UTC")], "new-rider", "rider.toml");
        Assert.Equal(0, ended.Code);
        Assert.Null(Read(folder).TimeZone);
        Assert.Contains("# time_zone = ", File.ReadAllText(folder.At("rider.toml")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--threshold-power", "power_w", "30", "700", "29", "701")]
    [InlineData("--threshold-heart-rate", "heart_rate_bpm", "60", "230", "59", "231")]
    public void What_new_rider_takes_the_rider_file_takes(string option, string key, string least, string most, string below, string above)
    {
        foreach (var (value, allowed) in new[] { (least, true), (most, true), (below, false), (above, false) })
        {
            using var folder = new TempFolder();
            using var shell = new TestShell(folder: folder.Path);
            Assert.Equal(allowed ? 0 : 2, shell.Run("new-rider", "rider.toml", option, value));
            Assert.Equal(allowed, RiderFileReader.Read($"[[threshold]]\nfrom = 2026-01-01\n{key} = {value}\n", "rider.toml").Mistakes.IsEmpty);
        }
    }

    [Theory]
    [InlineData("--threshold-power", "much")]
    [InlineData("--weekly-hours", "200")]
    [InlineData("--days", "payday")]
    [InlineData("--time-zone", "Lisbon")]
    [InlineData("--time-zone", "UTC+01")]
    [InlineData("--experience", "old")]
    public void An_option_that_cannot_be_used_is_refused(string option, string value)
    {
        using var folder = new TempFolder();
        using var shell = new TestShell(folder: folder.Path);
        Assert.Equal(2, shell.Run("new-rider", "rider.toml", option, value));
        Assert.Contains(value, shell.Error, StringComparison.Ordinal);
        Assert.Empty(folder.Names());
    }

    [Fact]
    public void A_file_that_is_there_is_never_overwritten_unless_told_to()
    {
        using var folder = new TempFolder();
        folder.Write("rider.toml", "label = \"mine\"\n");
        using var shell = new TestShell(folder: folder.Path);
        Assert.Equal(2, shell.Run("new-rider", "rider.toml"));
        Assert.Contains("left as it is", shell.Error, StringComparison.Ordinal);
        Assert.Equal("mine", Read(folder).Label);
        Assert.Equal(0, shell.Run("new-rider", "rider.toml", "--overwrite", "--label", "new"));
        Assert.Equal("new", Read(folder).Label);
    }

    private static Rider Read(TempFolder folder)
    {
        var result = RiderFileReader.Read(File.ReadAllText(folder.At("rider.toml")), "rider.toml");
        Assert.Empty(result.Mistakes);
        return result.Rider!;
    }
}
