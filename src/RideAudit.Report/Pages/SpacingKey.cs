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
    private readonly List<TextLine> _lines;
    private readonly float _legendWidth;

    public SpacingKey(ReviewDocument review, FontSet fonts, float width)
    {
        var open = review.Rides.Any(ride => ride.IntensityRatio is null);
        var unknown = review.Rides.Any(ride => ride.Stress is null);
        _legendWidth = Bands.LegendWidth(fonts, Styles.Small);
        var text = Reading
            + (open ? " Open block: no power, height from stress per hour." : "")
            + (unknown ? $" {Shown.Missing} and dots: stress unknown." : "")
            + (review.Week.Days.SelectMany(PlannedBlocks.Of).Any() ? " Thin outline: planned." : "")
            + (ChangeMarks.Words(review) is { } change ? $" {Shown.Capital(change)}." : "");
        _lines = LineBreaker.Break(fonts, [new Span(text, Styles.Small)], width - _legendWidth - LegendGap);
        Width = width;
    }

    /// <inheritdoc/>
    public override float Height => _lines.Sum(line => line.Leading);

    private float Width { get; }

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        var baseline = y;
        foreach (var line in _lines)
        {
            line.Draw(surface, x, baseline + line.Ascent);
            baseline += line.Leading;
        }

        Bands.Legend(surface, x + Width - _legendWidth, y + _lines[0].Ascent, Styles.Small);
    }
}
