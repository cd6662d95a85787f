using RideAudit.Cli.Tests.Support;

namespace RideAudit.Cli.Tests.Commands;

/// <summary>Shell completion, asked as the scripts ask.</summary>
public class CompletionTests
{
    [Theory]
    [InlineData("rideaudit re", "review")]
    [InlineData("rideaudit review rides --pa", "--paper")]
    [InlineData("rideaudit review rides --paper ", "letter")]
    [InlineData("rideaudit rides/ --pn", "--png")]
    [InlineData("rideaudit weeks rides --format ", "csv")]
    [InlineData("rideaudit completion ", "zsh")]
    public void What_may_come_next_is_suggested(string line, string expected)
    {
        using var shell = new TestShell();
        Assert.Equal(0, shell.Run($"[suggest:{line.Length}]", line));
        Assert.Contains(expected, shell.Out.Split('\n').Select(l => l.Trim()));
    }

    [Fact]
    public void Bash_completes_with_the_script_it_is_given()
    {
        if (OperatingSystem.IsWindows())
            return;
        using var folder = new TempFolder();
        var ended = Bash.Run(folder.Path, """
            source <(rideaudit completion bash)
            COMP_LINE='rideaudit weeks rides --form'; COMP_POINT=${#COMP_LINE}; COMP_WORDS=(rideaudit weeks rides --form); COMP_CWORD=3
            _rideaudit; echo "${COMPREPLY[@]}"
            """);
        Assert.Equal(("--format\n", ""), (ended.Out, ended.Error));
    }

    [Theory]
    [InlineData("zsh", "zsh -n")]
    [InlineData("fish", "fish --no-execute")]
    public void The_other_scripts_parse_where_their_shell_is_installed(string name, string check)
    {
        using var folder = new TempFolder();
        var ended = Bash.Run(folder.Path, $"rideaudit completion {name} > script; if command -v {name} > found; then {check} script; fi");
        Assert.Equal((0, "", ""), (ended.Code, ended.Out, ended.Error));
        Assert.Contains("[suggest:", File.ReadAllText(folder.At("script")), StringComparison.Ordinal);
    }
}
