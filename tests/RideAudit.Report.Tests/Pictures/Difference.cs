using SkiaSharp;

namespace RideAudit.Report.Tests.Pictures;

/// <summary>How far two pictures of one size are apart.</summary>
/// <param name="MeanLevels">Mean absolute difference of a channel, levels of 255.</param>
/// <param name="ChangedShare">Share of pixels of which a channel differs by more than 40 levels.</param>
public readonly record struct Difference(double MeanLevels, double ChangedShare)
{
    /// <summary>The tolerance: anti-aliasing may differ between processors, nothing else may.</summary>
    public bool IsSmall => MeanLevels <= 0.1 && ChangedShare <= 0.0003;

    /// <summary>A closer tolerance, for a large picture in which one figure is few pixels.</summary>
    public bool IsTiny => MeanLevels <= 0.05 && ChangedShare <= 0.00003;

    public static Difference Between(SKBitmap one, SKBitmap other)
    {
        if (one.Width != other.Width || one.Height != other.Height)
            return new Difference(255, 1);
        long sum = 0;
        var changed = 0;
        for (var y = 0; y < one.Height; y++)
        {
            for (var x = 0; x < one.Width; x++)
            {
                SKColor a = one.GetPixel(x, y), b = other.GetPixel(x, y);
                int red = Math.Abs(a.Red - b.Red), green = Math.Abs(a.Green - b.Green), blue = Math.Abs(a.Blue - b.Blue);
                sum += red + green + blue;
                changed += Math.Max(red, Math.Max(green, blue)) > 40 ? 1 : 0;
            }
        }

        var pixels = (double)one.Width * one.Height;
        return new Difference(sum / (3 * pixels), changed / pixels);
    }
}
