using System.CommandLine;
using RideAudit.Cli.Terminal;
using RideAudit.Cli.Work;

namespace RideAudit.Cli.Commands;

/// <summary>What was wrong with a command line, and what to do.</summary>
internal static class ParseErrors
{
    /// <summary>Every error, one a line, and where the help is.</summary>
    /// <param name="parsed">The parsed line.</param>
    /// <param name="args">The line as typed.</param>
    public static string Describe(ParseResult parsed, IReadOnlyList<string> args)
    {
        var command = parsed.CommandResult.Command;
        var lines = parsed.Errors.Select(e => e.Message).Distinct().ToList();
        foreach (var token in parsed.UnmatchedTokens.Where(t => t.StartsWith('-')))
            if (Nearest.Of(token, command.Options.Select(o => o.Name)) is { } near)
                lines.Add($"Did you mean {near}?");
        return WithHelp(lines, command, args);
    }

    /// <summary>An option that a command does not know is not the name of its folder.</summary>
    /// <exception cref="UserError">Such an option stands where the folder should.</exception>
    public static void RefuseOptionAsFolder(ParseResult parsed, IReadOnlyList<string> args, Shell shell)
    {
        var command = parsed.CommandResult.Command;
        var folder = parsed.Action != command.Action ? null : command.Arguments.OfType<Argument<string>>().FirstOrDefault(a => a.Name == "FOLDER");
        if (folder is null || parsed.GetValue(folder) is not { } typed || !typed.StartsWith('-') || Path.Exists(shell.FullPath(typed)))
            return;
        var lines = new List<string> { $"{typed} is no option of {command.Name}, and the folder is missing." };
        if (Nearest.Of(typed, command.Options.Select(o => o.Name)) is { } near)
            lines.Add($"Did you mean {near}?");
        throw new UserError(WithHelp(lines, command, args));
    }

    private static string WithHelp(List<string> lines, Command command, IReadOnlyList<string> args)
    {
        if (Directory.Exists(args[0]) && args[0] == command.Name)
            lines.Add($"To review the folder named {args[0]}, write ./{args[0]}");
        var help = command is RootCommand ? "rideaudit --help" : $"rideaudit {command.Name} --help";
        lines.Add($"See '{help}'.");
        return string.Join('\n', lines);
    }
}
