using RideAudit.Cli.Terminal;
using RideAudit.Document;
using RideAudit.Formatting;

namespace RideAudit.Cli.Output;

/// <summary>The whole review as plain text in the three parts of the PDF: the week, its rules and the weeks before, its rides.</summary>
internal static class PlainReview
{
    /// <summary>The longest line.</summary>
    public const int Measure = 80;

    /// <summary>Writes the review.</summary>
    public static void Write(Page page, ReviewDocument document)
    {
        Summary.Head(page, document);
        page.Blank();
        WeekStrip.Write(page, document);
        Section(page, "Intensity split");
        Split(page, document);
        Section(page, "The week");
        Figures(page, document);
        Planned(page, document.Week);
        Changes(page, document);
        Findings(page, document);
        PlainHistory.Write(page, document);
        PlainRides.Write(page, document);
        Progress(page, document);
        Notices(page, document);
        Section(page, "Cautions");
        foreach (var caution in document.Summary.Cautions)
            page.Hanging("- ", caution);
    }

    /// <summary>A section's heading.</summary>
    public static void Section(Page page, string title)
    {
        page.Blank();
        page.Line([new(title, Tone.Strong)]);
        page.Line([new(new string(page.Marks.Rule, Cells.Of(title)), Tone.Quiet)]);
    }

    private static void Split(Page page, ReviewDocument document)
    {
        page.Text(document.Summary.SplitSentence);
        if (DataWords.Cuts(document) is { Length: > 0 } cuts)
            page.Text($"Bands: {cuts}.");
    }

    private static void Figures(Page page, ReviewDocument document)
    {
        var week = document.Week;
        page.Text(Shown.Sentence(Summary.Figures(document)));
        page.Text($"Rides {week.RideCount}, work {Shown.Work(week.WorkKj)}, acute load {Shown.Number(week.AcuteLoad, 1)}, "
            + $"acute over chronic {Shown.Number(week.AcuteChronicRatio, 2)} (disputed; drives no verdict), "
            + $"monotony {Shown.Number(week.Monotony, 1)}, strain {Shown.Number(week.Strain)}"
            + (week.PolarizationIndex is { } index ? $", polarization index {Shown.Number(index, 2)}." : "."));
        page.Text(DataWords.Of(document));
        if (week.SettlingIn)
            page.Text("Loads are still settling in: less than 42 days since the first ride.");
        if (week.StressUnknownHours > 0)
            page.Text($"No stress is known for {Shown.Hours(week.StressUnknownHours)}.");
        if (week.OtherActivityHours > 0)
            page.Text($"Other activity: {Shown.Hours(week.OtherActivityHours)}.");
    }

    private static void Planned(Page page, WeekEntry week)
    {
        if (week.Planned is not { } planned)
            return;
        Section(page, "Planned and ridden");
        page.Text($"{Shown.Hours(planned.Hours)} planned, about {Shown.Points(planned.Stress)} of training stress.");
        PlannedLines.All(page, week);
    }

    private static void Changes(Page page, ReviewDocument document)
    {
        if (!document.Summary.ToChange.IsDefaultOrEmpty)
        {
            Section(page, "To change");
            var number = 0;
            foreach (var advice in document.Summary.ToChange)
            {
                page.Hanging($"{++number} ", advice.Title, Tone.Strong);
                page.Text(advice.Detail, indent: 2);
            }
        }
        if (document.SmallestChange is { } change)
            page.Text(change.Sentence);
        if (document.Summary.Held.IsDefaultOrEmpty)
            return;
        Section(page, "What held");
        page.Text(string.Join(page.Marks.Dot, document.Summary.Held));
    }

    private static void Findings(Page page, ReviewDocument document)
    {
        Section(page, "Every rule");
        foreach (var finding in document.Findings)
        {
            var verdict = new Piece($"{page.Marks.Of(finding.Verdict)} {Words.Of(finding.Verdict)}", Marks.ToneOf(finding.Verdict));
            page.Line([verdict with { Text = Wrap.Pad(page.Marks.Show(verdict.Text), 13) }, new(finding.Rule, Tone.Strong)]);
            page.Text(finding.Sentence, indent: 2);
            if (finding.Reason is { } reason && !finding.Sentence.Contains(reason, StringComparison.OrdinalIgnoreCase))
                page.Text(reason, indent: 2);
            if (finding.WouldHaveKept is { } kept)
                page.Text(kept, indent: 2);
            page.Text(RuleTable.Grounds(finding.Evidence, finding.Source), Tone.Quiet, indent: 2);
        }
    }

    private static void Progress(Page page, ReviewDocument document)
    {
        if (document.Progress is not { } progress)
            return;
        Section(page, "Is the rider improving?");
        foreach (var told in new[] { progress.EasyPower, progress.Drift, progress.Best, progress.Threshold })
            page.Hanging("- ", $"{told.Sentence} {told.Caution}");
    }

    private static void Notices(Page page, ReviewDocument document)
    {
        if (document.Notices.IsEmpty)
            return;
        Section(page, "The data");
        foreach (var notice in document.Notices)
            NoticeLine.Write(page, notice);
    }
}
