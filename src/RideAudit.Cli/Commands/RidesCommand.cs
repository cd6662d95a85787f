using RideAudit.Cli.Output;
using RideAudit.Cli.Terminal;
using RideAudit.Document;
using RideAudit.Document.Json;
using RideAudit.Review;

namespace RideAudit.Cli.Commands;

/// <summary>One row a ride.</summary>
internal static class RidesCommand
{
    /// <summary>The command, ready to be parsed and run.</summary>
    public static ProgramCommand Create(Shell shell)
    {
        var command = new ProgramCommand(
            "rides",
            "One row a ride: kind, time, stress, power, bands.",
            ("rideaudit rides my-rides/ --since 2026-05-04", "every ride from 4 May on"),
            ("rideaudit rides my-rides/ --format csv > rides.csv", "for a spreadsheet"),
            ("rideaudit rides my-rides/ --format json --power-curve", "with the best mean power over every duration"));
        var rows = new Rows(shell, command).WithRefusals(command);
        var curve = command.Flag("--power-curve", "Add each ride's best mean power over every duration, with --format json.");
        command.Refuses(r => r.GetValue(curve) && r.GetValue(rows.Format) != TableFormat.Json, "--power-curve goes with --format json.");
        command.Does(asked => rows.Write(asked, Table(asked.GetValue(curve))));
        return command;
    }

    private static Rows.Table<RidesDocument, RideEntry> Table(bool curves) => new()
    {
        Noun = "ride",
        Of = "of",
        Build = (content, folder, request) => ReviewBuilder.Rides(content, folder.Rider, request with { WithPowerCurves = curves }),
        Rows = d => d.Rides,
        With = (d, rides) => d with { Rides = [.. rides] },
        First = r => r.StartsAt.Date,
        Last = r => r.StartsAt.Date,
        Json = ReviewJson.Write,
        Fields = CsvFields.Rides,
        Print = (page, d) => RideTable.Write(page, d.Rides, d.AboutRides()),
    };
}
