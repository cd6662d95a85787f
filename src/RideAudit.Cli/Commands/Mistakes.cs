using System.CommandLine;
using System.CommandLine.Invocation;
using RideAudit.Cli.Terminal;

namespace RideAudit.Cli.Commands;

/// <summary>What was wrong with a command line, and what to do.</summary>
internal static class Mistakes
{
    // A word for every argument, so that what follows can only be an option.
    private const string StandIn = ".";

    /// <summary>Refuses a line that was not understood, and an option that a command does not know in the place of its folder.</summary>
    /// <param name="root">The whole command line.</param>
    /// <param name="parsed">The parsed line.</param>
    /// <param name="args">The line as typed.</param>
    /// <param name="shell">For relative paths.</param>
    /// <exception cref="UserError">There is something wrong.</exception>
    public static void Refuse(RootCommand root, ParseResult parsed, IReadOnlyList<string> args, Shell shell)
    {
        var command = parsed.CommandResult.Command;
        var lines = new List<string>();
        var unknown = parsed.UnmatchedTokens.Where(t => t.StartsWith('-')).ToList();
        if (parsed.Errors.Count > 0 && parsed.Action is ParseErrorAction or null)
            lines.AddRange(parsed.Errors.Select(e => e.Message).Distinct());
        if (parsed.Action is ParseErrorAction || parsed.Action == command.Action)
        {
            var folders = Folders(parsed, command);
            var taken = folders.Where(t => t.StartsWith('-') && !Path.Exists(shell.FullPath(t))).ToList();
            lines.AddRange(taken.Select(t => $"{t} is no option of {command.Name}{(folders.Count == taken.Count ? ", and the folder is missing" : "")}."));
            unknown.AddRange(taken);
        }
        if (lines.Count == 0)
            return;
        // An argument that takes all that is left would take the option as well.
        foreach (var argument in command.Arguments)
            argument.Arity = ArgumentArity.ExactlyOne;
        var nearest = unknown.Select(u => Nearest(root, [command.Name, .. command.Arguments.Select(_ => StandIn), u])).Where(n => n.Length > 0);
        throw new UserError(string.Join('\n', [.. lines, .. nearest, .. Help(command, args)]));
    }

    /// <summary>What the library thinks was meant by the words it does not know; empty when it knows them or none is near.</summary>
    /// <param name="root">The whole command line.</param>
    public static string Nearest(RootCommand root, IReadOnlyList<string> line)
    {
        var parsed = root.Parse(line);
        if (parsed.UnmatchedTokens.Count == 0)
            return "";
        using var said = new StringWriter { NewLine = "\n" };
        parsed.InvocationConfiguration.Output = said;
        parsed.InvocationConfiguration.Error = TextWriter.Null;
        new ParseErrorAction { ShowHelp = false }.Invoke(parsed);
        return said.ToString().Trim();
    }

    private static List<string> Folders(ParseResult parsed, Command command) => command.Arguments.FirstOrDefault(a => a.Name == "FOLDER") switch
    {
        Argument<string> one when parsed.GetResult(one) is { Tokens.Count: > 0 } => [.. parsed.GetResult(one)!.Tokens.Select(t => t.Value)],
        Argument<string[]> several when parsed.GetResult(several) is { Tokens.Count: > 0 } => [.. parsed.GetResult(several)!.Tokens.Select(t => t.Value)],
        _ => [],
    };

    private static IEnumerable<string> Help(Command command, IReadOnlyList<string> args)
    {
        if (Directory.Exists(args[0]) && args[0] == command.Name)
            yield return $"To review the folder named {args[0]}, write ./{args[0]}";
        yield return $"See '{(command is RootCommand ? "rideaudit --help" : $"rideaudit {command.Name} --help")}'.";
    }
}
