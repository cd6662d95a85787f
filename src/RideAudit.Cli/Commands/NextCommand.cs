using System.CommandLine;
using System.Text;
using NodaTime;
using RideAudit.Cli.Output;
using RideAudit.Cli.Terminal;
using RideAudit.Document.Json;
using RideAudit.Next;
using RideAudit.Plan.Table;
using RideAudit.Report;

namespace RideAudit.Cli.Commands;

/// <summary>A layout for the weeks after the reviewed one, or for the rest of a week begun.</summary>
internal sealed class NextCommand(Shell shell, ProgramCommand command)
{
    private const int PageMeasure = 100;

    private readonly Argument<string> _folder = command.Folder();
    private readonly Option<string?> _rider = command.Rider();
    private readonly Option<LocalDate?> _asOf = command.AsOf();
    private readonly Option<LocalDate?> _week = command.Date("--week", "Lay out the week after the one that holds this date. Default: after the last week that has ended.");
    private readonly Option<int?> _weeks = command.Weeks("Lay out so many weeks, each judged after the one before: 1 to 16. Default: 1.");
    private readonly Option<string?> _ics = command.File("--ics", "Write the layout as a calendar (RFC 5545) here; imported again, it replaces what was imported before.");
    private readonly Option<string?> _plan = command.File("--plan", "Lay the weeks out in this plan table; rows made by hand stay as they are.");
    private readonly Option<string?> _pdf = command.File("--pdf", "Write a page a week to hang up here, before several weeks the programme at a glance.");
    private readonly Option<Paper> _paper = command.Paper("The paper of the PDF. Default: a4.");
    private readonly Option<string?> _workouts = command.File("--workouts", "Write each session as a FIT workout file into this folder.", "DIR");
    private readonly Option<TableFormat> _format = command.Choice(
        "--format", "A table to read, or JSON. Default: table.", ("table", TableFormat.Table), ("json", TableFormat.Json));

    /// <summary>The command, ready to be parsed and run.</summary>
    public static ProgramCommand Create(Shell shell)
    {
        var command = new ProgramCommand(
            "next",
            "Lay out the week after the reviewed one: hard days apart, rest after loaded days, a long ride, judged by the same rules.",
            ("rideaudit next my-rides/", "a layout for the week that follows the last finished one"),
            ("rideaudit next my-rides/ --pdf next-week.pdf --ics next-week.ics", "the same as a page for the fridge and as a calendar"),
            ("rideaudit next my-rides/ --weeks 4 --plan my-rides/plan.csv", "four weeks, written into the rider's plan table"),
            ("rideaudit next my-rides/ --workouts workouts", "a workout file a session, for a head unit to play"));
        command.Does(new NextCommand(shell, command).Run);
        return command;
    }

    private ExitCode Run(ParseResult asked)
    {
        var folder = RiderFolder.Open(shell, asked.GetRequiredValue(_folder), asked.GetValue(_rider));
        var (pdf, ics) = (Target(asked.GetValue(_pdf), OutputKind.Pdf, folder), Target(asked.GetValue(_ics), OutputKind.Calendar, folder));
        var plan = asked.GetValue(_plan) is { } table ? PlanTarget.Named(shell, table, folder.Path) : null;
        var workouts = asked.GetValue(_workouts) is { } dir ? WorkoutFolder.Named(shell, dir, folder.Path) : null;
        var request = folder.Request(asked.GetValue(_asOf), asked.GetValue(_week));
        var content = folder.Read();
        // A table outside the folder is the rider's plan as well, where the folder holds none.
        var planned = content.Plan.Sessions.IsEmpty && plan is not null ? PlanTable.Merge([plan.Before]) : content.Plan;
        var document = NextBuilder.Build(content, folder.Rider, request, asked.GetValue(_weeks) ?? 1, planned);
        if (document.Weeks.IsEmpty && content.Recordings.IsEmpty && content.LoggedRides.IsEmpty)
            throw new UserError($"{folder.NoRide(content).Message}\n{string.Join(' ', document.Notes)}", ExitCode.NoRide);
        var written = new List<string>();
        // Of no week nothing is written: what is there stays.
        if (!document.Weeks.IsEmpty)
        {
            var options = new PageOptions { Paper = asked.GetValue(_paper) };
            Write(pdf, s => Drawing.WriteNext(s, document, options), written);
            Write(ics, s => s.Write(Encoding.UTF8.GetBytes(CalendarFile.Write(document))), written);
            if (plan is not null)
                written.Add(plan.Shown);
            if (workouts is not null)
                written.Add(workouts.Write(document, folder.Rider, shell.Cancel));
            if (plan?.Write(document, planned, shell.Cancel) is { } kept)
                document = document with { Notes = [.. document.Notes, kept] };
        }
        if (asked.GetValue(_format) == TableFormat.Json)
            shell.Out.Write(ReviewJson.Write(document));
        else
            NextPage.Write(new Page(shell, PageMeasure), document, written);
        return ExitCode.Done;
    }

    private OutputFile? Target(string? typed, OutputKind kind, RiderFolder folder) => typed is null
        ? null
        : OutputFile.Named(shell, typed, kind, folder.Path, folder.RiderFile is { } rider ? [rider] : []);

    private void Write(OutputFile? file, Action<Stream> write, List<string> written)
    {
        if (file is null)
            return;
        file.Write(write, shell.Cancel);
        written.Add(file.Shown);
    }
}
