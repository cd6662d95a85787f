using System.Collections.Immutable;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;
using RideAudit.Rules;

namespace RideAudit.Report.Pages;

/// <summary>A finding's verdict, in mark and word, beside its rule's name and sentence.</summary>
internal sealed class FindingHead : Block
{
    private const float Air = 5;
    private const float MarkRoom = 13;
    private const float WeekCell = 8;
    private readonly Finding _finding;
    private readonly List<TextLine> _lines;
    private readonly float _width;
    private readonly float _indent;

    public FindingHead(Finding finding, Span[] after, FontSet fonts, float width, float indent)
    {
        _finding = finding;
        _width = width;
        _indent = indent;
        Span name = new(finding.Name + "  ", Styles.Strong);
        _lines = LineBreaker.Break(fonts, [name, new Span(finding.Sentence + (after.Length > 0 ? "  " : ""), Styles.Body), .. after], width - indent);
    }

    /// <summary>What is said of the rule elsewhere leads here.</summary>
    public bool Anchored { get; init; } = true;

    /// <summary>The verdicts of the last weeks, this one last, drawn small under the verdict; fewer than two are not.</summary>
    public ImmutableArray<Verdict> Weeks { get; init; } = [];

    /// <inheritdoc/>
    public override float Height => Air + Math.Max(_lines.Sum(line => line.Leading), Weeks.Length > 1 && !KeepWithNext ? 2 * Styles.Body.Leading : 0) + 1;

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        if (Anchored)
            surface.Anchor(x, y, Places.Rule(_finding.Rule));
        surface.Hairline(x, x + _width, y);
        y += Air;
        var baseline = y + _lines[0].Ascent;
        var wanting = _finding.Verdict is Verdict.Broken or Verdict.Watch;
        VerdictMark.Draw(surface, _finding.Verdict, x, baseline, Styles.Body.Size);
        var style = (wanting ? Styles.Strong : Styles.Body) with { Colour = wanting ? Palette.Rust : Palette.Ink };
        surface.Text(Formatting.Words.Of(_finding.Verdict), style, x + MarkRoom, baseline);
        if (Weeks.Length > 1)
            DrawWeeks(surface, x, baseline + Styles.Body.Leading);
        foreach (var line in _lines)
        {
            line.Draw(surface, x + _indent, y + line.Ascent);
            y += line.Leading;
        }
    }

    private void DrawWeeks(Surface surface, float x, float baseline)
    {
        for (var week = 0; week < Weeks.Length; week++)
            VerdictMark.Draw(surface, Weeks[week], x + (week * WeekCell), baseline, Styles.Tiny.Size);
    }
}
