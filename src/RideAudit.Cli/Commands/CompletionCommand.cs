using System.CommandLine;
using System.CommandLine.Parsing;
using RideAudit.Cli.Terminal;

namespace RideAudit.Cli.Commands;

/// <summary>Prints what a shell needs to complete command lines.</summary>
internal static class CompletionCommand
{
    /// <summary>The command, ready to be parsed and run.</summary>
    public static ProgramCommand Create(Shell shell)
    {
        var command = new ProgramCommand(
            "completion",
            "Print a script that lets your shell complete rideaudit's commands and options.",
            ("source <(rideaudit completion bash)", "in ~/.bashrc"),
            ("source <(rideaudit completion zsh)", "in ~/.zshrc, after compinit"),
            ("rideaudit completion fish > ~/.config/fish/completions/rideaudit.fish", "once"),
            ("rideaudit completion pwsh | Out-String | Invoke-Expression", "in $PROFILE"));
        var name = command.Takes(new Argument<string>("SHELL") { Description = "bash, zsh, fish or pwsh.", CustomParser = Known });
        name.CompletionSources.Add([.. CompletionScripts.Shells]);
        command.Does(asked =>
        {
            shell.Out.Write(CompletionScripts.For(asked.GetRequiredValue(name)));
            return ExitCode.Done;
        });
        return command;
    }

    private static string? Known(ArgumentResult result)
    {
        var word = result.Tokens[^1].Value;
        if (!CompletionScripts.Shells.Contains(word))
            result.AddError($"There is no completion for '{word}': bash, zsh, fish or pwsh.");
        return word;
    }
}
