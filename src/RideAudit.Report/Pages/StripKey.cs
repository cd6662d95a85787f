using RideAudit.Formatting;
using RideAudit.Report.Charts;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;

namespace RideAudit.Report.Pages;

/// <summary>How to read the ride strips.</summary>
internal sealed class StripKey : Block
{
    private const float Gap = 14;
    private readonly List<TextLine> lines;
    private readonly float width;
    private readonly float legendWidth;
    private readonly bool hasPower;

    /// <param name="scale">The strips' scale.</param>
    /// <param name="fonts">Fonts.</param>
    /// <param name="width">Width, pt.</param>
    public StripKey(StripScale scale, FontSet fonts, float width)
    {
        this.width = width;
        legendWidth = Bands.LegendWidth(fonts, Styles.Small);
        hasPower = scale.TopW > 1;
        string text = hasPower
            ? $"Power over heart rate, bpm. Dotted: threshold; ticks: pauses. All {Shown.Watts(scale.TopW)} high, {Shown.Length(scale.Seconds)} wide."
            : $"Heart rate, bpm. Ticks: pauses. All {Shown.Length(scale.Seconds)} wide.";
        lines = LineBreaker.Break(fonts, [new Span(text, Styles.Small)], width - legendWidth - Gap);
    }

    /// <inheritdoc/>
    public override float Height => lines.Sum(line => line.Leading) + 2;

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        if (hasPower)
            Bands.Legend(surface, x + width - legendWidth, y + Styles.Small.Ascent, Styles.Small);
        foreach (TextLine line in lines)
        {
            line.Draw(surface, x, y + line.Ascent);
            y += line.Leading;
        }
    }
}
