using RideAudit.Cli.Output;
using RideAudit.Cli.Terminal;
using RideAudit.Document;
using RideAudit.Document.Json;
using RideAudit.Review;

namespace RideAudit.Cli.Commands;

/// <summary>One row a week.</summary>
internal static class WeeksCommand
{
    private static readonly Rows.Table<WeeksDocument, WeekEntry> Table = new()
    {
        Noun = "week",
        Of = "that of",
        Build = (content, folder, request) => ReviewBuilder.Weeks(content, folder.Rider, request),
        Rows = d => d.Weeks,
        With = (d, weeks) => d with { Weeks = [.. weeks] },
        First = w => w.StartsOn,
        Last = w => w.StartsOn.PlusDays(6),
        Json = ReviewJson.Write,
        Fields = CsvFields.Weeks,
        Print = (page, d) => WeekTable.Write(page, d.Weeks),
        Beside = d => d.Notices.Select(n => n.Sentence),
    };

    /// <summary>The command, ready to be parsed and run.</summary>
    public static ProgramCommand Create(Shell shell)
    {
        var command = new ProgramCommand(
            "weeks",
            "One row a week: hours, stress, split, loads.",
            ("rideaudit weeks my-rides/", "every week from the first ride's on"),
            ("rideaudit weeks my-rides/ --since 2026-01-01 --format csv > weeks.csv", "this year, for a spreadsheet"));
        var rows = new Rows(shell, command).WithRefusals(command);
        command.Does(asked => rows.Write(asked, Table));
        return command;
    }
}
