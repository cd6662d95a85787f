using CsvHelper;

namespace RideAudit.Ingest.Csv;

/// <summary>Reads a CSV file: one recording of a row a second, or a ride log of a row a ride.</summary>
/// <remarks>RFC 4180 (Shafranovich 2005), with semicolons and tabs as well, and a decimal comma where the separator is a semicolon.</remarks>
internal static class CsvReading
{
    private const int LargestRecordBytes = 1 << 20;

    public static FileContent Read(string name, byte[] bytes, IngestContext context)
    {
        try
        {
            using var csv = CsvReader.Create(bytes, new CsvReaderOptions
            {
                TrackLineNumbers = true,
                TrimWhitespace = true,
                MaxRecordSize = LargestRecordBytes,
                FieldCountMismatch = CsvFieldCountHandling.Allow,
                MalformedData = CsvMalformedDataHandling.Recover,
            });
            csv.ReadHeader();
            var columns = CsvHeader.Understand(csv.Headers, context.Rider.CsvColumns);
            bool Has(CsvChannel channel) => columns.Any(c => c.Channel == channel);
            if (Has(CsvChannel.Date) && Has(CsvChannel.Minutes))
                return RideLogReader.Read(name, csv, columns, context);
            if (!Has(CsvChannel.Time))
                return FileContent.Unusable(name, "no time column", $"No column of seconds or timestamps was found among: {Shown(csv.Headers)}. Name it under [csv] in the rider file.");
            if (columns.Length == 1)
                return FileContent.Unusable(name, "no data column", $"No power, heart rate, cadence, speed, altitude or distance was found among: {Shown(csv.Headers)}. Name them under [csv] in the rider file.");
            return CsvRideReader.Read(name, csv, columns, context);
        }
        catch (CsvFormatException e)
        {
            return FileContent.Unusable(name, "not a CSV file", $"The rows could not be read: {e.Message}");
        }
    }

    private static string Shown(IReadOnlyList<string> headers)
    {
        var shown = string.Join(", ", headers.Take(12).Select(h => h.Length > 24 ? h[..24] + "…" : h));
        return headers.Count == 0 ? "nothing" : headers.Count > 12 ? shown + ", …" : shown;
    }
}
