using RideAudit.Document;
using RideAudit.Report.Fonts;
using RideAudit.Report.Pages;
using RideAudit.Report.Svg;

namespace RideAudit.Report;

/// <summary>Draws a review as SVG pictures: the same pages as the PDF's.</summary>
public static class ReviewSvg
{
    /// <summary>The review's pages.</summary>
    /// <param name="options">Paper and room for notes.</param>
    /// <param name="traces">What the ride strips draw; null: strips without traces.</param>
    public static SvgPages Draw(ReviewDocument review, PageOptions options, ReviewTraces? traces = null)
    {
        ArgumentNullException.ThrowIfNull(review);
        ArgumentNullException.ThrowIfNull(options);
        return Draw(review, options, FontSet.OfThisMachine, traces);
    }

    /// <summary>The card for a phone: one picture, 540 pt wide and as tall as it must be; at two pixels a point no text is under 26 px.</summary>
    /// <param name="review">The review.</param>
    public static SvgPages Card(ReviewDocument review)
    {
        ArgumentNullException.ThrowIfNull(review);
        return SvgMaker.Make(new CardPages(review, FontSet.OfThisMachine), FontSet.OfThisMachine, ReviewPdf.Title(review));
    }

    /// <summary>As <see cref="Draw(ReviewDocument, PageOptions, ReviewTraces)"/>, with given fonts.</summary>
    internal static SvgPages Draw(ReviewDocument review, PageOptions options, FontSet fonts, ReviewTraces? traces = null) =>
        SvgMaker.Make(new ReviewPages(review, options, fonts, traces), fonts, ReviewPdf.Title(review));
}
