using RideAudit.Document;
using RideAudit.Report;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Pages;
using SkiaSharp;

namespace RideAudit.Raster;

/// <summary>Draws a review as a picture: page one, or the card for a phone.</summary>
public static class ReviewPicture
{
    private const int LargestScale = 8;

    /// <summary>Writes page one as a PNG.</summary>
    /// <param name="output">Where to write; left open.</param>
    /// <param name="options">Paper and room for notes.</param>
    /// <param name="scale">Pixels a point, 1 to 8.</param>
    /// <exception cref="ArgumentOutOfRangeException">The scale is outside 1 to 8.</exception>
    /// <exception cref="IOException">The output cannot be written.</exception>
    /// <exception cref="DllNotFoundException">The drawing library cannot be loaded.</exception>
    public static void WritePageOne(ReviewDocument review, Stream output, PageOptions options, int scale = 2)
    {
        ArgumentNullException.ThrowIfNull(review);
        ArgumentNullException.ThrowIfNull(output);
        ArgumentNullException.ThrowIfNull(options);
        ArgumentOutOfRangeException.ThrowIfLessThan(scale, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(scale, LargestScale);
        using var bitmap = Draw(new ReviewPages(review, options, FontSet.OfThisMachine), 0, scale, FontSet.OfThisMachine);
        using var png = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        png.SaveTo(output);
    }

    /// <summary>Writes the card for a phone as a PNG: portrait, 1080 px wide, no text under 26 px.</summary>
    /// <param name="output">Where to write; left open.</param>
    /// <exception cref="IOException">The output cannot be written.</exception>
    /// <exception cref="DllNotFoundException">The drawing library cannot be loaded.</exception>
    public static void WriteCard(ReviewDocument review, Stream output)
    {
        ArgumentNullException.ThrowIfNull(review);
        ArgumentNullException.ThrowIfNull(output);
        using var bitmap = Draw(new CardPages(review, FontSet.OfThisMachine), 0, CardPages.Scale, FontSet.OfThisMachine);
        using var png = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        png.SaveTo(output);
    }

    /// <summary>A page, counted from 0, as pixels.</summary>
    internal static SKBitmap Draw(IPages pages, int page, float scale, FontSet fonts)
    {
        PackedLibrary.Prepare();
        var bitmap = new SKBitmap((int)MathF.Ceiling(pages.Sheet.Width * scale), (int)MathF.Ceiling(pages.Sheet.Height * scale));
        using var canvas = new SKCanvas(bitmap);
        canvas.Clear(SKColors.White);
        canvas.Scale(scale);
        pages.Draw(page, new RasterPage(canvas, fonts));
        return bitmap;
    }
}
