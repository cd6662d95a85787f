namespace RideAudit.Ingest.Csv;

/// <summary>Counts the cells of a CSV file that could not be read and remembers the first.</summary>
internal sealed class CsvFaults
{
    private const int MostShownCharacters = 20;

    private int _rows;
    private int _cells;
    private int _kinds;
    private string? _firstKind;

    public string? First { get; private set; }

    public bool Any => First is not null || _kinds > 0;

    public string Sentence
    {
        get
        {
            var parts = new List<string>();
            if (_rows > 0)
                parts.Add($"{_rows} {(_rows == 1 ? "row has" : "rows have")} no time, date or length that could be read and {(_rows == 1 ? "is" : "are")} left out");
            if (_cells > 0)
                parts.Add($"{_cells} {(_cells == 1 ? "cell" : "cells")} could not be read and {(_cells == 1 ? "counts" : "count")} as missing");
            var sentence = parts.Count > 0 ? $"{string.Join("; ", parts)} (the first: {First})." : "";
            return _kinds == 0 ? sentence : $"{sentence} {_kinds} {(_kinds == 1 ? "kind is" : "kinds are")} not known and {(_kinds == 1 ? "is" : "are")} left out (the first: {_firstKind}); allowed: {RideKinds.Allowed}.".TrimStart();
        }
    }

    public void Row(long line, string header, string text)
    {
        _rows++;
        Remember(line, header, text);
    }

    public void Cell(long line, string header, string text)
    {
        _cells++;
        Remember(line, header, text);
    }

    /// <summary>A kind that is none; the rest of its row counts.</summary>
    public void Kind(long line, string header, string text)
    {
        _kinds++;
        _firstKind ??= Place(line, header, text);
    }

    private void Remember(long line, string header, string text) => First ??= Place(line, header, text);

    private static string Place(long line, string header, string text) =>
        $"line {line}, column {ShownName.Of(header)}: “{ShownName.Of(text.Length > MostShownCharacters ? text[..MostShownCharacters] + "…" : text)}”";
}
