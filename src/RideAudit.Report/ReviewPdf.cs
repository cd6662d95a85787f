using RideAudit.Report.Pages;
using RideAudit.Report.Text;
using RideAudit.Report.Words;
using RideAudit.Review;
using SkiaSharp;

namespace RideAudit.Report;

/// <summary>Draws a review as a PDF.</summary>
public static class ReviewPdf
{
    private const string Producer = "RideAudit";

    /// <summary>Writes the review's pages: text selectable, fonts embedded and subset, charts as vectors.</summary>
    /// <param name="review">The review.</param>
    /// <param name="output">Where to write; left open.</param>
    /// <param name="options">Paper and room for notes.</param>
    /// <remarks>The same review and options give the same bytes on one machine: the dates come from the review, and no identifier is random.</remarks>
    /// <exception cref="IOException">The output cannot be written.</exception>
    public static void Write(ReviewDocument review, Stream output, PageOptions options)
    {
        ArgumentNullException.ThrowIfNull(review);
        ArgumentNullException.ThrowIfNull(output);
        ArgumentNullException.ThrowIfNull(options);
        var pages = new ReviewPages(review, options, FontSet.OfThisMachine);
        byte[] drawn = Draw(pages, Metadata(review));
        output.Write(drawn);
    }

    private static SKDocumentPdfMetadata Metadata(ReviewDocument review)
    {
        DateTime asOf = review.AsOf.ToDateTimeUnspecified();
        DateTime written = DateTime.SpecifyKind(asOf, DateTimeKind.Utc);
        return new SKDocumentPdfMetadata
        {
            Title = $"{review.Rider.Label}, week of {Say.Date(review.Week.StartsOn)}",
            Subject = review.Summary.Headline,
            Creator = Producer,
            Producer = Producer,
            Creation = written,
            Modified = written,
            RasterDpi = SKDocumentPdfMetadata.DefaultRasterDpi,
            EncodingQuality = SKDocumentPdfMetadata.DefaultEncodingQuality,
        };
    }

    private static byte[] Draw(ReviewPages pages, SKDocumentPdfMetadata metadata)
    {
        using var buffer = new MemoryStream();
        using (SKDocument document = SKDocument.CreatePdf(buffer, metadata))
        {
            for (int page = 0; page < pages.Count; page++)
            {
                SKCanvas canvas = document.BeginPage(pages.Sheet.Width, pages.Sheet.Height);
                pages.Draw(page, new Ink(canvas, FontSet.OfThisMachine));
                document.EndPage();
            }

            document.Close();
        }

        return buffer.ToArray();
    }
}
