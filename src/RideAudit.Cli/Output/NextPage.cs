using RideAudit.Cli.Terminal;
using RideAudit.Document.Layouts;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Rules;

namespace RideAudit.Cli.Output;

/// <summary>Weeks to come for reading: laid out, or planned and judged before they are ridden.</summary>
internal static class NextPage
{
    private const int TextColumn = 31;
    private const string KnowsLighter = "Its review knows so from the plan table (--plan), else from [[exception]] with kind = \"lighter\" in the rider file.";

    /// <summary>Writes the weeks.</summary>
    /// <param name="document">The weeks.</param>
    /// <param name="written">Files that were written, as typed.</param>
    public static void Write(Page page, NextDocument document, params IReadOnlyList<string> written)
    {
        foreach (var week in document.Weeks)
        {
            Week(page, document, week);
            page.Blank();
        }
        foreach (var note in document.Notes)
            page.Text(note);
        page.Text(document.Cautions[0] + " " + document.Cautions[^2], Tone.Quiet);
        if (written.Count > 0)
            page.Text("Wrote " + string.Join(", ", written), Tone.Strong);
    }

    private static void Week(Page page, NextDocument document, NextWeekEntry week)
    {
        page.Text(Title(page, document, week), Tone.Strong);
        page.Text($"{document.Rider.Label}{page.Marks.Dot}{Sums(week)}", Tone.Quiet);
        page.Blank();
        foreach (var day in week.Days)
            Day(page, day);
        page.Blank();
        foreach (var note in week.Notes)
            page.Text(note);
        if (week.ProposedLighter)
            page.Text(KnowsLighter);
        if (week.GaveWay is { } gave)
            page.Text(gave.Sentence);
        Judged(page, week);
        if (week.SmallestChange is { } change)
            page.Text(change.Sentence);
    }

    private static string Title(Page page, NextDocument document, NextWeekEntry week)
    {
        var what = document.Schema == NextDocument.Checked ? "Planned for" : "A layout for";
        var title = $"{what} {(week.From > week.StartsOn ? "the rest of " : "")}the week of {Shown.FullDate(week.StartsOn)}";
        if (week.IsoWeek is { } iso)
            title += $"{page.Marks.Dot}ISO week {Shown.Number(iso.Number)}";
        return week.Exception is { } exception ? $"{title}{page.Marks.Dot}{Words.Of(exception)} week"
            : week.ProposedLighter ? $"{title}{page.Marks.Dot}lighter week"
            : title;
    }

    private static string Sums(NextWeekEntry week) =>
        (week.AskedOtherwise is { } asked ? $"{Shown.Hours(week.Hours)} of {Shown.Hours(asked)} asked for" : Shown.Hours(week.Hours))
        + $", about {Shown.Points(week.ExpectedStress)} of training stress";

    private static void Day(Page page, NextDayEntry day)
    {
        if (day.RiddenMinutes > 0)
        {
            page.Line([new(Lead(Shown.ShortDay(day.Date), Words.Of(day.Kind), Shown.TableLength(day.RiddenMinutes * 60)), Tone.Quiet), new("Ridden.", Tone.Quiet)]);
            return;
        }
        if (day.Sessions.IsEmpty)
        {
            var kind = day.Exception is { } why and not ExceptionKind.Lighter ? Words.Of(why) : "rest";
            page.Line([new(Lead(Shown.ShortDay(day.Date), kind, ""), Tone.Quiet)]);
            return;
        }
        var date = Shown.ShortDay(day.Date);
        foreach (var session in day.Sessions)
        {
            var tone = PlannedKinds.IsHard(session.Kind) ? Tone.Strong : Tone.Plain;
            var time = session.Minutes > 0 ? Shown.TableLength(session.Minutes * 60) : "";
            page.Hanging(new Piece(Lead(date, Words.Of(session.Kind), time), tone), Told(session), column: TextColumn);
            date = "";
        }
    }

    private static string Lead(string date, string kind, string time) => $"{Wrap.Pad(date, 8)}{Wrap.Pad(kind, 11)}{Wrap.PadLeft(time, 10)}  ";

    private static string Told(NextSessionEntry session) =>
        string.Join(' ', new[] { session.Session is { } name ? $"{Shown.Capital(name)}." : "", session.Sentence, Range(session) }.Where(t => t.Length > 0));

    private static string Range(NextSessionEntry session) =>
        session.MinutesFrom == session.MinutesTo ? ""
        : session.MinutesTo < 60 ? $"{Shown.Range(session.MinutesFrom, session.MinutesTo, "min")} will do."
        : $"{Shown.Length(session.MinutesFrom * 60)} to {Shown.Length(session.MinutesTo * 60)} will do.";

    private static void Judged(Page page, NextWeekEntry week)
    {
        if (week.Verdicts.IsDefaultOrEmpty)
            return;
        var counts = new[] { Verdict.Broken, Verdict.Watch, Verdict.Kept, Verdict.NotJudged }
            .Select(v => (Verdict: v, Count: week.Verdicts.Count(f => f.Verdict == v)))
            .Where(c => c.Count > 0)
            .Select(c => $"{c.Count} {Words.Of(c.Verdict)}");
        page.Text($"Ridden exactly so, the rules would say: {string.Join(", ", counts)}.");
        foreach (var finding in week.Verdicts.Where(f => f.Verdict is Verdict.Broken or Verdict.Watch).OrderByDescending(f => f.Verdict))
            page.Hanging(new Piece(page.Marks.Of(finding.Verdict) + " ", Marks.ToneOf(finding.Verdict)), $"{finding.Rule}: {finding.Sentence}");
    }
}
