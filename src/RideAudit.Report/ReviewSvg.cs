using RideAudit.Document;
using RideAudit.Report.Fonts;
using RideAudit.Report.Pages;
using RideAudit.Report.Svg;

namespace RideAudit.Report;

/// <summary>Draws a review as SVG pictures: the same pages as the PDF's.</summary>
public static class ReviewSvg
{
    /// <summary>The review's pages.</summary>
    /// <param name="review">The review.</param>
    /// <param name="options">Paper and room for notes.</param>
    public static SvgPages Draw(ReviewDocument review, PageOptions options)
    {
        ArgumentNullException.ThrowIfNull(review);
        ArgumentNullException.ThrowIfNull(options);
        return Draw(review, options, FontSet.OfThisMachine);
    }

    /// <summary>As <see cref="Draw(ReviewDocument, PageOptions)"/>, with given fonts.</summary>
    internal static SvgPages Draw(ReviewDocument review, PageOptions options, FontSet fonts) =>
        SvgMaker.Make(new ReviewPages(review, options, fonts), fonts, ReviewPdf.Title(review));
}
