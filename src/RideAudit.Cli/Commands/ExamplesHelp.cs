using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using RideAudit.Cli.Terminal;

namespace RideAudit.Cli.Commands;

/// <summary>The library's help with examples and exit codes beneath.</summary>
internal sealed class ExamplesHelp(HelpAction help, Shell shell, IReadOnlyDictionary<string, IReadOnlyList<Example>> examples) : SynchronousCommandLineAction
{
    /// <inheritdoc/>
    public override bool ClearsParseErrors => true;

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        help.MaxWidth = Math.Min(shell.Width, 100);
        var code = InvokeTidied(parseResult);
        if (examples.TryGetValue(parseResult.CommandResult.Command.Name, out var shown))
            Print(shown);
        if (parseResult.CommandResult.Command is RootCommand)
            shell.Out.Write("Exit codes:\n  0 done, 1 a rule broken (--fail-on), 2 wrong use, 3 no usable ride,\n  4 files not used (--strict), 130 interrupted\n\n");
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

    private void Print(IReadOnlyList<Example> shown)
    {
        shell.Out.Write("Examples:\n");
        foreach (var example in shown)
            shell.Out.Write($"  {example.Line}\n      {example.Meaning}\n");
        shell.Out.Write("\n");
    }
}
