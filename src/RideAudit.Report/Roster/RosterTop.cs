using RideAudit.Document;
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
    private readonly TextLine riders;
    private readonly TextLine week;
    private readonly List<TextLine> headline;
    private readonly List<TextLine> subline;
    private readonly float width;

    public RosterTop(RosterDocument roster, FontSet fonts, float width)
    {
        this.width = width;
        TextStyle strong = Styles.Strong with { Size = HeadSize }, quiet = Styles.Quiet with { Size = HeadSize };
        string asOf = $"as of {Say.Date(roster.AsOf)}";
        riders = TextLine.Of(fonts, [new Span(Say.Count(roster.Riders.Length, "rider"), strong), new Span("  who needs you first at the top", quiet)]);
        week = RosterWords.Week(roster) is { } start
            ? TextLine.Of(fonts, [new Span($"Week of {Say.Date(start)}", strong), new Span(", " + asOf, quiet)])
            : TextLine.Of(fonts, Say.Capital(asOf), strong);
        headline = LineBreaker.Balance(fonts, new Span(RosterWords.Headline(roster), new TextStyle(Weight.SemiBold, 22, Palette.Ink)), width);
        IEnumerable<string> advice = fonts.Lacking(roster.Riders.SelectMany(rider => new[] { rider.Label, rider.ReviewFile ?? "" })).Select(writing => writing.Advice);
        string rest = string.Join(' ', advice.Prepend(RosterWords.Subline(roster)).Where(sentence => sentence.Length > 0));
        subline = rest.Length == 0 ? [] : LineBreaker.Break(fonts, [new Span(rest, Styles.Quiet)], width);
    }

    /// <inheritdoc/>
    public override float Height =>
        riders.Leading + UnderHead + OverVerdict + headline.Concat(subline).Sum(line => line.Leading) + UnderVerdict + Foot;

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        riders.Draw(surface, x, y + riders.Ascent);
        week.Draw(surface, x + width - week.Width, y + week.Ascent);
        y += riders.Leading + UnderHead;
        surface.Hairline(x, x + width, y);
        y = Lines(surface, headline, x, y + OverVerdict);
        Lines(surface, subline, x, y + UnderVerdict);
    }

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
