using RideAudit.Document;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;
using RideAudit.Report.Words;

namespace RideAudit.Report.Pages;

/// <summary>The week's time in the bands against the intended low share and its tolerance.</summary>
internal sealed class SplitBar : Block
{
    private const float TitleDepth = 17;
    private const float LabelDepth = 14;
    private const float BarDepth = 17;
    private const float BracketDepth = 19;
    private readonly WeekEntry week;
    private readonly FontSet fonts;
    private readonly float width;
    private readonly List<TextLine> sentence;

    public SplitBar(ReviewDocument review, FontSet fonts, float width)
    {
        week = review.Week;
        this.fonts = fonts;
        this.width = width;
        string text = review.Summary.SplitSentence;
        if (text.Length == 0 && week.SplitByTime is null)
            text = "No time in bands this week.";
        sentence = text.Length == 0 ? [] : LineBreaker.Break(fonts, [new Span(text, Styles.Quiet)], width);
    }

    /// <inheritdoc/>
    public override float Height =>
        TitleDepth + (week.SplitByTime is null ? 0 : LabelDepth + BarDepth + (week.IntendedLowShare is null ? 5 : BracketDepth)) + sentence.Sum(line => line.Leading);

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        surface.Text("Intensity split by time", Styles.Strong with { Size = 10.5f }, x, y + 10);
        y += TitleDepth;
        if (week.SplitByTime is { } split)
        {
            DrawBar(surface, split, x, y);
            y += LabelDepth + BarDepth;
            if (week.IntendedLowShare is { } intended)
                DrawIntended(surface, intended, x, y);
            y += week.IntendedLowShare is null ? 5 : BracketDepth;
        }

        foreach (TextLine line in sentence)
        {
            line.Draw(surface, x, y + line.Ascent);
            y += line.Leading;
        }
    }

    private void DrawBar(Surface surface, SplitEntry split, float x, float y)
    {
        double[] shares = [split.Low, split.Middle, split.High];
        float left = x;
        var starts = new float[3];
        for (int band = 0; band < 3; band++)
        {
            float right = left + (width * (float)shares[band]);
            starts[band] = left;
            Bands.Fill(surface, new Area(left, y + LabelDepth, right, y + LabelDepth + BarDepth), band);
            left = right;
        }

        DrawLabels(surface, shares, starts, x, y + 10);
    }

    private void DrawLabels(Surface surface, double[] shares, float[] starts, float x, float baseline)
    {
        TextLine[] labels = [.. shares.Select((share, band) => TextLine.Of(fonts, $"{Say.Percent(share)} {Bands.Names[band]}", Styles.Strong))];
        const float gap = 12;
        float highAt = Math.Min(starts[2], x + width - labels[2].Width);
        highAt = Math.Max(highAt, x + labels[0].Width + gap + labels[1].Width + gap);
        float middleAt = Math.Clamp(starts[1], x + labels[0].Width + gap, highAt - gap - labels[1].Width);
        labels[0].Draw(surface, x, baseline);
        labels[1].Draw(surface, middleAt, baseline);
        labels[2].Draw(surface, highAt, baseline);
    }

    private void DrawIntended(Surface surface, double intended, float x, float y)
    {
        float at = x + (width * (float)intended);
        float half = width * (float)(week.SplitTolerance ?? 0);
        float line = y + 5;
        float right = Math.Min(at + half, x + width);
        surface.Line(at - half, line, right, line, Palette.Ink, 0.9f);
        surface.Line(at - half, line - 3, at - half, line + 3, Palette.Ink, 0.9f);
        surface.Line(right, line - 3, right, line + 3, Palette.Ink, 0.9f);
        surface.Line(at, line - 4, at, line + 4, Palette.Ink, 1.6f);
        string tolerance = week.SplitTolerance is { } known ? $" ± {Say.Number(known * 100)} points" : "";
        surface.Text($"intended {Say.Percent(intended)} low{tolerance}", Styles.Quiet, at - half - 6, y + 8.5f, Align.End);
    }
}
