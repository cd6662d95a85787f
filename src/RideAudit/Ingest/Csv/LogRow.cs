using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using CsvHelper;
using NodaTime;
using RideAudit.Ingest.Text;
using RideAudit.Units;

namespace RideAudit.Ingest.Csv;

/// <summary>The current row of a ride log.</summary>
internal readonly partial struct LogRow(CsvReader csv, ImmutableArray<CsvHeader.Column> columns, bool decimalComma, CsvFaults faults)
{
    public string Text(CsvChannel channel) => Find(channel) is { } column && CsvReading.Has(csv, column) ? csv.GetString(column.Index).Trim() : "";

    public string HeaderOf(CsvChannel channel) => Find(channel)?.Header ?? channel.ToString().ToLowerInvariant();

    /// <summary>True without the column, and where its cell says that there is no value.</summary>
    public bool IsMissing(CsvChannel channel) => WrittenNumbers.IsMissing(Text(channel));

    public bool IsBlank => columns.All(Missing);

    /// <summary>The date from its column, or from a start written as a timestamp; the start from its own column, a timestamp, or a time column.</summary>
    public (LocalDate? Date, LocalTime? Start) When()
    {
        var (dateText, startText) = (Text(CsvChannel.Date), Text(CsvChannel.Start));
        var stamp = IsoTimes.Timestamp(dateText) ?? IsoTimes.Timestamp(startText);
        var date = IsoTimes.Day(dateText) ?? stamp?.Local.Date;
        if (startText.Length == 0)
            startText = Text(CsvChannel.Time);
        return (date, IsoTimes.OfDay(startText) ?? stamp?.Local.TimeOfDay ?? Unread(CsvChannel.Start, startText));
    }

    /// <summary>Minutes as a number in the header's unit, or as h:mm, h:mm:ss or 1 h 30.</summary>
    public double? Minutes()
    {
        var text = Text(CsvChannel.Minutes);
        if (WrittenNumbers.Parse(text, decimalComma) is { } number)
            return number * Find(CsvChannel.Minutes)!.Value.Factor;
        var match = HoursAndMinutes().Match(text);
        if (!match.Success)
            return null;
        double Part(string group) => match.Groups[group].Success ? double.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture) : 0;
        return Part("h") < 24 ? Part("h") * 60 + Part("m") + Part("s") / 60 : null;
    }

    public double? Number(CsvChannel channel, double least, double most)
    {
        var text = Text(channel);
        if (WrittenNumbers.IsMissing(text))
            return null;
        var column = Find(channel)!.Value;
        if (WrittenNumbers.Parse(text, decimalComma) * column.Factor is { } value && value >= least && value <= most)
            return value;
        faults.Cell(csv.LineNumber, column.Header, text);
        return null;
    }

    /// <summary>The ride's file as the row names it; null without one.</summary>
    public string? RideFile() => Text(CsvChannel.RideFile) is var file && WrittenNumbers.IsMissing(file) ? null : ShownName.OfEntry(file);

    public RideKind? Kind()
    {
        var text = Text(CsvChannel.Kind);
        if (WrittenNumbers.IsMissing(text))
            return null;
        if (RideKinds.Of(text) is { } kind)
            return kind;
        faults.Kind(csv.LineNumber, HeaderOf(CsvChannel.Kind), text);
        return null;
    }

    /// <summary>Kept as written but for what would move a cursor; null without one.</summary>
    public string? Note() => Text(CsvChannel.Note) is { Length: > 0 } note ? ShownName.Of(note) : null;

    private LocalTime? Unread(CsvChannel channel, string text)
    {
        if (!WrittenNumbers.IsMissing(text))
            faults.Cell(csv.LineNumber, HeaderOf(channel), text);
        return null;
    }

    private bool Missing(CsvHeader.Column column) => !CsvReading.Has(csv, column) || WrittenNumbers.IsMissing(csv.GetString(column.Index));

    private CsvHeader.Column? Find(CsvChannel channel)
    {
        foreach (var column in columns)
            if (column.Channel == channel)
                return column;
        return null;
    }

    [GeneratedRegex(@"^(?<h>[0-9]{1,2})\s*(?::|h)\s*(?:(?<m>[0-5]?[0-9])\s*(?:m|min)?(?::(?<s>[0-5][0-9]))?)?$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex HoursAndMinutes();
}
