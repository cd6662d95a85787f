using System.Collections.Immutable;
using System.Text;
using CsvHelper;

namespace RideAudit.Plan.Table;

/// <summary>Reads a plan table: a row a session, in any order of columns, as this program or any spreadsheet writes it.</summary>
/// <remarks>RFC 4180 (Shafranovich 2005), with semicolons and tabs as well. What cannot be read is named with its line and column and stops nothing.</remarks>
public static class PlanTableReader
{
    private const int LargestRecordBytes = 1 << 20;

    /// <summary>Whether a header row is that of a plan table, and not of a log of ridden rides.</summary>
    /// <param name="header">The header row.</param>
    public static bool IsPlanHeader(IReadOnlyList<string> header) => PlanHeader.Is(header);

    /// <summary>Whether a text begins with the header of a plan table.</summary>
    /// <param name="text">The text; its first line is enough.</param>
    public static bool IsPlan(string text)
    {
        try
        {
            using var csv = Open(text.AsSpan().TrimStart('\uFEFF').ToString());
            csv.ReadHeader();
            return IsPlanHeader(csv.Headers);
        }
        catch (CsvFormatException)
        {
            return false;
        }
    }

    /// <summary>Reads a table.</summary>
    /// <param name="text">The text, with or without a byte-order mark.</param>
    /// <param name="name">The file's name, for the messages.</param>
    public static PlanSheet Read(string text, string name)
    {
        var marked = text.StartsWith('\uFEFF');
        var plain = marked ? text[1..] : text;
        var empty = PlanSheet.New(name) with { Separator = SeparatorOf(plain), CarriageReturns = plain.Contains("\r\n", StringComparison.Ordinal), ByteOrderMark = marked };
        try
        {
            using var csv = Open(plain);
            return Read(csv, empty);
        }
        catch (CsvFormatException fault)
        {
            return empty with { Mistakes = [new PlanMistake(name, (int)fault.LineNumber, "", 0, fault.Message.TrimEnd('.'), "rows of CSV")] };
        }
    }

    private static CsvReader Open(string text) => CsvReader.Create(Encoding.UTF8.GetBytes(text), new CsvReaderOptions
    {
        Separator = SeparatorOf(text),
        TrackLineNumbers = true,
        TrimWhitespace = true,
        MaxRecordSize = LargestRecordBytes,
        FieldCountMismatch = CsvFieldCountHandling.Allow,
        MalformedData = CsvMalformedDataHandling.Recover,
    });

    private static PlanSheet Read(CsvReader csv, PlanSheet empty)
    {
        csv.ReadHeader();
        ImmutableArray<string> header = [.. csv.Headers];
        if (!IsPlanHeader(header))
            return empty with { Mistakes = [new PlanMistake(empty.Name, 1, "", 0, "no header of a plan table", "columns date, kind and minutes")] };
        var rows = new List<(int Line, ImmutableArray<string> Cells)>();
        while (csv.Read())
            rows.Add(((int)csv.LineNumber, [.. Enumerable.Range(0, csv.FieldCount).Select(csv.GetString)]));
        var sheet = empty with { Header = header, Columns = PlanHeader.Understand(header) };
        var dates = PlanDates.Of(rows.Select(r => Cell(r.Cells, sheet.Columns[PlanColumn.Date])), sheet.Separator);
        var reading = new PlanRowReader(sheet, dates);
        return sheet with { Rows = [.. rows.Select(r => reading.Read(r.Line, r.Cells))], Mistakes = [.. reading.Mistakes] };
    }

    internal static string Cell(ImmutableArray<string> cells, int at) => at < cells.Length ? cells[at].Trim() : "";

    // The header has no quoted separators of its own, a note may hold more of another one: the header decides.
    private static char SeparatorOf(string text)
    {
        var header = text.AsSpan().TrimStart("\r\n");
        if (header.IndexOfAny('\r', '\n') is >= 0 and var end)
            header = header[..end];
        var (commas, semicolons, tabs) = (header.Count(','), header.Count(';'), header.Count('\t'));
        return semicolons > commas && semicolons >= tabs ? ';' : tabs > commas ? '\t' : ',';
    }
}
