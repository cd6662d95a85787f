using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Report.Fonts;
using RideAudit.Report.Pages;
using RideAudit.Report.Pdf;
using RideAudit.Units;

namespace RideAudit.Report;

/// <summary>Draws a review as a PDF.</summary>
public static class ReviewPdf
{
    /// <summary>Writes the review's pages: text selectable, fonts embedded and subset, charts as vectors, findings linked to rides.</summary>
    /// <param name="output">Where to write; left open.</param>
    /// <param name="options">Paper and room for notes.</param>
    /// <param name="traces">What the ride strips draw; null: strips without traces.</param>
    /// <remarks>
    /// The same review and options give the same bytes on every system, as long as Inter has every character; for others a font of the
    /// system is embedded. The date is the review's as-of date and the identifier comes from the content. Language, an outline and a
    /// structure tree with the text of every chart are set; the file is neither PDF/A nor PDF/UA.
    /// </remarks>
    /// <exception cref="IOException">The output cannot be written.</exception>
    public static void Write(ReviewDocument review, Stream output, PageOptions options, ReviewTraces? traces = null)
    {
        ArgumentNullException.ThrowIfNull(review);
        ArgumentNullException.ThrowIfNull(output);
        ArgumentNullException.ThrowIfNull(options);
        Write(review, output, options, FontSet.OfThisMachine, traces);
    }

    /// <summary>As <see cref="Write(ReviewDocument, Stream, PageOptions, ReviewTraces)"/>, with given fonts.</summary>
    internal static void Write(ReviewDocument review, Stream output, PageOptions options, FontSet fonts, ReviewTraces? traces = null)
    {
        var laying = Phase.Begin("laying out pages");
        var pages = new ReviewPages(review, options, fonts, traces);
        laying?.Dispose();
        output.Write(PdfMaker.Make(pages, fonts, Title(review), review.Summary.Headline, review.AsOf));
    }

    /// <summary>The document's title.</summary>
    internal static string Title(ReviewDocument review) => $"{review.Rider.Label}, week of {Shown.FullDate(review.Week.StartsOn)}";
}
