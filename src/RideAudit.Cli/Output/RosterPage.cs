using RideAudit.Cli.Terminal;
using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Rules;

namespace RideAudit.Cli.Output;

/// <summary>A roster for reading: who needs the coach first, and why.</summary>
internal static class RosterPage
{
    /// <summary>Writes two lines a rider.</summary>
    /// <param name="output">The folder written into, as typed.</param>
    /// <param name="next">Lines on the week to come of the rider of a folder; null: none was laid out.</param>
    public static void Write(Page page, RosterDocument roster, string output, Func<string, IEnumerable<string>>? next = null)
    {
        page.Text($"{Shown.Tally(roster.Riders.Length, "rider")} as of {Shown.FullDate(roster.AsOf)}, who needs you first at the top", Tone.Strong);
        page.Blank();
        var width = Shown.Number(roster.Riders.Length).Length;
        for (var i = 0; i < roster.Riders.Length; i++)
            Rider(page, roster.Riders[i], Wrap.PadLeft(Shown.Number(i + 1), width), next?.Invoke(roster.Riders[i].Folder) ?? []);
        page.Blank();
        page.Text($"Wrote {output}{Path.DirectorySeparatorChar}: overview.pdf, overview.csv, overview.json{(next is null ? "" : ", next.csv")} and a review{(next is null ? "" : " and a calendar")} of each rider", Tone.Strong);
    }

    private static void Rider(Page page, RosterEntry rider, string number, IEnumerable<string> next)
    {
        var verdict = VerdictOf(rider);
        var lead = $"{number} {page.Marks.Of(verdict)} ";
        page.Line([new(lead, Marks.ToneOf(verdict)), new(rider.Label, Tone.Strong), rider.Label == rider.Folder ? "" : $" ({rider.Folder})", new(Figures(rider), Tone.Quiet)]);
        page.Text(rider.Why, indent: Cells.Of(page.Marks.Show(lead)));
        foreach (var line in next)
            page.Text(line, indent: Cells.Of(page.Marks.Show(lead)));
    }

    private static Verdict VerdictOf(RosterEntry rider) => rider.Need switch
    {
        RosterNeed.Broken => Verdict.Broken,
        RosterNeed.Watch => Verdict.Watch,
        RosterNeed.Kept => Verdict.Kept,
        _ => Verdict.NotJudged,
    };

    private static string Figures(RosterEntry rider)
    {
        if (rider.Hours is not { } hours)
            return "  no review";
        var counts = new List<string>();
        if (rider.Broken.Length > 0)
            counts.Add($"{rider.Broken.Length} broken");
        if (rider.Watch.Length > 0)
            counts.Add($"{rider.Watch.Length} to watch");
        counts.Add(rider.PlannedHours is { } planned ? $"{Shown.Number(hours, 1)} of {Shown.Hours(planned)}" : Shown.Hours(hours));
        counts.Add($"ramp {Shown.Signed(rider.RampPerWeek, 1)}");
        if (rider.Exception is { } exception)
            counts.Add($"{Words.Of(exception)} week");
        return "  " + string.Join(", ", counts);
    }
}
