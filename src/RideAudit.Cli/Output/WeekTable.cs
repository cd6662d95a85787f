using RideAudit.Cli.Terminal;
using RideAudit.Document;
using RideAudit.Formatting;

namespace RideAudit.Cli.Output;

/// <summary>One row a week, for reading.</summary>
internal static class WeekTable
{
    private static readonly IReadOnlyList<Column<WeekEntry>> Columns =
    [
        new("week of", w => Say.Iso(w.StartsOn)),
        new("ISO", w => w.IsoWeek?.ToString() ?? "–") { Priority = 5 },
        new("hours", w => Say.Number(w.Hours, 1)) { Right = true },
        new("rides", w => Say.Number(w.RideCount)) { Right = true },
        new("stress", w => Say.Number(w.Stress)) { Right = true },
        new("low", w => Say.Percent(w.SplitByTime?.Low)) { Right = true },
        new("mid", w => Say.Percent(w.SplitByTime?.Middle)) { Right = true, Priority = 6 },
        new("high", w => Say.Percent(w.SplitByTime?.High)) { Right = true, Priority = 6 },
        new("hard", w => Say.Number(w.Days.Count(d => d.IsHard))) { Right = true, Priority = 2 },
        new("longest", w => w.LongestRideSeconds > 0 ? Say.Duration(w.LongestRideSeconds) : "–") { Right = true, Priority = 4 },
        new("acute", w => Say.Number(w.AcuteLoad, 1)) { Right = true, Priority = 8 },
        new("chronic", w => Say.Number(w.ChronicLoad, 1)) { Right = true, Priority = 1 },
        new("ramp", w => Say.Signed(w.RampPerWeek, 1)) { Right = true, Priority = 1 },
        new("monotony", w => Say.Number(w.Monotony, 2)) { Right = true, Priority = 7 },
        new("work kJ", w => Say.Number(w.WorkKj)) { Right = true, Priority = 9 },
        new("note", Note) { Priority = 1 },
    ];

    /// <summary>Writes the table.</summary>
    public static void Write(Page page, IReadOnlyList<WeekEntry> weeks) => TextTable.Write(page, Columns, weeks);

    private static Piece Note(WeekEntry week) => string.Join(", ", new[]
    {
        week.Finished ? null : "unfinished",
        Words.OrNull(week.Exception),
        week.SettlingIn ? "settling in" : null,
    }.Where(n => n is not null));
}
