using RideAudit.Cli.Terminal;
using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Rules;

namespace RideAudit.Cli.Output;

/// <summary>A roster for reading: riders by rules in marks, then each rider with the reason, four weeks in small and what is known besides, then what is told together.</summary>
internal static class RosterPage
{
    private const int RoomyCells = 70;
    private const int LeastLabel = 8;

    /// <summary>Writes the desk.</summary>
    /// <param name="page">Where to.</param>
    /// <param name="roster">The roster.</param>
    /// <param name="output">The folder written into, as typed.</param>
    /// <param name="next">Lines on the week to come of the rider of a folder; null: none was laid out.</param>
    public static void Write(Page page, RosterDocument roster, string output, Func<string, IEnumerable<string>>? next = null)
    {
        page.Text($"{Shown.Tally(roster.Riders.Length, "rider")} as of {Shown.FullDate(roster.AsOf)}, who needs you first at the top", Tone.Strong);
        page.Blank();
        Matrix(page, roster);
        var width = Shown.Number(roster.Riders.Length).Length;
        for (var i = 0; i < roster.Riders.Length; i++)
            Rider(page, roster.Riders[i], Wrap.PadLeft(Shown.Number(i + 1), width), next?.Invoke(roster.Riders[i].Folder) ?? []);
        Together(page, roster);
        page.Blank();
        page.Text($"Wrote {output}{Path.DirectorySeparatorChar}: overview.pdf, overview.csv, overview.json{(next is null ? "" : ", next.csv")} and a review{(next is null ? "" : " and a calendar")} of each rider", Tone.Strong);
    }

    // A letter a rule, a mark a rider: the letters are told under the marks.
    private static void Matrix(Page page, RosterDocument roster)
    {
        RosterEntry.RuleVerdict[] rules = [.. roster.Riders.SelectMany(r => r.Verdicts).DistinctBy(v => v.Rule)];
        var width = Shown.Number(roster.Riders.Length).Length;
        var cell = page.Measure >= RoomyCells ? 2 : 1;
        if (rules.Length == 0 || page.Measure < width + 1 + (cell * rules.Length) + 1 + LeastLabel)
            return;
        var letters = string.Concat(rules.Select((_, i) => Wrap.Pad(Letter(i), cell)));
        page.Line([new string(' ', width + 1), new Piece(letters, Tone.Quiet)]);
        for (var i = 0; i < roster.Riders.Length; i++)
        {
            var rider = roster.Riders[i];
            var marks = rules.Select(rule => rider.Verdicts.FirstOrDefault(v => v.Rule == rule.Rule) is { } known
                ? new Piece(Wrap.Pad(page.Marks.Of(known.Verdict), cell), Marks.ToneOf(known.Verdict))
                : new Piece(new string(' ', cell)));
            var room = page.Measure - width - 2 - (cell * rules.Length);
            var label = Wrap.Shorten(page.Marks.Show($"{rider.Label}, {Words.Of(rider.Need)}"), room, page.Marks.Dots);
            page.Line([Wrap.PadLeft(Shown.Number(i + 1), width) + " ", .. marks, " " + label]);
        }
        page.Text(string.Join(", ", rules.Select((rule, i) => $"{Letter(i)}\u00A0{Uncapital(rule.Name)}")), Tone.Quiet, indent: width + 1);
        page.Blank();
    }

    private static void Rider(Page page, RosterEntry rider, string number, IEnumerable<string> next)
    {
        var verdict = VerdictOf(rider);
        var lead = $"{number} {page.Marks.Of(verdict)} ";
        var indent = Cells.Of(page.Marks.Show(lead));
        var folder = rider.Label == rider.Folder ? "" : $" ({rider.Folder})";
        page.Hanging(new Piece(lead, Marks.ToneOf(verdict)), $"{rider.Label}{folder}, {Words.Of(rider.Need)}", Tone.Strong);
        page.Text(rider.Why, indent: indent);
        if (!rider.Weeks.IsEmpty)
            Weeks(page, rider, indent);
        foreach (var fact in rider.Facts)
            page.Text(fact, Tone.Quiet, indent);
        foreach (var line in next)
            page.Text(line, indent: indent);
    }

    // A day a character: how high says how much of the heaviest day's stress it held.
    private static void Weeks(Page page, RosterEntry rider, int indent)
    {
        var most = rider.Weeks.SelectMany(w => w.Days).Max(d => d.Stress ?? 0);
        var weeks = rider.Weeks.Select(w => string.Concat(w.Days.Select(d => page.Marks.Bar(d.Hours <= 0 ? 0 : d.Stress is { } stress && most > 0 ? stress / most : null))));
        var said = rider.Weeks.Length == 1 ? "this week by day" : $"{Shown.InWords(rider.Weeks.Length)} weeks by day";
        page.Text($"{string.Join(' ', weeks)}  {said}", Tone.Quiet, indent);
    }

    private static void Together(Page page, RosterDocument roster)
    {
        if (roster.Shared.IsEmpty)
            return;
        page.Blank();
        page.Text("Told together", Tone.Strong);
        foreach (var shared in roster.Shared)
        {
            var labels = Shown.List(roster.Riders.Where(r => shared.Riders.Contains(r.Folder)).Select(r => r.Label));
            page.Hanging(new Piece($"{page.Marks.Of(shared.Verdict)} ", Marks.ToneOf(shared.Verdict)), $"{shared.Name}, {Words.Of(shared.Verdict)}: {labels}.");
        }
    }

    private static string Letter(int rule) => ((char)('a' + rule)).ToString();

    private static string Uncapital(string name) => char.ToLowerInvariant(name[0]) + name[1..];

    private static Verdict VerdictOf(RosterEntry rider) => rider.Need switch
    {
        RosterNeed.Broken => Verdict.Broken,
        RosterNeed.Watch => Verdict.Watch,
        RosterNeed.Kept => Verdict.Kept,
        _ => Verdict.NotJudged,
    };
}
