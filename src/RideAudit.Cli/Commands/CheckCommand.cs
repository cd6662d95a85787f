using System.CommandLine;
using NodaTime;
using RideAudit.Cli.Output;
using RideAudit.Cli.Terminal;
using RideAudit.Document.Json;
using RideAudit.Next;
using RideAudit.Rules;

namespace RideAudit.Cli.Commands;

/// <summary>Judges the weeks of the plan tables that are not ridden yet.</summary>
internal sealed class CheckCommand(Shell shell, ProgramCommand command)
{
    private const int PageMeasure = 100;

    private readonly Argument<string> _folder = command.Folder("Folder of ride files with a plan table among them.");
    private readonly Option<string?> _rider = command.Rider();
    private readonly Option<LocalDate?> _asOf = command.AsOf();
    private readonly Option<int?> _weeks = command.Weeks("Judge so many planned weeks: 1 to 16. Default: all of them.");
    private readonly Option<TableFormat> _format = command.Choice(
        "--format", "A table to read, or JSON. Default: table.", ("table", TableFormat.Table), ("json", TableFormat.Json));

    private readonly Option<bool> _strict = command.Strict();
    private readonly Option<string?> _failOn = command.FailOn();

    /// <summary>The command, ready to be parsed and run.</summary>
    public static ProgramCommand Create(Shell shell)
    {
        var command = new ProgramCommand(
            "check",
            "Judge the weeks of the plan table that are not ridden yet, each after the one before, by the same rules.",
            ("rideaudit check my-rides/", "every planned week from this one on"),
            ("rideaudit check my-rides/ --weeks 2 --fail-on broken", "the next two, for a script: 1 when a plan would break a rule"));
        command.Does(new CheckCommand(shell, command).Run);
        return command;
    }

    private ExitCode Run(ParseResult asked)
    {
        var folder = RiderFolder.Open(shell, asked.GetRequiredValue(_folder), asked.GetValue(_rider));
        var request = folder.Request(asked.GetValue(_asOf));
        var content = folder.Read();
        var document = PlanCheck.Build(content, folder.Rider, request, content.Plan, asked.GetValue(_weeks));
        // What could not be read of the plan was not judged either.
        var unread = content.Notices.Where(n => n.Problem == "unreadable plan row").ToList();
        unread.ForEach(n => shell.Tell($"{n.File}: {n.Sentence}"));
        if (asked.GetValue(_format) == TableFormat.Json)
            shell.Out.Write(ReviewJson.Write(document));
        else
            NextPage.Write(new Page(shell, PageMeasure), document);
        if (asked.GetValue(_strict) && unread.Count > 0)
            return ExitCode.FilesNotUsed;
        var broken = document.Weeks.Any(w => w.Verdicts.Any(v => v.Verdict == Verdict.Broken));
        return broken && asked.GetValue(_failOn) is not null ? ExitCode.RuleBroken : ExitCode.Done;
    }
}
