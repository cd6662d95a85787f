using System.Collections.Immutable;
using CsvHelper;
using RideAudit.Ingest.Text;

namespace RideAudit.Ingest.Csv;

/// <summary>Reads a CSV file: one recording of a row a second, or a ride log of a row a ride.</summary>
/// <remarks>RFC 4180 (Shafranovich 2005), with semicolons and tabs as well, and a decimal comma where the separator is one of these.</remarks>
internal static class CsvReading
{
    private const int LargestRecordBytes = 1 << 20;
    private const int MostLinesBeforeHeader = 30;

    public static FileContent Read(string name, byte[] bytes, IngestContext context)
    {
        // Without a line end the whole file would be one header.
        if (bytes.Length > LargestRecordBytes && !bytes.AsSpan(0, LargestRecordBytes).ContainsAny((byte)'\n', (byte)'\r'))
            return RideEndings.IsCsv(name)
                ? FileContent.Unusable(name, "not a CSV file", "The first line has no end within 1 MB: this is no table of rows; write the file again as CSV.")
                : NoRide.Refuse(name, FileKind.Text);
        try
        {
            using var csv = CsvReader.Create(TextBytes.ToUtf8(bytes), new CsvReaderOptions
            {
                TrackLineNumbers = true,
                TrimWhitespace = true,
                MaxRecordSize = LargestRecordBytes,
                FieldCountMismatch = CsvFieldCountHandling.Allow,
                MalformedData = CsvMalformedDataHandling.Recover,
            });
            return Read(name, csv, context);
        }
        catch (CsvFormatException e)
        {
            return RideEndings.IsCsv(name)
                ? FileContent.Unusable(name, "not a CSV file", $"The rows could not be read: {e.Message.TrimEnd('.')}; write the file again as CSV.")
                : NoRide.Refuse(name, FileKind.Text);
        }
    }

    /// <summary>True when a cell of the column can be read: also of the first one, whose row may lack the field.</summary>
    public static bool Has(CsvReader csv, CsvHeader.Column column) => column.Index < csv.FieldCount && !csv.IsEmpty(column.Index);

    private static FileContent Read(string name, CsvReader csv, IngestContext context)
    {
        csv.ReadHeader();
        var first = csv.Headers.ToArray();
        if (OwnTables.Are(first))
            return FileContent.Nothing(name);
        var columns = FindHeader(csv, first, context.CsvColumns);
        if (IsLog(columns))
            return RideLogReader.Read(name, csv, columns, context);
        if (IsRecording(columns))
            return CsvRideReader.Read(name, csv, columns, context);
        // Text that is not named as CSV never promised columns.
        if (!RideEndings.IsCsv(name))
            return NoRide.Refuse(name, FileKind.Text);
        var missing = Has(columns, CsvChannel.Time)
            ? ("no data column", "no power, heart rate, cadence, speed, altitude or distance")
            : ("no time column", "no column of seconds or timestamps");
        return FileContent.Unusable(name, missing.Item1, [.. first], $"This CSV file has {missing.Item2} among its columns ({Shown(first)}): if it is a ride, name the columns under [csv] in the rider file.");
    }

    /// <summary>The first row is the header, but for files that begin with lines about themselves.</summary>
    private static ImmutableArray<CsvHeader.Column> FindHeader(CsvReader csv, string[] first, ImmutableDictionary<string, string> map)
    {
        var columns = CsvHeader.Understand(first, map);
        if (IsLog(columns) || IsRecording(columns))
            return columns;
        for (var line = 0; line < MostLinesBeforeHeader && csv.Read(); line++)
        {
            var fields = Enumerable.Range(0, csv.FieldCount).Select(i => csv.GetString(i)).ToArray();
            var understood = CsvHeader.Understand(fields, map);
            if (!IsLog(understood) && !IsRecording(understood))
                continue;
            csv.ReadHeader();
            return understood;
        }
        return columns;
    }

    private static bool IsLog(ImmutableArray<CsvHeader.Column> columns)
    {
        bool Any(params ReadOnlySpan<CsvChannel> channels)
        {
            foreach (var channel in channels)
                if (Has(columns, channel))
                    return true;
            return false;
        }
        return (Any(CsvChannel.Date, CsvChannel.Start) && Any(CsvChannel.Minutes, CsvChannel.Kind))
            || (Any(CsvChannel.RideFile) && Any(CsvChannel.Kind, CsvChannel.Rating, CsvChannel.Note));
    }

    private static bool IsRecording(ImmutableArray<CsvHeader.Column> columns) =>
        Has(columns, CsvChannel.Time) && columns.Any(c => c.Channel is >= CsvChannel.Power and <= CsvChannel.Altitude);

    private static bool Has(ImmutableArray<CsvHeader.Column> columns, CsvChannel channel) => columns.Any(c => c.Channel == channel);

    private static string Shown(string[] headers)
    {
        var shown = string.Join(", ", headers.Take(12).Select(h => ShownName.Of(h.Length > 24 ? h[..24] + "…" : h)));
        return headers.Length == 0 ? "none" : headers.Length > 12 ? shown + ", …" : shown;
    }

    /// <summary>Knows the tables that this program writes itself: left in the folder of rides they are no rides, and no mistake either.</summary>
    private static class OwnTables
    {
        private static readonly string[][] FirstHeaders =
        [
            ["file", "parts", "starts_at", "duration_seconds"],
            ["starts_on", "iso_week", "finished", "hours"],
            ["rule", "limits", "evidence", "source"],
        ];

        public static bool Are(IReadOnlyList<string> headers) =>
            FirstHeaders.Any(own => headers.Take(own.Length).SequenceEqual(own));
    }
}
