using RideAudit.Cli.Commands;
using RideAudit.Cli.Tests.Support;

namespace RideAudit.Cli.Tests.Commands;

public class HelpTests
{
    public static TheoryData<string> Names => [.. CommandNames()];

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_command_has_help_with_examples(string name)
    {
        using var shell = new TestShell();
        Assert.Equal(0, shell.Run(name, "--help"));
        Assert.Contains("Examples:\n  ", shell.Out, StringComparison.Ordinal);
        Assert.Contains(name is "review" ? "rideaudit review" : $"rideaudit {name}", shell.Out, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_example_is_a_line_the_program_understands(string name)
    {
        using var shell = new TestShell();
        var root = Application.CreateRoot(shell.Shell);
        foreach (var (example, _) in root.Subcommands.OfType<ProgramCommand>().Single(c => c.Name == name).Examples)
        {
            var line = example[example.IndexOf("rideaudit ", StringComparison.Ordinal)..].Split([" > ", " | ", ")"], StringSplitOptions.None)[0];
            var args = System.CommandLine.Parsing.CommandLineParser.SplitCommandLine(line).Skip(1).ToList();
            if (root.Subcommands.All(c => c.Name != args[0]))
                args.Insert(0, "review");
            Assert.Empty(root.Parse(args).Errors);
        }
    }

    [Fact]
    public void Help_of_the_program_lists_every_command_and_exit_code()
    {
        using var shell = new TestShell();
        Assert.Equal(0, shell.Run("--help"));
        Assert.All(CommandNames(), n => Assert.Contains($"\n  {n}", shell.Out, StringComparison.Ordinal));
        Assert.All(new[] { "0 done", "1 a rule broken", "2 wrong use", "3 no usable ride", "4 files not used", "130 interrupted" },
            c => Assert.Contains(c, shell.Out, StringComparison.Ordinal));
    }

    [Fact]
    public void The_version_is_a_number()
    {
        using var folder = new TempFolder();
        var ended = RealProgram.Run(folder.Path, "--version");
        Assert.Equal(0, ended.Code);
        Assert.Matches(@"^\d+\.\d+\.\d+\s*$", ended.Out);
    }

    [Fact]
    public void A_mistyped_option_gets_the_nearest_one()
    {
        using var shell = new TestShell();
        Assert.Equal(2, shell.Run("review", "x", "--rider-file", "y", "--pfd", "z"));
        Assert.Contains("'--pfd' was not matched. Did you mean one of the following?\n--pdf\n", shell.Error, StringComparison.Ordinal);
    }

    private static IEnumerable<string> CommandNames()
    {
        using var shell = new TestShell();
        return [.. Application.CreateRoot(shell.Shell).Subcommands.Select(c => c.Name)];
    }
}
