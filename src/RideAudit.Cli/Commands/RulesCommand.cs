using RideAudit.Cli.Output;
using RideAudit.Cli.Terminal;
using RideAudit.Document;
using RideAudit.Document.Json;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Review;

namespace RideAudit.Cli.Commands;

/// <summary>The rules in force for a rider.</summary>
internal static class RulesCommand
{
    private const int PageMeasure = 110;

    /// <summary>The command, ready to be parsed and run.</summary>
    public static ProgramCommand Create(Shell shell)
    {
        var command = new ProgramCommand(
            "rules",
            "The rules in force for a rider, with limits, evidence and sources.",
            ("rideaudit rules", "every rule with its default limits, evidence and source"),
            ("rideaudit rules --rider my-rides/rider.toml", "with the limits of a rider file"));
        var rider = command.File("--rider", "Rider file. Default: the default limits.");
        var format = command.Format();
        command.Does(asked =>
        {
            var known = asked.GetValue(rider) is { } typed ? RiderFolder.RiderOf(shell, typed) : null;
            var document = ReviewBuilder.Rules(known ?? new Rider());
            if (asked.GetValue(format) == TableFormat.Json)
                shell.Out.Write(ReviewJson.Write(document));
            else if (asked.GetValue(format) == TableFormat.Csv)
                CsvTable.Write(shell.Out, CsvFields.Rules, document.Rules);
            else
                Print(new Page(shell, PageMeasure), known, document);
            return ExitCode.Done;
        });
        return command;
    }

    private static void Print(Page page, Rider? known, RulesDocument document)
    {
        var rider = known ?? new Rider();
        var volume = PlanInForce.For(rider, []).Tier is { } tier ? $"{Words.Of(tier)} volume" : "middle volume, as no hours are planned";
        page.Text($"{(known is null ? "No rider file: the limits assume" : $"{rider.Label}: limits of")} {volume}, and {Words.Of(rider.Experience)} experience."
            + (known is null ? " '--rider FILE' shows those of a rider." : ""), Tone.Quiet);
        page.Blank();
        RuleTable.Write(page, document.Rules);
    }
}
