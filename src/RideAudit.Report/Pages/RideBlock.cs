using RideAudit.Document;
using RideAudit.Report.Drawing;
using RideAudit.Report.Look;

namespace RideAudit.Report.Pages;

/// <summary>One ride of the spacing line.</summary>
/// <param name="hourWidth">Width of an hour, pt.</param>
/// <param name="unit">Height of threshold power, pt.</param>
internal sealed class RideBlock(RideEntry ride, float hourWidth, float unit)
{
    private const float UnknownHeight = 0.25f;

    /// <summary>Height as a share of threshold's: intensity ratio squared, or stress per hour over 100; 0 when neither is known.</summary>
    public static double HeightShare(RideEntry ride)
    {
        if (ride.IntensityRatio is { } ratio)
            return ratio * ratio;
        return ride is { Stress: { } stress, DurationSeconds: > 0 } ? stress / (ride.DurationSeconds / 36.0) : 0;
    }

    /// <summary>Draws the block from its left edge on the baseline and returns its area.</summary>
    public Area Draw(Surface surface, float left, float baseline)
    {
        var share = HeightShare(ride);
        var width = hourWidth * (float)(ride.DurationSeconds / 3600);
        var height = unit * (float)(share > 0 ? share : UnknownHeight);
        var area = new Area(left, baseline - height, left + width, baseline);
        if (ride.IntensityRatio is null)
            surface.Frame(area, Palette.Ink, 0.9f, share > 0 ? 0 : 2);
        else
            FillBands(surface, area);
        return area;
    }

    private void FillBands(Surface surface, Area area)
    {
        var total = Bands.Total(ride.BandSeconds);
        var left = area.Left;
        for (var band = 0; band < 3; band++)
        {
            var right = total == 0 ? area.Right : left + (area.Width * (float)(Bands.Seconds(ride.BandSeconds, band) / total));
            Bands.Fill(surface, new Area(left, area.Top, right, area.Bottom), band);
            left = right;
        }
    }
}
