using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;

namespace RideAudit.Report.Pages;

/// <summary>How to read the spacing line.</summary>
internal sealed class SpacingKey : Block
{
    private const string Reading =
        "Width: time. Height: intensity ratio squared. Area: stress. Bands sorted, not as ridden.";

    private const float LegendGap = 14;
    private readonly List<TextLine> lines;
    private readonly float legendWidth;

    public SpacingKey(ReviewDocument review, FontSet fonts, float width)
    {
        bool open = review.Rides.Any(ride => ride.IntensityRatio is null);
        bool unknown = review.Rides.Any(ride => ride.Stress is null);
        legendWidth = Bands.LegendWidth(fonts, Styles.Small);
        string text = Reading
            + (open ? " Open block: no power, height from stress per hour." : "")
            + (unknown ? $" {Shown.Missing} and dots: stress unknown." : "")
            + (review.Week.Days.SelectMany(PlannedBlocks.Of).Any() ? " Thin outline: planned." : "")
            + (review.SmallestChange is { Changes.IsEmpty: false } ? " Dashed, with an arrow: the smallest change." : "");
        lines = LineBreaker.Break(fonts, [new Span(text, Styles.Small)], width - legendWidth - LegendGap);
        Width = width;
    }

    /// <inheritdoc/>
    public override float Height => lines.Sum(line => line.Leading);

    private float Width { get; }

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        float baseline = y;
        foreach (TextLine line in lines)
        {
            line.Draw(surface, x, baseline + line.Ascent);
            baseline += line.Leading;
        }

        Bands.Legend(surface, x + Width - legendWidth, y + lines[0].Ascent, Styles.Small);
    }
}
