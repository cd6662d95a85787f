using System.Collections.Immutable;
using System.Globalization;
using CsvHelper;
using NodaTime;
using RideAudit.Rides;

namespace RideAudit.Ingest.Csv;

/// <summary>Reads a recording of a row a second.</summary>
internal static class CsvRideReader
{
    public static FileContent Read(string name, CsvReader csv, ImmutableArray<CsvColumn> columns, IngestContext context)
    {
        var times = new CsvTimes(context, CsvTimes.FromName(name));
        var decimalComma = csv.Separator is ';' or '\t';
        var timeColumn = columns.First(c => c.Channel == CsvChannel.Time);
        var channels = columns.Where(c => c.Channel is >= CsvChannel.Power and <= CsvChannel.Distance).ToArray();
        var seconds = new List<double>();
        var values = channels.ToDictionary(c => c.Channel, _ => new List<float>());
        var faults = new CsvFaults();
        while (csv.Read())
        {
            if (times.Read(csv.GetString(timeColumn.Index), decimalComma) is not { } second)
            {
                faults.Row(csv.LineNumber, timeColumn.Header, csv.GetString(timeColumn.Index));
                continue;
            }
            seconds.Add(second);
            foreach (var column in channels)
                values[column.Channel].Add(Cell(csv, column, decimalComma, faults));
        }
        if (seconds.Count == 0)
            return FileContent.Unusable(name, "no rows", faults.First is { } fault ? $"No row has a time that could be read ({fault})." : "There is a header and no row after it.");
        if (times.NeedsDate && times.Zero(seconds[0]) is null)
            return FileContent.Unusable(name, "no date", "The rows count seconds and no date is known: put it in the file's name, such as 2026-05-05-1800.csv, or write timestamps.");
        return Build(name, times, seconds, values, faults, context);
    }

    private static FileContent Build(
        string name, CsvTimes times, List<double> seconds, Dictionary<CsvChannel, List<float>> values, CsvFaults faults, IngestContext context)
    {
        float[]? Column(CsvChannel channel) => values.TryGetValue(channel, out var list) ? [.. list] : null;
        var first = times.NeedsDate ? seconds.Min() : 0;
        // Seconds counted from the start begin at the file name's time; clock times and timestamps are moments already.
        var zero = times.NeedsDate ? times.Zero(first)!.Value.ToUnixTimeSeconds() - (times.IsClock ? (long)Math.Floor(first) : 0) : 0;
        var gridded = GridBuilder.Build(new Track
        {
            Seconds = [.. seconds.Select(s => zero + (long)Math.Floor(s))],
            PowerW = Column(CsvChannel.Power),
            HeartRateBpm = Column(CsvChannel.HeartRate),
            CadenceRpm = Column(CsvChannel.Cadence),
            SpeedMps = Column(CsvChannel.Speed),
            AltitudeM = Column(CsvChannel.Altitude),
            DistanceM = Column(CsvChannel.Distance),
        });
        var start = Instant.FromUnixTimeSeconds(gridded.StartSecond);
        return new FileContent
        {
            Recordings = [new Recording
            {
                File = name,
                Sport = RideSport.Cycling,
                Start = start,
                Offset = times.FileOffset ?? context.OffsetAt(start),
                OffsetFrom = times.FileOffset is null ? context.ZoneSource : OffsetSource.File,
                Grid = gridded.Grid,
                TimerSeconds = gridded.TimerSeconds,
                ElapsedSeconds = gridded.ElapsedSeconds,
                Remarks = GridRemarks.Of(gridded),
            }],
            Notices = faults.First is null ? [] : [new FileNotice(name, "unreadable cells", $"{seconds.Count} rows", faults.Sentence, false)],
        };
    }

    private static float Cell(CsvReader csv, CsvColumn column, bool decimalComma, CsvFaults faults)
    {
        if (csv.IsEmpty(column.Index))
            return float.NaN;
        var text = csv.GetString(column.Index);
        var number = decimalComma ? text.Replace(',', '.') : text;
        if (double.TryParse(number, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value))
            return (float)(value * column.Factor);
        if (!IsMissing(text))
            faults.Cell(csv.LineNumber, column.Header, text);
        return float.NaN;
    }

    private static bool IsMissing(string text) => text is "NaN" or "nan" or "null" or "NULL" or "-" or "--" or "NA" or "n/a";
}
