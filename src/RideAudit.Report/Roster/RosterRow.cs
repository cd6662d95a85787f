using RideAudit.Document;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;
using RideAudit.Report.Words;

namespace RideAudit.Report.Roster;

/// <summary>One rider: the need, the label, the week's figures, and why in a line beneath.</summary>
internal sealed class RosterRow : Block
{
    private const float Air = 2.5f;
    private const float BarDepth = 7;
    private readonly RosterEntry rider;
    private readonly RosterColumns columns;
    private readonly int number;
    private readonly List<TextLine> label;
    private readonly List<TextLine> why;
    private readonly List<TextLine> counts;

    /// <param name="rider">The rider.</param>
    /// <param name="number">Place in the order, 1 first.</param>
    /// <param name="columns">The columns.</param>
    /// <param name="fonts">Fonts.</param>
    public RosterRow(RosterEntry rider, int number, RosterColumns columns, FontSet fonts)
    {
        this.rider = rider;
        this.number = number;
        this.columns = columns;
        label = LineBreaker.Break(fonts, Name(rider, fonts, columns.LabelWidth), columns.LabelWidth);
        why = LineBreaker.Break(fonts, Why(rider), columns.WhyWidth);
        string text = RosterWords.Counts(rider);
        counts = text.Length == 0 ? [] : LineBreaker.Break(fonts, [new Span(text, Styles.Tiny)], RosterColumns.NeedWidth);
    }

    /// <summary>The lines of the label and the review's file.</summary>
    public IReadOnlyList<TextLine> Label => label;

    /// <inheritdoc/>
    public override float Height
    {
        get
        {
            float left = Styles.Body.Leading + counts.Sum(line => line.Leading);
            return Air + Math.Max(left, label.Concat(why).Sum(line => line.Leading)) + Air;
        }
    }

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        surface.Hairline(x, x + columns.Width, y);
        y += Air;
        float baseline = y + Styles.Body.Ascent;
        DrawNeed(surface, x, y, baseline);
        DrawFigures(surface, x, baseline);
        foreach (TextLine line in label.Concat(why))
        {
            line.Draw(surface, x + RosterColumns.Label, y + line.Ascent);
            y += line.Leading;
        }
    }

    private static IEnumerable<Span> Name(RosterEntry rider, FontSet fonts, float width)
    {
        string? target = rider.ReviewFile is { } file ? Uri.EscapeDataString(file) : null;
        yield return new Span(rider.Label, Styles.Strong) { Address = target };
        if (rider.ReviewFile is null)
            yield break;
        TextStyle style = Styles.Small with { Colour = Palette.High };
        bool fits = style.Measure(fonts, rider.ReviewFile) <= width;
        yield return new Span("  ", style);
        yield return new Span(fits ? rider.ReviewFile.Replace(' ', '\u00A0') : rider.ReviewFile, style) { Address = target };
    }

    private static IEnumerable<Span> Why(RosterEntry rider)
    {
        yield return new Span(rider.Why, Styles.SmallInk);
        if (rider.FilesNotUsed is > 0 and var files)
            yield return new Span($"  {Say.Count(files, "file")} not used.", Styles.Small);
    }

    private void DrawNeed(Surface surface, float x, float y, float baseline)
    {
        surface.Text(Say.Number(number), Styles.Quiet, x + RosterColumns.Number, baseline, Align.End);
        VerdictMark.Draw(surface, RosterWords.Mark(rider.Need), x + RosterColumns.Mark, baseline, Styles.Body.Size);
        bool wanting = rider.Need is "broken" or "watch";
        TextStyle style = (wanting ? Styles.Strong : Styles.Body) with { Colour = wanting ? Palette.Rust : Palette.Ink };
        surface.Text(rider.Need, style, x + RosterColumns.Need, baseline);
        float under = y + Styles.Body.Leading;
        foreach (TextLine line in counts)
        {
            line.Draw(surface, x + RosterColumns.Need, under + line.Ascent);
            under += line.Leading;
        }
    }

    private void DrawFigures(Surface surface, float x, float baseline)
    {
        surface.Text(RosterWords.Hours(rider), Styles.Body, x + columns.Hours, baseline, Align.End);
        surface.Text(Say.Number(rider.Stress), Styles.Body, x + columns.Stress, baseline, Align.End);
        surface.Text(rider.LowShare is { } share ? Say.Percent(share) : Say.Missing, Styles.Body, x + columns.Low, baseline, Align.End);
        surface.Text(rider.RampPerWeek is { } ramp ? Say.Change(ramp) : Say.Missing, Styles.Body, x + columns.Ramp, baseline, Align.End);
        if (rider.LowShare is { } low)
            DrawBar(surface, low, x + columns.BarStart, baseline);
    }

    private static void DrawBar(Surface surface, double low, float left, float baseline)
    {
        var area = new Area(left, baseline - BarDepth, left + RosterColumns.Bar, baseline);
        float cut = left + (RosterColumns.Bar * (float)Math.Clamp(low, 0, 1));
        Bands.Fill(surface, new Area(left, area.Top, cut, area.Bottom), 0);
        surface.Frame(area, Palette.Quiet, 0.5f);
    }
}
