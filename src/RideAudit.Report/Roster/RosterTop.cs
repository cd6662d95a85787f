using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;
using RideAudit.Report.Words;

namespace RideAudit.Report.Roster;

/// <summary>The top of the overview: how many riders and which week, and the counts as a sentence.</summary>
internal sealed class RosterTop : Block
{
    private const float HeadSize = 10.5f;
    private const float UnderHead = 6;
    private const float OverVerdict = 9;
    private const float UnderVerdict = 5;
    private const float Foot = 12;
    private readonly TextLine _riders;
    private readonly TextLine _week;
    private readonly List<TextLine> _headline;
    private readonly List<TextLine> _subline;
    private readonly float _width;

    public RosterTop(RosterDocument roster, FontSet fonts, float width)
    {
        _width = width;
        TextStyle strong = Styles.Strong with { Size = HeadSize }, quiet = Styles.Quiet with { Size = HeadSize };
        var asOf = $"as of {Shown.FullDate(roster.AsOf)}";
        _riders = TextLine.Of(fonts, [new Span(Shown.Tally(roster.Riders.Length, "rider"), strong), new Span("  who needs you first at the top", quiet)]);
        _week = RosterWords.Week(roster) is { } start
            ? TextLine.Of(fonts, [new Span($"Week of {Shown.FullDate(start)}", strong), new Span(", " + asOf, quiet)])
            : TextLine.Of(fonts, Shown.Capital(asOf), strong);
        _headline = LineBreaker.Balance(fonts, new Span(RosterWords.Headline(roster), new TextStyle(Weight.SemiBold, 22, Palette.Ink)), width);
        var advice = fonts.Lacking(roster.Riders.SelectMany(rider => new[] { rider.Label, rider.ReviewFile ?? "" })).Select(writing => writing.Advice);
        var rest = string.Join(' ', advice.Prepend(RosterWords.Subline(roster)).Where(sentence => sentence.Length > 0));
        _subline = rest.Length == 0 ? [] : LineBreaker.Break(fonts, [new Span(rest, Styles.Quiet)], width);
    }

    /// <inheritdoc/>
    public override float Height =>
        _riders.Leading + UnderHead + OverVerdict + _headline.Concat(_subline).Sum(line => line.Leading) + UnderVerdict + Foot;

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        _riders.Draw(surface, x, y + _riders.Ascent);
        _week.Draw(surface, x + _width - _week.Width, y + _week.Ascent);
        y += _riders.Leading + UnderHead;
        surface.Hairline(x, x + _width, y);
        y = Lines(surface, _headline, x, y + OverVerdict);
        Lines(surface, _subline, x, y + UnderVerdict);
    }

    private static float Lines(Surface surface, List<TextLine> lines, float x, float y)
    {
        foreach (var line in lines)
        {
            line.Draw(surface, x, y + line.Ascent);
            y += line.Leading;
        }

        return y;
    }
}
