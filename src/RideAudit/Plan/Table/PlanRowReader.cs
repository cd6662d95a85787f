using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using RideAudit.Formatting;
using RideAudit.Plan.Blocks;
using RideAudit.Plan.Toml;

namespace RideAudit.Plan.Table;

/// <summary>Reads the rows of one table and gathers what is wrong with them.</summary>
internal sealed class PlanRowReader(PlanSheet sheet, PlanDates dates)
{
    private const double MostMinutes = 24 * 60;
    private const double MostStress = 2000;

    public List<PlanMistake> Mistakes { get; } = [];

    public PlanRow Read(int line, ImmutableArray<string> cells)
    {
        var row = new PlanRow(line, cells, null);
        if (cells.All(c => c.Trim().Length == 0))
            return row;
        var date = ReadDate(row);
        var kind = ReadKind(row);
        var readable = ReadMinutes(row, kind, out var minutes);
        // A row with a broken stress or broken blocks still plans a day, a kind and a length.
        var stress = ReadStress(row);
        var blocks = ReadBlocks(row);
        var exception = ReadException(row);
        if (date is not { } day || kind is not { } what || !readable)
            return row;
        var session = new PlannedSession
        {
            Date = day,
            Kind = what,
            Minutes = minutes,
            Session = Text(row, PlanColumn.Session),
            Note = Text(row, PlanColumn.Note),
            Stress = stress,
            Blocks = blocks,
            Exception = exception,
        };
        return row with { Session = session with { MadeHere = PlanMark.Is(Text(row, PlanColumn.MadeBy), session) } };
    }

    private LocalDate? ReadDate(PlanRow row)
    {
        var cell = Cell(row, PlanColumn.Date);
        if (dates.Read(cell) is { } date)
            return date;
        Add(row, PlanColumn.Date, dates.IsOpen(cell) ? $"{cell}, which could be two days" : Found(cell), "a date such as 2026-05-18");
        return null;
    }

    private PlannedKind? ReadKind(PlanRow row)
    {
        var cell = Cell(row, PlanColumn.Kind);
        foreach (var (word, kind) in PlannedKinds.Words)
        {
            if (word.Equals(cell, StringComparison.OrdinalIgnoreCase))
                return kind;
        }
        Add(row, PlanColumn.Kind, Found(cell), TomlSection.Words(PlannedKinds.Words), cell.Length > 0 ? NearestName.Of(cell, PlannedKinds.Words.Select(w => w.Word)) : null);
        return null;
    }

    private bool ReadMinutes(PlanRow row, PlannedKind? kind, out int? minutes)
    {
        var cell = Cell(row, PlanColumn.Minutes);
        minutes = null;
        if (kind == PlannedKind.Rest)
        {
            if (cell.Length == 0 || Number(cell) == 0)
                return true;
            Add(row, PlanColumn.Minutes, Found(cell), "nothing on a rest day");
            return false;
        }
        if (cell.Length == 0 && kind is PlannedKind.Event or null)
            return true;
        if (Number(cell) is { } number && number >= 1 && number <= MostMinutes && number == Math.Floor(number))
        {
            minutes = (int)number;
            return true;
        }
        Add(row, PlanColumn.Minutes, Found(cell), "whole minutes from 1 to 1440");
        return false;
    }

    private double? ReadStress(PlanRow row)
    {
        var cell = Cell(row, PlanColumn.Stress);
        if (cell.Length == 0)
            return null;
        if (Number(cell) is { } stress && stress is >= 0 and <= MostStress)
            return stress;
        Add(row, PlanColumn.Stress, Found(cell), "points from 0 to 2000, or nothing");
        return null;
    }

    private SessionBlocks? ReadBlocks(PlanRow row)
    {
        if (Text(row, PlanColumn.Blocks) is not { } text)
            return null;
        var blocks = SessionBlocks.Read(text, out var mistakes);
        foreach (var mistake in mistakes)
            Add(row, PlanColumn.Blocks, $"{mistake.Found} at letter {mistake.Column}", mistake.Allowed, mistake.Nearest);
        return blocks;
    }

    private ExceptionKind? ReadException(PlanRow row)
    {
        if (Text(row, PlanColumn.Exception) is not { } text)
            return null;
        if (Words.Find<ExceptionKind>(text.ToLowerInvariant()) is { } exception)
            return exception;
        string[] allowed = [.. Enum.GetValues<ExceptionKind>().Select(Words.Of)];
        Add(row, PlanColumn.Exception, Found(text), $"{Shown.List(allowed)}, or nothing", NearestName.Of(text, allowed));
        return null;
    }

    // Points of stress and minutes never reach a thousand with a separator: a comma is always the decimal one.
    private static double? Number(string cell) =>
        double.TryParse(cell.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) ? number : null;

    private string Cell(PlanRow row, PlanColumn column) => sheet.Columns.TryGetValue(column, out var at) ? PlanTableReader.Cell(row.Cells, at) : "";

    private string? Text(PlanRow row, PlanColumn column) => Cell(row, column) is { Length: > 0 } text ? text : null;

    private void Add(PlanRow row, PlanColumn column, string found, string allowed, string? nearest = null) =>
        Mistakes.Add(sheet.MistakeAt(row, column, found, allowed) with { Nearest = nearest });

    private static string Found(string cell) => cell.Length == 0 ? "an empty cell" : TomlWords.Shortened(cell);
}
