using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;
using RideAudit.Review;

namespace RideAudit.Report.Pages;

/// <summary>How to read the spacing line.</summary>
internal sealed class SpacingKey : Block
{
    private const string Reading =
        "Width is time, height is intensity ratio squared, so area is training stress (the figure on top). Bands are sorted, not in the order ridden.";

    private readonly List<TextLine> lines;
    private readonly float legendWidth;
    private readonly bool open;

    public SpacingKey(ReviewDocument review, FontSet fonts, float width)
    {
        open = review.Rides.Any(ride => ride.IntensityRatio is null);
        legendWidth = 150;
        string text = open ? Reading + " Open block: no power, height from stress per hour; dashed: no stress known." : Reading;
        lines = LineBreaker.Break(fonts, [new Span(text, Styles.Small)], width - legendWidth);
        Width = width;
    }

    /// <inheritdoc/>
    public override float Height => lines.Sum(line => line.Leading);

    private float Width { get; }

    /// <inheritdoc/>
    public override void Draw(Ink ink, float x, float y)
    {
        float baseline = y;
        foreach (TextLine line in lines)
        {
            line.Draw(ink, x, baseline + line.Ascent);
            baseline += line.Leading;
        }

        Bands.Legend(ink, x + Width - legendWidth + 22, y + lines[0].Ascent, Styles.Small);
    }
}
