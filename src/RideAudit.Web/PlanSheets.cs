using System.Collections.Immutable;
using NodaTime;
using NodaTime.Text;
using RideAudit.Document.Layouts;
using RideAudit.Ingest;
using RideAudit.Next;
using RideAudit.Plan.Table;

namespace RideAudit.Web;

/// <summary>The plan tables while the page edits them: a cell is text, and a table is read again after every change, as its file would be.</summary>
internal sealed class PlanSheets
{
    private static readonly PlanColumn[] Edited =
        [PlanColumn.Date, PlanColumn.Kind, PlanColumn.Minutes, PlanColumn.Session, PlanColumn.Note, PlanColumn.Stress, PlanColumn.Blocks, PlanColumn.Exception];

    private ImmutableArray<PlanSheet> _sheets = [];
    private bool _isEdited;

    /// <summary>Takes the tables among the files, unless they were edited here.</summary>
    public void Take(FolderContent content) => _sheets = _isEdited ? _sheets : content.PlanSheets;

    /// <summary>The files with the tables as they are here.</summary>
    public FolderContent In(FolderContent content) => _isEdited ? content.WithPlan(_sheets) : content;

    /// <summary>Changes a row, adds one, or takes one out.</summary>
    public void Change(RowChange change)
    {
        var sheet = Sheet(change.Table);
        var row = change.Row is { } at ? sheet.Rows[at] : null;
        if (row is not null && change.Cells is null)
            Keep(sheet with { Rows = sheet.Rows.Remove(row) });
        else if (change.Cells is { } cells)
            Keep(row is null ? Added(sheet, cells) : Changed(sheet, row, cells));
    }

    /// <summary>Lays weeks out in the table that the program keeps, else in the first one.</summary>
    /// <returns>Days of which nothing was written, because a row made by hand stands on them.</returns>
    public ImmutableArray<LocalDate> TakeOver(NextDocument weeks)
    {
        var (sheet, kept) = PlanRows.Update(Sheet(null), weeks, PlanTable.Merge(_sheets));
        Keep(sheet);
        return kept;
    }

    /// <summary>A table's text, with its byte-order mark.</summary>
    /// <param name="table">Its name; null for the one that rows are added to.</param>
    public string Text(string? table) => PlanTableWriter.Write(Sheet(table));

    /// <summary>Every row that is not blank, in the order of the tables.</summary>
    public IEnumerable<Row> Rows()
    {
        var mistakes = PlanTable.Merge(_sheets).Mistakes.ToLookup(m => (m.File, m.Line));
        foreach (var sheet in _sheets)
        {
            for (var at = 0; at < sheet.Rows.Length; at++)
            {
                var row = sheet.Rows[at];
                if (row.Cells.Any(c => c.Trim().Length > 0))
                    yield return Shown(sheet, at, row, string.Join(" ", mistakes[(sheet.Name, row.Line)].Select(Words)));
            }
        }
    }

    /// <summary>What is wrong with a whole table and not with one of its rows.</summary>
    public IEnumerable<string> Mistakes() => _sheets.SelectMany(s => s.Mistakes.Where(m => s.Rows.All(r => r.Line != m.Line)).Select(m => $"{s.Name}: {Words(m)}"));

    private static string Words(PlanMistake mistake) =>
        $"{(mistake.Column.Length > 0 ? $"Column {mistake.Column}: " : "")}{mistake.Found}; allowed: {mistake.Allowed}.{(mistake.Nearest is { } near ? $" Nearest: {near}." : "")}";

    private static Row Shown(PlanSheet sheet, int at, PlanRow row, string mistake) => new(
        sheet.Name,
        at,
        row.Session is { } session ? LocalDatePattern.Iso.Format(session.Date) : null,
        Edited.ToDictionary(NameOf, c => sheet.Columns.TryGetValue(c, out var cell) && cell < row.Cells.Length ? row.Cells[cell].Trim() : ""),
        row.Session is { MadeHere: true },
        mistake);

    private static PlanSheet Changed(PlanSheet sheet, PlanRow row, Dictionary<string, string> cells)
    {
        var at = sheet.Rows.IndexOf(row);
        var wide = Wide(sheet, cells);
        var changed = row.Cells.AddRange(Enumerable.Repeat("", Math.Max(0, wide.Header.Length - row.Cells.Length))).ToArray();
        foreach (var (name, text) in cells)
            changed[wide.Columns[Column(name)]] = text.ReplaceLineEndings(" ").Trim();
        return wide with { Rows = wide.Rows.SetItem(at, row with { Cells = [.. changed] }) };
    }

    // In front of the first later day, so that a table in order stays in order.
    private static PlanSheet Added(PlanSheet sheet, Dictionary<string, string> cells)
    {
        var day = cells.TryGetValue("date", out var text) && LocalDatePattern.Iso.Parse(text) is { Success: true } read ? read.Value : (LocalDate?)null;
        var later = day is null ? -1 : Enumerable.Range(0, sheet.Rows.Length).FirstOrDefault(i => sheet.Rows[i].Session is { } there && there.Date > day, -1);
        var row = new PlanRow(0, [.. Enumerable.Repeat("", sheet.Header.Length)], null);
        return Changed(sheet with { Rows = sheet.Rows.Insert(later < 0 ? sheet.Rows.Length : later, row) }, row, cells);
    }

    private static PlanSheet Wide(PlanSheet sheet, Dictionary<string, string> cells)
    {
        foreach (var column in cells.Keys.Select(Column).Where(c => !sheet.Columns.ContainsKey(c)))
            sheet = sheet with { Header = sheet.Header.Add(NameOf(column)), Columns = sheet.Columns.Add(column, sheet.Header.Length) };
        return sheet;
    }

    private static PlanColumn Column(string name) => Edited.First(c => NameOf(c) == name);

    private static string NameOf(PlanColumn column) => column.ToString().ToLowerInvariant();

    private PlanSheet Sheet(string? table) =>
        _sheets.FirstOrDefault(s => s.Name == table)
        ?? _sheets.FirstOrDefault(s => s.Name == FolderFiles.Plan)
        ?? _sheets.FirstOrDefault()
        ?? PlanSheet.New(FolderFiles.Plan);

    private void Keep(PlanSheet sheet)
    {
        var read = PlanTableReader.Read(PlanTableWriter.Write(sheet), sheet.Name);
        _sheets = [.. _sheets.Where(s => s.Name != sheet.Name).Append(read).OrderBy(s => s.Name, StringComparer.Ordinal)];
        _isEdited = true;
    }

    /// <summary>A row as the page shows it.</summary>
    /// <param name="Table">Its table.</param>
    /// <param name="At">Its place in the table, 0 first.</param>
    /// <param name="Date">Its day, ISO 8601; null where the row cannot be used.</param>
    /// <param name="Cells">The cells by column.</param>
    /// <param name="MadeHere">The program wrote it, and will write it anew.</param>
    /// <param name="Mistake">What cannot be read of it; empty where all can.</param>
    internal sealed record Row(string Table, int At, string? Date, Dictionary<string, string> Cells, bool MadeHere, string Mistake);

    /// <summary>What the page changes.</summary>
    /// <param name="Table">The table; null for the one that rows are added to.</param>
    /// <param name="Row">The row's place; null for a new one.</param>
    /// <param name="Cells">The cells that change, by column; null takes the row out.</param>
    internal sealed record RowChange(string? Table, int? Row, Dictionary<string, string>? Cells);
}
