namespace RideAudit.Ingest.Csv;

/// <summary>Counts the cells of a CSV file that could not be read and remembers the first.</summary>
internal sealed class CsvFaults
{
    private const int MostShownCharacters = 20;

    private int _rows;
    private int _cells;

    public string? First { get; private set; }

    public string Sentence
    {
        get
        {
            var parts = new List<string>();
            if (_rows > 0)
                parts.Add($"{_rows} {(_rows == 1 ? "row has" : "rows have")} no time, date or length that could be read and {(_rows == 1 ? "is" : "are")} left out");
            if (_cells > 0)
                parts.Add($"{_cells} {(_cells == 1 ? "cell" : "cells")} could not be read and {(_cells == 1 ? "counts" : "count")} as missing");
            return $"{string.Join("; ", parts)} (the first: {First}).";
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

    private void Remember(long line, string header, string text) =>
        First ??= $"line {line}, column {ShownName.Of(header)}: “{ShownName.Of(text.Length > MostShownCharacters ? text[..MostShownCharacters] + "…" : text)}”";
}
