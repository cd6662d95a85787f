using RideAudit.Document;
using RideAudit.Report.Fonts;
using RideAudit.Report.Roster;
using RideAudit.Report.Svg;

namespace RideAudit.Report;

/// <summary>Draws a roster's overview as SVG pictures: the same pages as the PDF's.</summary>
internal static class RosterSvg
{
    /// <summary>The overview's pages.</summary>
    /// <param name="options">The paper; room for notes is a review's and does nothing here.</param>
    public static SvgPages Draw(RosterDocument roster, PageOptions options)
    {
        ArgumentNullException.ThrowIfNull(roster);
        ArgumentNullException.ThrowIfNull(options);
        return SvgMaker.Make(new RosterPages(roster, options, FontSet.OfThisMachine), FontSet.OfThisMachine, RosterPdf.Title(roster));
    }
}
