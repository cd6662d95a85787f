using System.CommandLine;
using System.Globalization;

namespace RideAudit.Cli.Commands;

/// <summary>A shell that asks what may come next, by the library's suggest directive and the line typed so far.</summary>
internal static class Suggest
{
    private const string Opening = "[suggest";
    private const string Review = "review ";

    /// <summary>The line is a question of the shell.</summary>
    public static bool Asks(IReadOnlyList<string> args) => args[0].StartsWith(Opening, StringComparison.Ordinal);

    /// <summary>The same question, the command spelled out where a folder stands in its place.</summary>
    /// <param name="args">The directive and the line typed so far.</param>
    /// <param name="root">The commands.</param>
    public static IReadOnlyList<string> WithCommand(IReadOnlyList<string> args, RootCommand root)
    {
        if (args.Count != 2 || args[1].IndexOf(' ', StringComparison.Ordinal) is not (> 0 and var gap))
            return args;
        var rest = args[1][(gap + 1)..].TrimStart();
        var word = rest.Split(' ', 2)[0];
        var finished = word.Length < rest.Length;
        if (!finished || word.StartsWith('-') || root.Subcommands.Any(c => c.Name == word))
            return args;
        var position = int.TryParse(args[0].AsSpan(Opening.Length).Trim(":]"), CultureInfo.InvariantCulture, out var p) ? p : args[1].Length;
        return [$"{Opening}:{position + Review.Length}]", string.Concat(args[1].AsSpan(0, gap + 1), Review, args[1].AsSpan(gap + 1))];
    }
}
