using System.CommandLine;
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
        if (Directory.Exists(args[0]) && args[0] == command.Name)
            lines.Add($"To review the folder named {args[0]}, write ./{args[0]}");
        var help = command is RootCommand ? "rideaudit --help" : $"rideaudit {command.Name} --help";
        lines.Add($"See '{help}'.");
        return string.Join('\n', lines);
    }
}
