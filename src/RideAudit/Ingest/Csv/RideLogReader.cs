using System.Collections.Immutable;
using System.Globalization;
using CsvHelper;
using NodaTime;
using NodaTime.Text;
using RideAudit.Rides;

namespace RideAudit.Ingest.Csv;

/// <summary>Reads a ride log: a row a ride, with its date, minutes and whatever else was written down.</summary>
internal static class RideLogReader
{
    public static FileContent Read(string name, CsvReader csv, ImmutableArray<CsvColumn> columns, IngestContext context)
    {
        var rides = ImmutableArray.CreateBuilder<LoggedRide>();
        var faults = new CsvFaults();
        var decimalComma = csv.Separator is ';' or '\t';
        while (csv.Read())
        {
            var row = new Row(csv, columns, decimalComma, faults);
            if (LocalDatePattern.Iso.Parse(row.Text(CsvChannel.Date)) is not { Success: true } date)
            {
                faults.Row(csv.LineNumber, "date", row.Text(CsvChannel.Date));
                continue;
            }
            if (row.Number(CsvChannel.Minutes, 1, 6000) is not { } minutes)
            {
                faults.Row(csv.LineNumber, "minutes", row.Text(CsvChannel.Minutes));
                continue;
            }
            var start = row.Time(CsvChannel.Start);
            rides.Add(new LoggedRide
            {
                File = $"{name}#{csv.LineNumber}",
                Date = date.Value,
                Start = start,
                Minutes = minutes,
                Figures = new LoggedFigures(
                    row.Number(CsvChannel.AveragePower, 0, 2500) ?? row.Number(CsvChannel.Power, 0, 2500),
                    row.Number(CsvChannel.NormalisedPower, 0, 2500),
                    row.Number(CsvChannel.AverageHeartRate, 30, 230) ?? row.Number(CsvChannel.HeartRate, 30, 230)),
                Rating = row.Number(CsvChannel.Rating, 0, 10),
                Offset = context.OffsetAt(context.AtLocal(date.Value.At(start ?? LocalTime.Noon))),
            });
        }
        return new FileContent
        {
            LoggedRides = rides.ToImmutable(),
            Notices = faults.First is null ? [] : [new FileNotice(name, "unreadable cells", $"{rides.Count} rows", faults.Sentence, false)],
        };
    }

    private readonly struct Row(CsvReader csv, ImmutableArray<CsvColumn> columns, bool decimalComma, CsvFaults faults)
    {
        public string Text(CsvChannel channel) => Find(channel) is { } column && !csv.IsEmpty(column.Index) ? csv.GetString(column.Index) : "";

        public LocalTime? Time(CsvChannel channel)
        {
            var text = Text(channel);
            if (text.Length == 0)
                return null;
            if (LocalTimePattern.CreateWithInvariantCulture("H:mm").Parse(text) is { Success: true } minutes)
                return minutes.Value;
            if (LocalTimePattern.CreateWithInvariantCulture("H:mm:ss").Parse(text) is { Success: true } seconds)
                return seconds.Value;
            faults.Cell(csv.LineNumber, Find(channel)!.Value.Header, text);
            return null;
        }

        public double? Number(CsvChannel channel, double least, double most)
        {
            var text = Text(channel);
            if (text.Length == 0)
                return null;
            var number = decimalComma ? text.Replace(',', '.') : text;
            var column = Find(channel)!.Value;
            if (double.TryParse(number, NumberStyles.Float, CultureInfo.InvariantCulture, out var value)
                && value * column.Factor >= least && value * column.Factor <= most)
                return value * column.Factor;
            faults.Cell(csv.LineNumber, column.Header, text);
            return null;
        }

        private CsvColumn? Find(CsvChannel channel)
        {
            foreach (var column in columns)
                if (column.Channel == channel)
                    return column;
            return null;
        }
    }
}
