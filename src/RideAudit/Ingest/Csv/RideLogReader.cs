using System.Collections.Immutable;
using CsvHelper;
using NodaTime;
using RideAudit.Rides;

namespace RideAudit.Ingest.Csv;

/// <summary>Reads a ride log: a row a ride, with its date, minutes and whatever else was written down.</summary>
internal static class RideLogReader
{
    private const double LeastMinutes = 1;
    private const double MostMinutes = 48 * 60;
    private const double MostWatts = 2500;
    private const double LeastBpm = 30;
    private const double MostBpm = 230;
    private const double HighestRating = 10;

    public static FileContent Read(string name, CsvReader csv, ImmutableArray<CsvHeader.Column> columns, IngestContext context)
    {
        var rides = ImmutableArray.CreateBuilder<LoggedRide>();
        var faults = new CsvFaults();
        while (csv.Read())
            if (Ride(name, csv.LineNumber, new LogRow(csv, columns, csv.Separator is ';' or '\t', faults), context, faults) is { } ride)
                rides.Add(ride);
        return new FileContent
        {
            File = name,
            LoggedRides = rides.ToImmutable(),
            Notices = faults.Any
                ? [new FileNotice(name, "unreadable cells", $"{rides.Count} rows", faults.Sentence, rides.Count == 0)]
                : rides.Count == 0 ? [new FileNotice(name, "no rows", null, "This ride log has a header and no ride under it.", true)] : [],
        };
    }

    private static LoggedRide? Ride(string name, long line, LogRow row, IngestContext context, CsvFaults faults)
    {
        if (row.IsBlank)
            return null;
        var minutes = row.Minutes();
        // Riders who keep a log write their rest days down as well.
        if (minutes == 0)
            return null;
        var (date, start) = row.When();
        var (file, kind) = (row.RideFile(), row.Kind());
        if (date is null && file is null)
        {
            faults.Row(line, row.HeaderOf(CsvChannel.Date), row.Text(CsvChannel.Date));
            return null;
        }
        // A row that says what a recorded ride was needs no length of its own.
        var speaksOfARide = file is not null || kind is not null;
        if (minutes is not (>= LeastMinutes and <= MostMinutes) && !(speaksOfARide && row.IsMissing(CsvChannel.Minutes)))
        {
            faults.Row(line, row.HeaderOf(CsvChannel.Minutes), row.Text(CsvChannel.Minutes));
            return null;
        }
        return new LoggedRide
        {
            File = $"{name}#{line}",
            RideFile = file,
            Date = date,
            Start = start,
            Minutes = minutes,
            Kind = kind,
            Note = row.Note(),
            Figures = new LoggedFigures(
                row.Number(CsvChannel.AveragePower, 0, MostWatts) ?? row.Number(CsvChannel.Power, 0, MostWatts),
                row.Number(CsvChannel.NormalisedPower, 0, MostWatts),
                row.Number(CsvChannel.AverageHeartRate, LeastBpm, MostBpm) ?? row.Number(CsvChannel.HeartRate, LeastBpm, MostBpm)),
            Rating = row.Number(CsvChannel.Rating, 0, HighestRating),
            Offset = date is { } day ? context.OffsetAt(context.AtLocal(day.At(start ?? LocalTime.Noon))) : Offset.Zero,
        };
    }
}
