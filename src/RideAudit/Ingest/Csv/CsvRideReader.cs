using System.Collections.Immutable;
using CsvHelper;
using NodaTime;
using RideAudit.Ingest.Text;
using RideAudit.Ingest.Tracks;
using RideAudit.Rides;

namespace RideAudit.Ingest.Csv;

/// <summary>Reads a recording of a row a second.</summary>
internal sealed class CsvRideReader
{
    private readonly CsvReader _csv;
    private readonly ImmutableArray<CsvHeader.Column> _channels;
    private readonly CsvHeader.Column _timeColumn;
    private readonly CsvHeader.Column? _dateColumn;
    private readonly bool _decimalComma;
    private readonly CsvTimes _times;
    private readonly CsvFaults _faults = new();
    private readonly SampleRows _rows = new();
    private LocalDate? _date;

    private CsvRideReader(CsvReader csv, ImmutableArray<CsvHeader.Column> columns, IngestContext context)
    {
        _csv = csv;
        _channels = [.. columns.Where(c => c.Channel is >= CsvChannel.Power and <= CsvChannel.Distance)];
        _timeColumn = columns.First(c => c.Channel == CsvChannel.Time);
        _dateColumn = columns.Any(c => c.Channel == CsvChannel.Date) ? columns.First(c => c.Channel == CsvChannel.Date) : null;
        _decimalComma = csv.Separator is ';' or '\t';
        _times = new CsvTimes(context, _timeColumn, _decimalComma);
    }

    public static FileContent Read(string name, CsvReader csv, ImmutableArray<CsvHeader.Column> columns, IngestContext context)
    {
        var reader = new CsvRideReader(csv, columns, context);
        reader.ReadRows();
        return reader.Finish(name, context);
    }

    private void ReadRows()
    {
        for (var isFirst = true; _rows.Count <= ReadLimits.MostRows && _csv.Read(); isFirst = false)
        {
            var cell = CsvReading.Has(_csv, _timeColumn) ? _csv.GetString(_timeColumn.Index) : "";
            if (_times.Read(cell) is { } second)
                TakeRow(second);
            else if (!(isFirst && IsUnitRow()) && !IsBlank())
                _faults.Row(_csv.LineNumber, _timeColumn.Header, cell);
        }
    }

    private void TakeRow(double second)
    {
        if (_date is null && _dateColumn is { } column && CsvReading.Has(_csv, column))
            _date = IsoTimes.Day(_csv.GetString(column.Index));
        var row = SampleRow.Missing;
        foreach (var channel in _channels)
            row[channel.Channel - CsvChannel.Power] = Cell(channel);
        _rows.Add(second, row);
    }

    private float Cell(CsvHeader.Column column)
    {
        if (!CsvReading.Has(_csv, column))
            return float.NaN;
        var text = _csv.GetString(column.Index);
        if (WrittenNumbers.Parse(text, _decimalComma) is { } number)
            return (float)(number * column.Factor);
        if (!WrittenNumbers.IsMissing(text))
            _faults.Cell(_csv.LineNumber, column.Header, text);
        return float.NaN;
    }

    /// <summary>Some programs write a row of units under the header: no cell of it is a number.</summary>
    private bool IsUnitRow() => _channels.All(c => !CsvReading.Has(_csv, c) || WrittenNumbers.Parse(_csv.GetString(c.Index), _decimalComma) is null);

    private bool IsBlank() => Enumerable.Range(0, _csv.FieldCount).All(_csv.IsEmpty);

    private FileContent Finish(string name, IngestContext context)
    {
        if (_rows.Count > ReadLimits.MostRows)
            return FileContent.Unusable(name, "too many rows", $"This file has more than {ReadLimits.MostRows} rows: no ride is that long, so check what it is.");
        if (_rows.Count == 0)
            return FileContent.Unusable(name, "no rows", _faults.First is { } fault
                ? $"No row has a time that could be read ({fault}): write seconds, h:mm:ss or ISO 8601 timestamps."
                : "There is a header and no row after it: export the ride again.");
        if (Zero(name, context) is not { } zero)
            return FileContent.Unusable(name, "no date", "The rows say no date: put it into the file’s name, such as 2026-05-05-1800.csv, or write timestamps.");
        if (TrackRecording.Of(name, RideSport.Cycling, _rows, zero.Second, null, _times.FileOffsetSeconds, context, zero.Remarks) is not { } recording)
            return FileContent.Unusable(name, "no rows", "No row can be placed on a ride’s time: check the time column.");
        return new FileContent
        {
            File = name,
            Recordings = [recording],
            Notices = [.. Notices(name)],
        };
    }

    /// <summary>The Unix second of the rows' second 0: the epoch itself for timestamps, else by the date column or the file's name.</summary>
    private (long Second, string[] Remarks)? Zero(string name, IngestContext context)
    {
        if (!_times.NeedsDate)
            return (0, []);
        var named = NameDates.In(name);
        if ((_date ?? named?.At.Date) is not { } date)
            return null;
        if (_times.IsClock)
        {
            var first = (long)Math.Floor(_rows.Seconds[0]);
            var midnight = date.AtMidnight();
            return (context.AtLocal(midnight.PlusSeconds(first)).ToUnixTimeSeconds() - first, []);
        }
        var isOfThatDay = named is { HasTime: true } && named.Value.At.Date == date;
        var start = isOfThatDay ? named!.Value.At : date.At(LocalTime.Noon);
        return (context.AtLocal(start).ToUnixTimeSeconds(), isOfThatDay ? [] : ["The file says no time of day: noon is taken for its start."]);
    }

    private IEnumerable<FileNotice> Notices(string name)
    {
        if (_faults.First is not null)
            yield return new FileNotice(name, "unreadable cells", $"{_rows.Count} rows", _faults.Sentence, false);
        if (_rows.UsualStep() > GridBuilder.LongestHeldGapSeconds)
            yield return TrackRemarks.Sparse(name);
    }
}
