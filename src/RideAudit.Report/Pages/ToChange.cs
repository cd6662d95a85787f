using System.Globalization;
using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;
using RideAudit.Report.Words;
using RideAudit.Rules;

namespace RideAudit.Report.Pages;

/// <summary>What to change, most serious first, and what held.</summary>
internal sealed class ToChange : Block
{
    private const float Indent = 17;
    private const int LongestWholeItem = 30;
    private static readonly TextStyle Title = new(Weight.SemiBold, 11.5f, Palette.Ink);
    private static readonly TextStyle Number = new(Weight.SemiBold, 11.5f, Palette.Rust);
    private static readonly TextStyle Head = new(Weight.SemiBold, 10.5f, Palette.Ink);
    private readonly List<(List<TextLine> Title, List<TextLine> Detail)> items = [];
    private readonly List<TextLine> held;
    private readonly float headDepth;
    private readonly float gap;
    private readonly float width;

    public ToChange(ReviewDocument review, FontSet fonts, float width, Density density, bool linked)
    {
        SummaryEntry summary = review.Summary;
        var marks = new SourceMarks(review);
        this.width = width;
        headDepth = density.Compact ? 16 : 18;
        gap = density.Compact ? 4 : 6;
        foreach (ChangeAdvice advice in summary.ToChange)
        {
            List<TextLine> title = LineBreaker.Clip(fonts, new Span(advice.Title, Title, linked ? Places.Rule(advice.Rule) : null), width - Indent, density.TitleLines);
            items.Add((title, LineBreaker.Clip(fonts, new Span(Detail(review, advice, marks), Styles.Quiet), width - Indent, density.DetailLines)));
        }

        held = Held(summary, fonts, width, density.HeldLines);
    }

    /// <inheritdoc/>
    public override float Height =>
        (items.Count == 0 ? 0 : headDepth + items.Sum(item => Depth(item.Title) + Depth(item.Detail) + gap) + 8) + Depth(held);

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        if (items.Count > 0)
        {
            surface.Text("To change", Head, x, y + 10);
            y += headDepth;
        }

        for (int i = 0; i < items.Count; i++)
        {
            surface.Text((i + 1).ToString(CultureInfo.InvariantCulture), Number, x, y + Number.Ascent);
            y = Lines(surface, items[i].Title, x + Indent, y);
            y = Lines(surface, items[i].Detail, x + Indent, y) + gap;
        }

        if (items.Count > 0)
        {
            surface.Hairline(x, x + width, y + 1);
            y += 8;
        }

        Lines(surface, held, x, y);
    }

    private static string Detail(ReviewDocument review, ChangeAdvice advice, SourceMarks marks)
    {
        Finding? finding = review.Findings.FirstOrDefault(candidate => candidate.Rule == advice.Rule);
        return finding is null ? advice.Detail : $"{finding.Sentence}{Shown.Joint}{marks.Of(advice.Rule)}";
    }

    private static List<TextLine> Held(SummaryEntry summary, FontSet fonts, float width, int mostLines)
    {
        string[] kept = [.. summary.Held.Select(item => item.Length <= LongestWholeItem ? item.Replace(' ', '\u00A0') : item)];
        List<TextLine> lines;
        int count = kept.Length;
        do
        {
            string more = count < kept.Length ? $" · {kept.Length - count} more" : "";
            string text = kept.Length == 0 ? summary.Kept == 0 ? "no rule this week" : "nothing that was put to the test" : string.Join(" · ", kept.Take(count)) + more;
            lines = LineBreaker.Break(fonts, [new Span("What held  ", Head), new Span(text, Styles.Body with { Size = 10 })], width);
            count--;
        }
        while (lines.Count > mostLines && count > 0);
        return lines;
    }

    private static float Depth(List<TextLine> lines) => lines.Sum(line => line.Leading);

    private static float Lines(Surface surface, List<TextLine> lines, float x, float y)
    {
        foreach (TextLine line in lines)
        {
            line.Draw(surface, x, y + line.Ascent);
            y += line.Leading;
        }

        return y;
    }
}
