using RideAudit.Cli.Terminal;
using RideAudit.Document;
using RideAudit.Formatting;

namespace RideAudit.Cli.Output;

/// <summary>The weeks before in plain text.</summary>
internal static class PlainHistory
{
    private static readonly IReadOnlyList<Column<HistoryEntry>> Columns =
    [
        new("week of", h => Shown.Iso(h.StartsOn)),
        new("hours", h => Shown.Number(h.Hours, 1)) { Right = true },
        new("low h", h => Hours(h.BandSeconds.Low)) { Right = true },
        new("mid h", h => Hours(h.BandSeconds.Middle)) { Right = true, Priority = 1 },
        new("high h", h => Hours(h.BandSeconds.High)) { Right = true },
        new("stress", h => Shown.Number(h.Stress)) { Right = true },
        new("chronic", h => Shown.Number(h.ChronicLoad, 1)) { Right = true },
        new("ramp", h => Shown.Signed(h.RampPerWeek, 1)) { Right = true },
        new("note", h => string.Join(", ", new[] { Words.OrNull(h.Exception), h.SettlingIn ? "settling in" : null }.Where(n => n is not null))),
    ];

    /// <summary>Writes a row a week.</summary>
    public static void Write(Page page, ReviewDocument document)
    {
        if (document.History.IsEmpty)
            return;
        PlainReview.Section(page, "The weeks before");
        TextTable.Write(page, Columns, document.History);
    }

    private static string Hours(double seconds) => Shown.Number(seconds / 3600.0, 1);
}
