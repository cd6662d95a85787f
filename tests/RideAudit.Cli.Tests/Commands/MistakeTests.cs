using System.Text;
using RideAudit.Cli.Tests.Support;

namespace RideAudit.Cli.Tests.Commands;

/// <summary>What a new user gets wrong, and what they are told.</summary>
public class MistakeTests
{
    [Theory]
    [InlineData("review")]
    [InlineData("next")]
    public void A_week_that_has_not_begun_is_refused(string command)
    {
        using var folder = new TempFolder();
        Demo.CopyTo(folder, from: "2026-06-20");
        using var shell = new TestShell(folder: folder.Path);
        Assert.Equal(2, shell.Run(command, "rides", "--as-of", Demo.AsOf, "--week", "2026-07-01"));
        Assert.Contains("begins on 29 June 2026 and has not begun as of 22 June 2026", shell.Error, StringComparison.Ordinal);
        Assert.Equal(0, shell.Run(command, "rides", "--as-of", "2026-06-21", "--week", "2026-06-21"));
    }

    [Fact]
    public void Weeks_of_an_old_folder_end_with_the_last_one_ridden()
    {
        using var folder = new TempFolder();
        var rides = Demo.CopyTo(folder, from: "2026-06-20");
        foreach (var file in Directory.EnumerateFiles(rides).Where(f => !f.EndsWith(".toml", StringComparison.Ordinal)))
            File.Delete(file);
        folder.Write("rides/log.csv", "date,start,minutes,rating\n2025-11-04,18:00,60,4\n2025-11-12,18:00,60,4\n");
        using var shell = new TestShell(folder: folder.Path);
        Assert.Equal(0, shell.Run("weeks", "rides", "--format", "csv"));
        Assert.Equal(["2025-11-03", "2025-11-10"], shell.Out.Split("\r\n", StringSplitOptions.RemoveEmptyEntries).Skip(1).Select(l => l[..10]));
        Assert.Contains("the weeks end with the last one ridden, as of 2025-11-17", shell.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("missing.md", false)]
    [InlineData("notes.TXT", false)]
    [InlineData("notes/monday", false)]
    [InlineData("Easy week next.", true)]
    [InlineData("2 h easy w/ friends", true)]
    public void A_note_that_is_named_as_a_file_and_is_not_there_is_an_error(string note, bool isText)
    {
        using var folder = new TempFolder();
        Demo.CopyTo(folder, from: "2026-06-20");
        using var shell = new TestShell(folder: folder.Path);
        Assert.Equal(isText ? 0 : 2, shell.Run("review", "rides", "--as-of", Demo.AsOf, "--no-pdf", "--note", note));
        Assert.Contains(isText ? note : $"There is no note {note}.", shell.Out + shell.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rider_file_in_Latin_1_is_said_not_to_be_UTF_8()
    {
        using var folder = new TempFolder();
        File.WriteAllBytes(folder.At("rider.toml"), Encoding.Latin1.GetBytes("label = \"Equipe é\"\n"));
        using var shell = new TestShell(folder: folder.Path);
        Assert.Equal(2, shell.Run("rules", "--rider", "rider.toml"));
        Assert.Contains("rider.toml is not UTF-8", shell.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Rules_take_a_folder_for_the_rider_file_in_it_and_say_what_they_assume_without_one()
    {
        using var folder = new TempFolder();
        folder.Write("mine/rider.toml", "label = \"Rider C\"\nexperience = \"racing\"\n[plan]\nweekly_hours = 12\n");
        using var shell = new TestShell(folder: folder.Path);
        Assert.Equal(0, shell.Run("rules", "--rider", "mine"));
        Assert.StartsWith("Rider C: limits of high volume, and racing experience.", shell.Out, StringComparison.Ordinal);
        using var without = new TestShell(folder: folder.Path);
        Assert.Equal(0, without.Run("rules"));
        Assert.StartsWith("No rider file: the limits assume middle volume, as no hours are planned, and", without.Out, StringComparison.Ordinal);
        Assert.Contains("regular experience", without.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void A_mistyped_command_gets_the_nearest_one()
    {
        using var folder = new TempFolder();
        using var shell = new TestShell(folder: folder.Path);
        Assert.Equal(2, shell.Run("reviw", "M"));
        Assert.Contains("There is no command and no folder reviw.\n'reviw' was not matched. Did you mean one of the following?\nreview", shell.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void An_option_that_a_command_does_not_know_is_not_taken_for_its_folder()
    {
        using var folder = new TempFolder();
        using var shell = new TestShell(folder: folder.Path);
        Assert.Equal(2, shell.Run("rides", "--no-pdf"));
        Assert.Contains("--no-pdf is no option of rides, and the folder is missing.", shell.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("There is no folder", shell.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_shell_without_completion_is_told_which_have_one()
    {
        using var shell = new TestShell();
        Assert.Equal(2, shell.Run("completion", "tcsh"));
        Assert.Contains("There is no completion for 'tcsh': bash, zsh, fish or pwsh.", shell.Error, StringComparison.Ordinal);
        Assert.DoesNotContain('?', shell.Error);
    }

    [Theory]
    [InlineData("review", "rides", "--no-pdf")]
    [InlineData("roster", ".", "--out=out")]
    public void A_quiet_strict_run_that_ends_with_four_says_why(string command, string target, string option)
    {
        using var folder = new TempFolder();
        Demo.CopyTo(folder, from: "2026-06-20");
        folder.Write("rides/broken.fit", "not a ride");
        using var shell = new TestShell(folder: folder.Path);
        Assert.Equal(4, shell.Run(command, target, "--as-of", Demo.AsOf, "--strict", "--quiet", option));
        Assert.Equal("", shell.Out);
        Assert.Contains(command == "review" ? "broken.fit: " : "rides: 1 file could not be used.", shell.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Rides_since_a_day_after_the_last_ride_say_that_there_is_none()
    {
        using var folder = new TempFolder();
        Demo.CopyTo(folder, from: "2026-06-20");
        using var shell = new TestShell(folder: folder.Path);
        Assert.Equal(0, shell.Run("rides", "rides", "--as-of", Demo.AsOf, "--since", "2026-06-22"));
        Assert.Equal("", shell.Out);
        Assert.Contains("No ride from 22 June 2026 on: the last is of 21 June 2026.", shell.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_cut_short_is_marked_at_its_ride_and_explained_below()
    {
        using var folder = new TempFolder();
        var rides = Demo.CopyTo(folder, from: "2026-06-20");
        var fit = Directory.EnumerateFiles(rides, "*.fit").Order(StringComparer.Ordinal).First();
        var bytes = File.ReadAllBytes(fit);
        File.WriteAllBytes(fit, bytes[..(bytes.Length * 2 / 3)]);
        using var shell = new TestShell(folder: folder.Path, width: 170);
        Assert.Equal(0, shell.Run("rides", "rides", "--as-of", Demo.AsOf));
        var lines = shell.Out.Split('\n');
        Assert.Single(lines, l => l.StartsWith("*  ", StringComparison.Ordinal) && l.Contains(Path.GetFileName(fit), StringComparison.Ordinal));
        Assert.Contains(lines, l => l.StartsWith($"* {Path.GetFileName(fit)}: ", StringComparison.Ordinal));
    }

    [Fact]
    public void A_folder_that_may_not_be_written_to_is_said_so_without_a_name_of_the_programs_own()
    {
        if (OperatingSystem.IsWindows() || Environment.UserName == "root")
            return;
        using var folder = new TempFolder();
        folder.Write("locked/keep", "");
        File.SetUnixFileMode(folder.At("locked"), UnixFileMode.UserRead | UnixFileMode.UserExecute);
        using var shell = new TestShell(folder: folder.Path);
        var code = shell.Run("new-rider", "locked/rider.toml");
        File.SetUnixFileMode(folder.At("locked"), UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        Assert.Equal((2, "rideaudit: locked/rider.toml cannot be written: you may not write there. Choose another place.\n"), (code, shell.Error));
    }
}
