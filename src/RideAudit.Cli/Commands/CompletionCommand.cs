using System.CommandLine;
using System.CommandLine.Parsing;
using RideAudit.Cli.Output;
using RideAudit.Cli.Terminal;

namespace RideAudit.Cli.Commands;

/// <summary>Prints what a shell needs to complete command lines.</summary>
internal sealed class CompletionCommand : ICommandSource
{
    /// <inheritdoc/>
    public IReadOnlyList<Example> Examples { get; } =
    [
        new("source <(rideaudit completion bash)", "in ~/.bashrc"),
        new("source <(rideaudit completion zsh)", "in ~/.zshrc, after compinit"),
        new("rideaudit completion fish > ~/.config/fish/completions/rideaudit.fish", "once"),
        new("rideaudit completion pwsh | Out-String | Invoke-Expression", "in $PROFILE"),
    ];

    /// <inheritdoc/>
    public Command Create(Shell shell)
    {
        var name = new Argument<string>("SHELL") { Description = "bash, zsh, fish or pwsh.", CustomParser = Known };
        name.CompletionSources.Add([.. CompletionScripts.Shells]);
        var command = new Command("completion", "Print a script that lets your shell complete rideaudit's commands and options.");
        command.Arguments.Add(name);
        command.SetAction(parsed =>
        {
            shell.Out.Write(CompletionScripts.For(parsed.GetRequiredValue(name)));
            return (int)ExitCode.Done;
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
