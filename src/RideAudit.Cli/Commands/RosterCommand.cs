using System.CommandLine;
using NodaTime;
using RideAudit.Cli.Terminal;
using RideAudit.Document;
using RideAudit.Report;

namespace RideAudit.Cli.Commands;

/// <summary>Every rider of a coach: reviews every sub-folder and writes the overview.</summary>
internal sealed class RosterCommand(Shell shell, ProgramCommand command)
{
    private readonly Argument<string> _folder = command.Folder("Folder with one sub-folder a rider, each with ride files and a rider.toml.");
    private readonly Option<string?> _out = command.File("--out", "Folder to write into, made if need be. Default: roster-YYYY-MM-DD in the current folder.", "DIR");
    private readonly Option<LocalDate?> _asOf = command.AsOf();
    private readonly Option<LocalDate?> _week = command.Date("--week", "Review the week that holds this date. Default: the last week that has ended.");
    private readonly Option<Paper> _paper = command.Paper("The paper of the PDFs. Default: a4.");
    private readonly Option<bool> _next = command.Flag("--next", "Lay out everybody's next week as well: in the summary, in next.csv, and a calendar each.");
    private readonly Option<bool> _writePlans = command.Flag("--write-plans", "Write the weeks of --next into plan.csv of each rider's folder; rows made by hand stay as they are.");
    private readonly Option<bool> _strict = command.Strict("files or riders");
    private readonly Option<string?> _failOn = command.FailOn();
    private readonly Option<bool> _quiet = command.Quiet();

    /// <summary>The command, ready to be parsed and run.</summary>
    public static ProgramCommand Create(Shell shell)
    {
        var command = new ProgramCommand(
            "roster",
            "Review every sub-folder of FOLDER, and write one overview ordered by who needs the coach first (PDF, CSV, JSON).",
            ("rideaudit roster riders/", "a review of each sub-folder, and one overview, in roster-YYYY-MM-DD/"),
            ("rideaudit roster riders/ --out monday --as-of 2026-06-22", "as of a date, into a folder of your choice"),
            ("rideaudit roster riders/ --next --write-plans", "everybody's next week too, written into each rider's plan table"));
        var roster = new RosterCommand(shell, command);
        command.Refuses(r => r.GetValue(roster._writePlans) && !r.GetValue(roster._next), "--write-plans writes what --next lays out: give both.");
        command.Does(roster.Run);
        return command;
    }

    private ExitCode Run(ParseResult asked)
    {
        var typed = asked.GetRequiredValue(_folder);
        var run = new RosterRun(shell)
        {
            AsOf = asked.GetValue(_asOf),
            Week = asked.GetValue(_week),
            Paper = asked.GetValue(_paper),
            Out = asked.GetValue(_out),
            Next = asked.GetValue(_next),
            WritePlans = asked.GetValue(_writePlans),
            Quiet = asked.GetValue(_quiet),
            Strict = asked.GetValue(_strict),
        };
        return CodeOf(asked, run.Run(typed));
    }

    private ExitCode CodeOf(ParseResult asked, RosterDocument roster)
    {
        if (roster.Riders.All(r => r.Need == RosterNeed.NoReview))
            return ExitCode.NoRide;
        if (asked.GetValue(_strict) && roster.Riders.Any(r => r.Need == RosterNeed.NoReview || r.FilesNotUsed > 0))
            return ExitCode.FilesNotUsed;
        return asked.GetValue(_failOn) is not null && roster.Riders.Any(r => r.Broken.Length > 0) ? ExitCode.RuleBroken : ExitCode.Done;
    }
}
