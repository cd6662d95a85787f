using System.CommandLine;
using RideAudit.Cli.Options;
using RideAudit.Cli.Terminal;
using RideAudit.Cli.Work;
using RideAudit.Report;

namespace RideAudit.Cli.Commands;

/// <summary>Every rider of a coach.</summary>
internal sealed class RosterCommand : ICommandSource
{
    /// <inheritdoc/>
    public IReadOnlyList<Example> Examples { get; } =
    [
        new("rideaudit roster riders/", "a review of each sub-folder, and one overview, in roster-YYYY-MM-DD/"),
        new("rideaudit roster riders/ --out monday --as-of 2026-06-22", "as of a date, into a folder of your choice"),
    ];

    /// <inheritdoc/>
    public Command Create(Shell shell)
    {
        var folder = FolderArgument.Create("Folder with one sub-folder a rider, each with ride files and a rider.toml.");
        var output = new Option<string?>("--out") { Description = "Folder to write into, made if need be. Default: roster-YYYY-MM-DD in the current folder.", HelpName = "DIR" };
        var asOf = CommonOptions.AsOf();
        var week = DateOption.Create("--week", "Review the week that holds this date. Default: the last week that has ended.");
        var paper = ChoiceOption.Create("--paper", "The paper of the PDFs. Default: a4.", ("a4", Paper.A4), ("letter", Paper.Letter));
        var strict = new Option<bool>("--strict") { Description = "Exit with 4 when some files or riders could not be used." };
        var failOn = CommonOptions.FailOn();
        var quiet = CommonOptions.Quiet();
        var command = new Command("roster", "Review every sub-folder of FOLDER, and write one overview ordered by who needs the coach first (PDF, CSV, JSON).");
        command.Arguments.Add(folder);
        foreach (var option in new Option[] { output, asOf, week, paper, strict, failOn, quiet })
            command.Options.Add(option);
        command.SetAction(parsed => (int)RosterWork.Run(shell, new RosterArguments(
            parsed.GetRequiredValue(folder),
            parsed.GetValue(output),
            parsed.GetValue(asOf),
            parsed.GetValue(week),
            parsed.GetValue(paper),
            parsed.GetValue(strict),
            parsed.GetValue(failOn) is not null,
            parsed.GetValue(quiet))));
        return command;
    }
}
