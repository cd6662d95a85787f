using RideAudit.Cli.Tests.Support;

namespace RideAudit.Cli.Tests.Commands;

/// <summary>Each exit code of the contract, from the real program.</summary>
public class ExitCodeTests
{
    [Fact]
    public void Zero_when_done_whatever_the_verdicts()
    {
        using var folder = new TempFolder();
        Demo.CopyTo(folder);
        var ended = RealProgram.Run(folder.Path, "./rides", "--as-of", Demo.AsOf);
        Assert.Equal((0, ""), (ended.Code, ended.Error));
        Assert.Contains("broken", ended.Out, StringComparison.Ordinal);
        Assert.True(File.Exists(folder.At("review-2026-06-15.pdf")));
    }

    [Fact]
    public void A_folder_that_has_a_commands_name_is_reviewed_where_the_command_would_lack_its_folder()
    {
        using var folder = new TempFolder();
        Demo.CopyTo(folder, from: "2026-06-20");
        Assert.Equal(0, RealProgram.Run(folder.Path, "rides").Code);
        Assert.True(File.Exists(folder.At("review-2026-06-15.pdf")));
        var ended = RealProgram.Run(folder.Path, "rides", "--as-of", Demo.AsOf);
        Assert.Equal(2, ended.Code);
        Assert.Contains("write ./rides", ended.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void One_when_a_rule_is_broken_and_fail_on_broken_was_given()
    {
        using var folder = new TempFolder();
        Demo.CopyTo(folder);
        var ended = RealProgram.Run(folder.Path, "review", "rides", "--as-of", Demo.AsOf, "--fail-on", "broken");
        Assert.Equal(1, ended.Code);
        Assert.True(File.Exists(folder.At("review-2026-06-15.pdf")));
    }

    [Theory]
    [InlineData("--no-such-option")]
    [InlineData("review")]
    [InlineData("review rides --as-of tomorrow")]
    [InlineData("review rides --paper a5")]
    [InlineData("review rides --fail-on watch")]
    [InlineData("review no-such-folder")]
    [InlineData("review rides --rider no-such.toml")]
    [InlineData("review rides --pdf no-such-folder/x.pdf")]
    [InlineData("review rides --pdf rides")]
    [InlineData("review rides --text --json -")]
    [InlineData("rides rides --since 2026-06-02 --until 2026-06-01")]
    [InlineData("roster rides")]
    [InlineData("completion tcsh")]
    [InlineData("")]
    public void Two_for_wrong_use(string line)
    {
        using var folder = new TempFolder();
        Demo.CopyTo(folder, from: "2026-06-21");
        var ended = RealProgram.Run(folder.Path, line.Split(' ', StringSplitOptions.RemoveEmptyEntries));
        Assert.Equal(2, ended.Code);
        Assert.DoesNotContain("   at ", ended.Error, StringComparison.Ordinal);
        Assert.True(line.Length == 0 || ended.Error.StartsWith("rideaudit: ", StringComparison.Ordinal), ended.Error);
        Assert.DoesNotContain(folder.Names(), n => n.EndsWith(".pdf", StringComparison.Ordinal));
    }

    [Fact]
    public void Two_for_a_broken_rider_file_with_every_mistake_at_its_place()
    {
        using var folder = new TempFolder();
        Demo.CopyTo(folder, from: "2026-06-21", riderFile: false);
        folder.Write("rides/rider.toml", "label = \"A\"\nexperiense = \"regular\"\n\n[plan]\nweekly_hours = \"six\"\n");
        var ended = RealProgram.Run(folder.Path, "./rides", "--as-of", Demo.AsOf);
        Assert.Equal(2, ended.Code);
        Assert.Contains("rider.toml:2:1:", ended.Error, StringComparison.Ordinal);
        Assert.Contains("Did you mean 'experience'?", ended.Error, StringComparison.Ordinal);
        Assert.Contains("rider.toml:5:", ended.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Three_when_no_ride_can_be_used_and_every_file_is_named()
    {
        using var folder = new TempFolder();
        folder.Write("rides/one.fit", "not a ride");
        folder.Write("rides/deep/two.csv", "\0\0\0");
        var ended = RealProgram.Run(folder.Path, "./rides");
        Assert.Equal((3, ""), (ended.Code, ended.Out));
        Assert.Contains("one.fit: ", ended.Error, StringComparison.Ordinal);
        Assert.Contains("deep/two.csv: ", ended.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("review rides --as-of 2026-06-22 --strict", 4)]
    [InlineData("review rides --as-of 2026-06-22", 0)]
    [InlineData("rides rides --as-of 2026-06-22 --strict", 4)]
    [InlineData("weeks rides --as-of 2026-06-22 --strict", 4)]
    public void Four_when_a_file_cannot_be_used_and_strict_was_given(string line, int code)
    {
        using var folder = new TempFolder();
        Demo.CopyTo(folder, from: "2026-06-20");
        folder.Write("rides/broken.fit", "not a ride");
        var ended = RealProgram.Run(folder.Path, line.Split(' '));
        Assert.Equal(code, ended.Code);
        Assert.Contains("broken.fit", ended.Out + ended.Error, StringComparison.Ordinal);
    }
}
