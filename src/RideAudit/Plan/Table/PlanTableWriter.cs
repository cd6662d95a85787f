using System.Collections.Immutable;
using System.Globalization;
using CsvHelper;
using RideAudit.Formatting;

namespace RideAudit.Plan.Table;

/// <summary>Writes plan tables: new ones, and those that were read, with their own separator, line ends and unknown columns.</summary>
public static class PlanTableWriter
{
    /// <summary>The text of a table.</summary>
    /// <param name="sheet">The table.</param>
    public static string Write(PlanSheet sheet)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        var options = new CsvWriterOptions
        {
            Separator = sheet.Separator,
            NewLine = sheet.CarriageReturns ? "\r\n" : "\n",
            ValidateFieldCount = false,
            Quoting = CsvQuoting.WhenNeededOrWhitespace,
        };
        using (var csv = CsvWriter.Create(text, options, leaveOpen: true))
        {
            csv.WriteRecord([.. sheet.Header]);
            foreach (var row in sheet.Rows)
                csv.WriteRecord([.. row.Cells]);
            csv.Flush();
        }
        return (sheet.ByteOrderMark ? "\uFEFF" : "") + text;
    }

    /// <summary>Lays a span of days out anew in a table: rows that this program wrote before are replaced, rows made or changed by hand stay as they are.</summary>
    /// <remarks>A day on which a row made by hand stands is that row's alone: what was laid out for it is not written.</remarks>
    /// <param name="sheet">The table.</param>
    /// <param name="sessions">What is laid out; those outside the span are ignored.</param>
    /// <param name="from">The span's first day.</param>
    /// <param name="to">The span's last day.</param>
    /// <returns>The table, and the sessions that were not written because of rows made by hand.</returns>
    public static (PlanSheet Sheet, ImmutableArray<PlannedSession> LeftOut) Update(
        PlanSheet sheet, ImmutableArray<PlannedSession> sessions, NodaTime.LocalDate from, NodaTime.LocalDate to)
    {
        sheet = WithColumns(sheet, sessions.Any(s => s.Exception is not null));
        var byHand = sheet.Rows.Where(r => r.Session is { MadeHere: false }).Select(r => r.Session!.Date).ToHashSet();
        var asked = sessions.Where(s => s.Date >= from && s.Date <= to).OrderBy(s => s.Date).ToList();
        var rows = sheet.Rows.Where(r => r.Session is not { MadeHere: true } old || old.Date < from || old.Date > to).ToList();
        foreach (var session in asked.Where(s => !byHand.Contains(s.Date)))
        {
            // In front of the first later day, so that a table in order stays in order.
            var at = rows.FindIndex(r => r.Session is { } there && there.Date > session.Date);
            rows.Insert(at < 0 ? rows.Count : at, RowOf(session, sheet));
        }
        return (sheet with { Rows = [.. rows] }, [.. asked.Where(s => byHand.Contains(s.Date))]);
    }

    private static PlanSheet WithColumns(PlanSheet sheet, bool anyExcepted)
    {
        foreach (var column in Enum.GetValues<PlanColumn>().Where(c => !sheet.Columns.ContainsKey(c) && (anyExcepted || c != PlanColumn.Exception)))
            sheet = sheet with { Header = sheet.Header.Add(PlanHeader.NameOf(column)), Columns = sheet.Columns.Add(column, sheet.Header.Length) };
        return sheet;
    }

    private static PlanRow RowOf(PlannedSession session, PlanSheet sheet)
    {
        // What is written is what will be read: the mark is a sum over the rounded stress and the trimmed words.
        session = session with
        {
            Session = Trimmed(session.Session),
            Note = Trimmed(session.Note),
            Stress = session.Stress is { } stress ? Math.Round(stress, 1) : null,
        };
        var cells = Enumerable.Repeat("", sheet.Header.Length).ToArray();
        foreach (var (column, at) in sheet.Columns)
            cells[at] = CellOf(session, column, sheet.Separator == ';');
        return new PlanRow(0, [.. cells], session with { MadeHere = true });
    }

    private static string CellOf(PlannedSession session, PlanColumn column, bool decimalComma) => column switch
    {
        PlanColumn.Date => session.Date.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture),
        PlanColumn.Kind => PlannedKinds.WordOf(session.Kind),
        PlanColumn.Minutes => session.Minutes?.ToString(CultureInfo.InvariantCulture) ?? "",
        PlanColumn.Session => session.Session ?? "",
        PlanColumn.Note => session.Note ?? "",
        PlanColumn.Stress => Number(session.Stress, decimalComma),
        PlanColumn.Blocks => session.Blocks?.ToString() ?? "",
        PlanColumn.Exception => Words.OrNull(session.Exception) ?? "",
        _ => PlanMark.Of(session),
    };

    private static string Number(double? value, bool decimalComma)
    {
        var text = value?.ToString("0.#", CultureInfo.InvariantCulture) ?? "";
        return decimalComma ? text.Replace('.', ',') : text;
    }

    private static string? Trimmed(string? text) => text?.Trim() is { Length: > 0 } trimmed ? trimmed : null;
}
