using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using RideAudit.Cli.Terminal;

namespace RideAudit.Cli.Commands;

/// <summary>The library's help with examples and exit codes beneath.</summary>
internal sealed class ExamplesHelp(HelpAction help, Shell shell) : SynchronousCommandLineAction
{
    private const int Widest = 100;

    private static readonly IReadOnlyList<(string Line, string Meaning)> OfProgram =
    [
        ("rideaudit my-rides/", "review the last finished week of the rides in my-rides/"),
        ("rideaudit new-rider my-rides/rider.toml", "write a rider file: threshold power, hours, days"),
        ("rideaudit ./rides", "a folder that has a command's name: with ./ it is a folder"),
    ];

    /// <inheritdoc/>
    public override bool ClearsParseErrors => true;

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        help.MaxWidth = Math.Min(shell.Width, Widest);
        var code = InvokeTidied(parseResult);
        var command = parseResult.CommandResult.Command;
        Print((command as ProgramCommand)?.Examples ?? OfProgram);
        if (command is RootCommand)
            PrintCodes();
        return code;
    }

    // The library leaves spaces at the ends of wrapped lines.
    private int InvokeTidied(ParseResult parseResult)
    {
        using var text = new StringWriter { NewLine = "\n" };
        parseResult.InvocationConfiguration.Output = text;
        var code = help.Invoke(parseResult);
        var lines = text.ToString().ReplaceLineEndings("\n").Split('\n').Select(l => l.TrimEnd());
        shell.Out.Write(string.Join('\n', lines).TrimEnd('\n') + "\n\n");
        return code;
    }

    private void PrintCodes()
    {
        var page = new Page(shell, Widest);
        page.Text("Exit codes:");
        page.Text("0 done, 1 a rule broken (--fail-on), 2 wrong use, 3 no usable ride,", indent: 2);
        page.Text("4 files not used (--strict), 130 interrupted", indent: 2);
        page.Blank();
    }

    private void Print(IReadOnlyList<(string Line, string Meaning)> examples)
    {
        var page = new Page(shell, Widest);
        page.Text("Examples:");
        foreach (var (line, meaning) in examples)
        {
            page.Text(line, indent: 2);
            page.Text(meaning, indent: 6);
        }
        page.Blank();
    }
}
