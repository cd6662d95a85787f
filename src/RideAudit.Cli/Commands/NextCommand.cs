using System.CommandLine;
using System.Text;
using NodaTime;
using RideAudit.Cli.Output;
using RideAudit.Cli.Terminal;
using RideAudit.Document;
using RideAudit.Next;

namespace RideAudit.Cli.Commands;

/// <summary>A layout for the week after the reviewed one.</summary>
internal sealed class NextCommand(Shell shell, ProgramCommand command)
{
    private const int PageMeasure = 100;

    private readonly Argument<string> _folder = command.Folder();
    private readonly Option<string?> _rider = command.Rider();
    private readonly Option<LocalDate?> _asOf = command.AsOf();
    private readonly Option<LocalDate?> _week = command.Date("--week", "Lay out the week after the one that holds this date. Default: after the last week that has ended.");
    private readonly Option<string?> _ics = command.File("--ics", "Write the layout as a calendar (RFC 5545) here.");
    private readonly Option<TableFormat> _format = command.Choice(
        "--format", "A table to read, or JSON. Default: table.", ("table", TableFormat.Table), ("json", TableFormat.Json));

    /// <summary>The command, ready to be parsed and run.</summary>
    public static ProgramCommand Create(Shell shell)
    {
        var command = new ProgramCommand(
            "next",
            "Lay out the week after the reviewed one: hard days apart, rest after loaded days, a long ride, judged by the same rules.",
            ("rideaudit next my-rides/", "a layout for the week that follows the last finished one"),
            ("rideaudit next my-rides/ --ics next-week.ics", "the same as a calendar file"));
        command.Does(new NextCommand(shell, command).Run);
        return command;
    }

    private ExitCode Run(ParseResult asked)
    {
        var folder = RiderFolder.Open(shell, asked.GetRequiredValue(_folder), asked.GetValue(_rider));
        var ics = asked.GetValue(_ics) is { } typed
            ? OutputFile.Named(shell, typed, OutputKind.Calendar, folder.Path, folder.RiderFile is { } rider ? [rider] : [])
            : null;
        var request = folder.Request(asked.GetValue(_asOf), asked.GetValue(_week));
        var content = folder.Read();
        var document = NextWeekBuilder.Build(content, folder.Rider, request) ?? throw folder.NoRide(content);
        if (ics is not null)
        {
            var calendar = CalendarFile.Write(document, shell.Clock.GetCurrentInstant());
            ics.Write(s => s.Write(Encoding.UTF8.GetBytes(calendar)), shell.Cancel);
        }
        if (asked.GetValue(_format) == TableFormat.Json)
            shell.Out.Write(ReviewJson.Write(document));
        else
            NextWeekPage.Write(new Page(shell, PageMeasure), document, ics?.Shown);
        return ExitCode.Done;
    }
}
